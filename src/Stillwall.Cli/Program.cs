using Stillwall.Appraisals;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;

var stored = ProjectStore.Load(args[0]);
Console.WriteLine(stored.Trouble);
foreach (var fault in stored.Reading!.Faults) { Console.WriteLine(fault); }
var table = DriverTable.Read(File.ReadAllBytes(Path.Combine(stored.Folder, "drivers.csv")), "drivers.csv");
var sw = System.Diagnostics.Stopwatch.StartNew();
Appraisal a = null!;
for (var i = 0; i < 3; i++) { sw.Restart(); a = Appraisal.WithoutRemedies(stored.Reading.Project!, [.. table.Rows.Select(r => r.Sheet)]); Console.WriteLine(sw.Elapsed.TotalMilliseconds); }
sw.Restart(); a = Appraisal.Of(stored.Reading.Project!, [.. table.Rows.Select(r => r.Sheet)]); Console.WriteLine(sw.Elapsed.TotalMilliseconds);
foreach (var f in a.Findings) { Console.WriteLine($"{f.Verdict,-8} {f.Stage}: {f.Topic}: {f.Because}" + (f.Remedy is null ? "" : $"\n         -> {f.Remedy} [{string.Join("; ", f.Change.Select(c => c.Key + "=" + c.Value))}]")); }
Console.WriteLine(a.Box); Console.WriteLine(a.Pour); Console.WriteLine(a.Mass); Console.WriteLine(a.Print); Console.WriteLine(a.Cost);
foreach (var p in a.Parts) { Console.WriteLine(p); }
foreach (var w in a.Walls) { Console.WriteLine(w); }
foreach (var w in a.Quiet.Bands) { Console.WriteLine(w); }
foreach (var w in a.Supplies) { Console.WriteLine(w); }
