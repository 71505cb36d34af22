#:project ../src/Staging.Core/Staging.Core.csproj
#:property PublishAot=false
// A script: which of the judged inputs moves the margin of ignition most, and which act together?
//   dotnet run samples/WhatMatters.cs [-- PATHS]     (default: 8 paths through the ranges, of an invented gap)
using System.Globalization;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
int paths = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 8;

var study = new SensitivityStudy<GapProblem>
{
    Inputs = new(StartingGaps.Bore18mm, GapInputs.Judged),
    Unit = "K",
    Model = (gap, stop) => (gap.Solve(options: SolverOptions.ForStudies, cancellationToken: stop).PeakGrainSurface
        - gap.Design.Grain.IgnitionTemperature).Kelvins,
};
Console.WriteLine("what moves the margin of the grain surface over its ignition temperature:");
foreach (MorrisEffect effect in study.Screen(paths).OrderByDescending(e => e.MeanAbsolute))
    Console.WriteLine($"  {effect.Input,-36} {effect.MeanAbsolute,6:F0} K over its range, {effect.StandardDeviation,6:F0} K with others or by bending");
