using BenchmarkDotNet.Running;

// Ends with 1 when a benchmark could not be run, so that a smoke run in CI can fail.
bool failed = BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args)
    .Any(summary => summary.HasCriticalValidationErrors || summary.Reports.Any(report => !report.Success));
return failed ? 1 : 0;
