using System.Collections;
using System.Globalization;
using CsCheck;
using Stillwall.Projects;

namespace Stillwall.Files.Tests.Projects;

/// <summary>Random projects over the stated model, and a comparison of two that looks into lists.</summary>
internal static class Models
{
    // Put right as far as it goes, so that few are left out; what values together may not be is for the checks' own tests.
    internal static Gen<Project> AnyProject => Block(ModelBlock.Root).Select(p => Sound((Project)p)).Where(p => !ProjectChecks.Of(p).Any());

    internal static void AssertSame(object? expected, object? actual, string path = "")
    {
        switch (expected)
        {
            case null or double or int or string or DateOnly or Amount:
                Assert.True(Equals(expected, actual), $"{path}: {expected ?? "nothing"} became {actual ?? "nothing"}");
                break;
            case DriverChoice choice:
                AssertSame(choice.Name, (actual as DriverChoice)?.Name, path);
                AssertSame(choice.Sheet, (actual as DriverChoice)?.Sheet, path);
                break;
            case IEnumerable list:
                var (left, right) = (list.Cast<object>().ToList(), (actual as IEnumerable)?.Cast<object>().ToList());
                Assert.Equal(left.Count, right?.Count);
                for (var i = 0; i < left.Count; i++)
                {
                    AssertSame(left[i], right![i], $"{path}[{i}]");
                }

                break;
            default:
                Assert.IsType(expected.GetType(), actual);
                Assert.All(
                    ModelBlock.Of(expected.GetType()).Fields,
                    f => AssertSame(f.Property.GetValue(expected), f.Property.GetValue(actual), $"{path}.{f.Key}")
                );
                break;
        }
    }

    private static Gen<object> Block(ModelBlock block)
    {
        var gens = block.Fields.Select(f => Gen.Select(Gen.Bool, Value(f)).Select(c => (Field: f, Value: c.Item1 || f.Required ? c.Item2 : null))).ToArray();
        return gens.Aggregate(
                Gen.Const(new List<(ModelField Field, object? Value)>()),
                (all, one) => Gen.Select(all, one).Select(c => c.Item1.Append(c.Item2).ToList())
            )
            .Select(values => block.Build(values.Where(v => v.Value is not null)));
    }

    private static Gen<object?> Value(ModelField field) =>
        field.Kind switch
        {
            FieldKind.Quantity or FieldKind.Number => Number(field.Span!).Select(n => (object?)n),
            FieldKind.Whole => Gen.Int[(int)field.Span!.Least, (int)field.Span.Greatest].Select(n => (object?)n),
            FieldKind.Text when field.Words.Count > 0 => Gen.Int[0, field.Words.Count - 1].Select(i => (object?)field.Words[i]),
            FieldKind.Text => AnyText.Select(t => (object?)t),
            FieldKind.Date => Gen.Int[0, 20_000].Select(d => (object?)new DateOnly(2000, 1, 1).AddDays(d)),
            FieldKind.Amount => Gen.Select(Gen.Int[0, 4], Number(new WithinAttribute(1e-5, 1e6)))
                .Select(c => (object?)new Amount(c.Item2, AmountKinds[c.Item1])),
            FieldKind.Quantities => Number(field.Span!).Array[field.Count!.Value].Select(a => (object?)a),
            FieldKind.Block => Block(field.Block!).Select(b => (object?)b),
            FieldKind.Blocks => Block(field.Block!).Array[0, 3].Select(a => (object?)Typed(field.Block!.Type, a)),
            _ => Gen.OneOf(
                AnyText.Select(t => (object?)new DriverChoice(t, null)),
                Block(field.Block!).Select(b => (object?)new DriverChoice(null, (DriverSheet)b))
            ),
        };

    private static readonly Dimension[] AmountKinds = [Dimension.Count, Dimension.Mass, Dimension.Length, Dimension.Area, Dimension.Volume];

    // Letters of several alphabets, quotation marks, backslashes, an emoji: no control characters.
    private static readonly Gen<string> AnyText = Gen.Int[0, 13]
        .Array[0, 20]
        .Select(a => "n" + string.Concat(a.Select(i => new[] { "a", "Z", " ", "\"", "\\", "/", "ö", "é", "Ω", "漢", "😀", "<", "&", "'" }[i])));

