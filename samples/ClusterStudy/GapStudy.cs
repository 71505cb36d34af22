using Samples;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace ClusterStudy;

/// <summary>
/// The study that every silo knows: the invented gap with four 6 mm holes and a stated pulse, all judged inputs
/// uncertain.
/// </summary>
internal static class GapStudy
{
    public static ReliabilityStudy<GapProblem, GapRun> Study { get; } = new()
    {
        Inputs = new(Gap(), GapInputs.JudgedFor(Gap().Design)),
        Model = (p, stop) => p.Solve(options: SolverOptions.ForStudies, cancellationToken: stop),
        Outcome = run => run.Outcome.GetType().Name,
        Measures = [new Measure<GapRun>("lit time", "ms", run => run.TimeOf(GapEventKind.Lit)?.Milliseconds)],
        Cases = 360,
        Seed = 6,
    };

    private static GapProblem Gap()
    {
        GapProblem start = StartingGaps.Bore18mm;
        var holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        return start with
        {
            Design = start.Design with
            {
                Source = StatedPulse.Booster,
                Vents = [Vent.BelowNozzle(start.Design.Tube, holes, Length.FromMillimeters(1))],
            },
        };
    }
}
