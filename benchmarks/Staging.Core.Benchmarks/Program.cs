using System.Globalization;
using BenchmarkDotNet.Running;
using Staging.Core.Benchmarks;

// "rate N": one long study of N cases on one thread and on two.
if (args is ["rate", var cases])
{
    StudyRate.Print(int.Parse(cases, CultureInfo.InvariantCulture));
    return 0;
}

// "alone": the library's side of a comparison. "compare FILE": that, and the commands of the file, in turns.
if (args is ["alone"])
{
    ComparedWork.Print();
    return 0;
}

if (args is ["compare", var file])
{
    Comparison.Print(file);
    return 0;
}

// Ends with 1 when a benchmark could not be run, so that a smoke run in CI can fail.
bool failed = BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args)
    .Any(summary => summary.HasCriticalValidationErrors || summary.Reports.Any(report => !report.Success));
return failed ? 1 : 0;
