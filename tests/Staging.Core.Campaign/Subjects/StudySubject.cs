using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Campaign.Subjects;

/// <summary>One study of one gap: its odds, a sweep, its bars or its windows; whole, and in parts that travel as text.</summary>
internal sealed class StudySubject : ISubject
{
    private const int MostParts = 5;

    public string Name => "studies";

    public string Steps => "cases of the study";

    public Action<Facts> Make(Draws draws)
    {
        GapProblem gap = GapDraws.Problem(draws);
        int parts = 1 + draws.Choice("parts", MostParts);
        ulong seed = (ulong)draws.Choice("seed", 1000);
        switch (draws.Choice("study", 4))
        {
            case 1:
                Axis lengths = Axis.Factors("length", "mm", 20, 400, 6);
                return facts => InParts(Sweep.AlongInParts(lengths, Margin, Sweep.Number("margin", "K")), parts, facts);

                double Margin(double mm, CancellationToken stop) => Surface(gap.With(length: Length.FromMillimeters(mm)), stop);
            case 2:
                var bars = new SensitivityStudy<GapProblem> { Inputs = Inputs(gap), Unit = "K", Model = Surface };
                return facts => InParts(bars.BarsInParts(), parts, facts);
            case 3:
                VentLayout layout = PlanDraws.Layout(draws, "");
                return facts => Window(new GapQuestion { Problem = gap, Layout = layout, Solver = SolverOptions.ForStudies }, facts);
            default:
                var odds = new ReliabilityStudy<GapProblem, GapRun>
                {
                    Inputs = Inputs(gap),
                    Model = (g, stop) => g.Solve(options: SolverOptions.ForStudies, cancellationToken: stop),
                    Outcome = r => r.Outcome.GetType().Name,
                    Measures =
                    [
                        new("peak", "kPa", r => r.PeakGaugePressure.Kilopascals),
                        new("lit", "ms", r => r.TimeOf(GapEventKind.Lit)?.Milliseconds),
                    ],
                    Cases = draws.Count("cases", new(9, 5, 12, 1, 20)),
                    Seed = seed,
                    Design = (DesignKind)draws.Choice("design", 3),
                };
                return facts => StudyPromises.Odds(odds, parts, facts);
        }
    }

    private static void InParts<T>(PartitionedStudy<T> study, int parts, Facts facts)
    {
        facts.Answer = typeof(T).Name;
        facts.Steps += study.Cases;
        StudyPromises.InParts(study, parts, facts);
    }

    private static void Window(GapQuestion question, Facts facts)
    {
        var areas = Axis.Factors("area", "mm2", 1, 200, 7);
        facts.Answer = nameof(WindowResult);
        facts.Steps += areas.Values.Length;
        facts.Read("window", question.VentWindow(question.Problem.Design.Tube.Length, areas, new StudyOptions { Threads = 1 }));
    }

    private static InputSet<GapProblem> Inputs(GapProblem gap) => new(gap, [.. GapInputs.JudgedFor(gap.Design)]);

    private static double Surface(GapProblem gap, CancellationToken stop) =>
        gap.Solve(options: SolverOptions.ForStudies, cancellationToken: stop).PeakGrainSurface.Kelvins;
}
