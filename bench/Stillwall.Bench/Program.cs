BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Stillwall.Bench.AppraisalBench).Assembly).Run(args);