    private static Gen<double> Number(WithinAttribute span) =>
        Gen.Select(Gen.Double[0, 1], Gen.Int[1, 12])
            .Select(c =>
            {
                var (part, digits) = c;
                var value = span.Least + part * (span.Greatest - span.Least);
                return Math.Clamp(
                    double.Parse(
                        value.ToString($"G{digits.ToString(CultureInfo.InvariantCulture)}", CultureInfo.InvariantCulture),
                        CultureInfo.InvariantCulture
                    ),
                    span.Least,
                    span.Greatest
                );
            });

    private static Array Typed(Type type, object[] records)
    {
        var typed = Array.CreateInstance(type, records.Length);
        records.CopyTo(typed, 0);
        return typed;
    }

    // Random values contradict one another; what the checks would refuse is put right.
    private static Project Sound(Project p) =>
        p with
        {
            FormatVersion = 1,
            Cabinet = p.Cabinet is null ? null : Sound(p.Cabinet),
            Prices = p.Prices?.DistinctBy(x => x.Item).Select(x => x with { Per = x.Per with { Value = Math.Max(x.Per.Value, 0.001) } }).ToArray(),
            Limits = p.Limits with { FillDensityLowKgM3 = Math.Min(p.Limits.FillDensityLowKgM3, p.Limits.FillDensityHighKgM3) },
            Materials = p.Materials is null
                ? null
                : p.Materials with
                {
                    Skin = p.Materials is { Skin: "own", SkinOwn: null } ? "pla" : p.Materials.Skin,
                    Cast = p.Materials.Cast is { Mix: "own", Own: null } cast ? cast with { Mix = null } : p.Materials.Cast,
                },
            Brief = p.Brief with
            {
                Aim = p.Brief.Aim is { } aim && aim.CrossoverHz <= aim.LowestHz ? aim with { CrossoverHz = null } : p.Brief.Aim,
                Everyday = p.Brief.Everyday is { Programme: "own", SpectrumDb: null } everyday ? everyday with { Programme = "pink" } : p.Brief.Everyday,
                Room = p.Brief.Room is null
                    ? null
                    : p.Brief.Room with
                    {
                        WidthM = null,
                        LengthM = null,
                        HeightM = 30,
                        CabinetAtM = null,
                        SeatAtM = p.Brief.Room.SeatAtM is { } at ? [at[0], at[1], at[2] / 4] : null,
                    },
                Neighbour = p.Brief.Neighbour is null
                    ? null
                    : p.Brief.Neighbour with
                    {
                        Partition = p.Brief.Neighbour is { Partition: "own", ReductionDb: null } ? null : p.Brief.Neighbour.Partition,
                        Curve = p.Brief.Neighbour is { Curve: "own", CurveDb: null } ? null : p.Brief.Neighbour.Curve,
                    },
            },
        };

    private static Cabinet Sound(Cabinet c)
    {
        var outside = c.NetVolumeM3 is null ? c.Outside : null;
        var skinM = outside is null ? (double?)null : 0.001;
        return c with
        {
            Braces = Math.Min(c.Braces, 2),
            Outside = outside is null ? null : outside with { CornerRadiusM = Math.Min(outside.CornerRadiusM, 0.025) },
            OuterSkinM = skinM,
            CoreM = skinM,
            InnerSkinM = skinM,
            Openings = c.Openings is null ? null : c.Openings with { TerminalM = null },
            Fill = c.Fill is { MassKg: not null } ? c.Fill with { Factor = null } : c.Fill,
            Leak =
                c.Leak is { GapM: not null, LengthM: not null, DepthM: not null } ? c.Leak with { ResistancePaSM3 = null }
                : c.Leak is null ? null
                : c.Leak with { GapM = null, LengthM = null, DepthM = null },
            Port = c.Port is null ? null : c.Port with { AreaM2 = c.Port.DiameterM is null ? 0.01 : null, LengthM = c.Port.LengthM ?? 0.1 },
            PassiveRadiator = c.Port is null ? c.PassiveRadiator : null,
        };
    }
}
