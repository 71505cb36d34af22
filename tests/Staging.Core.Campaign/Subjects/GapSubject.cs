using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Campaign.Subjects;

/// <summary>One gap under one of the three models.</summary>
internal sealed class GapSubject : ISubject
{
    /// <summary>
    /// Steps that a lumped gap is allowed besides those that the longest step asks for: a tenth of the default, so that a case at the edges ends
    /// soon. A relative tolerance below that of single runs asks for as many more as a method of fourth order takes.
    /// </summary>
    private const int MostSteps = 100_000, Order = 4;

    /// <summary>Most of those that the longest step asks for.</summary>
    private const int MostAsked = 1_000_000;

    /// <summary>
    /// The same of a resolved tube, whose steps are as long as its cells, whatever happens: twice the default at the usual Courant number, and up
    /// to four times that at a smaller one, which asks for as many more.
    /// </summary>
    private const int MostResolvedSteps = 2_000_000, MostTimes = 4;

    private const double UsualCourantNumber = 0.8;

    /// <summary>The longest that a resolved tube is watched [s], as realistic cases are: beyond it no wave is left to resolve, only steps to be counted.</summary>
    private const double LongestResolved = 0.3;

    private const string Displacement = "displacement", Stirred = "stirred", Resolved = "resolved";

    /// <summary>Which models there are, by the names of the command line.</summary>
    public static readonly string[] Models = [Displacement, Stirred, Resolved];

    public string Name => "gaps";

    public string Steps => "steps of the solver, accepted and repeated, at most the number that its options allow";

    public Action<Facts> Make(Draws draws)
    {
        GapProblem gap = GapDraws.Problem(draws);
        GapModel model = Model(draws);
        SolverOptions options = Options(draws);
        if (model is GapModel.OneDimensional resolved)
        {
            gap = gap with { Horizon = Duration.FromSeconds(Math.Min(gap.Horizon.Seconds, LongestResolved)) };
            options = options with { MaxSteps = (int)(MostResolvedSteps * Math.Clamp(UsualCourantNumber / resolved.CourantNumber, 1, MostTimes)) };
        }
        else
        {
            double asked = Math.Ceiling(gap.Horizon / options.LongestStep);
            double finer = Math.Pow(SolverOptions.Default.RelativeTolerance / options.RelativeTolerance, 1.0 / Order);
            options = options with { MaxSteps = (int)(MostSteps * Math.Max(1, finer)) + (int)Math.Min(asked, MostAsked) };
        }

        return facts => GapPromises.Keep(gap.Solve(model, options), facts);
    }

    public string ModelOf(Draws draws) => draws.Choice("model", 8) switch
    {
        1 or 2 or 3 => Stirred,
        4 => Resolved,
        _ => Displacement,
    };

    private GapModel Model(Draws d) => ModelOf(d) switch
    {
        Stirred => new GapModel.WellStirred(),
        Resolved => new GapModel.OneDimensional
        {
            Cells = d.Count("cells", new(30, 20, 50, 20, 80)),
            CourantNumber = d.Number("courant", new(0.8, 0.6, 0.9, 0.05, 0.9)),
            ProfileTimes = [Duration.FromMilliseconds(1), Duration.FromMilliseconds(5)],
        },
        _ => new GapModel.TwoZone(),
    };

    private static SolverOptions Options(Draws d) => d.Choice("solver", 6) switch
    {
        1 => SolverOptions.Default,
        2 => SolverOptions.ForStudies,
        3 => new SolverOptions
        {
            RelativeTolerance = d.Number("solver.relative", new(1e-6, 1e-8, 1e-4, 1e-13, 1e-2)),
            ScaledAbsoluteTolerance = d.Number("solver.absolute", new(1e-8, 1e-10, 1e-6, 1e-16, 1e-5)),
            EventScanParts = d.Count("solver.scan", new(4, 2, 8, 1, 100)),
            EventTimeTolerance = Duration.FromSeconds(d.Number("solver.event", new(1e-9, 1e-10, 1e-7, 1e-12, 1e-3))),
            LongestStep = Duration.FromSeconds(d.Number("solver.longest", new(1, 1e-3, 1, 1e-4, 3600))),
        },
        _ => SolverOptions.ForGaps,
    };
}
