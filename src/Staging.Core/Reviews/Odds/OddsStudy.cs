using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>Flies a plan with judged inputs and gathers which stages light.</summary>
internal sealed class OddsStudy(StagingPlan plan)
{
    public const string EveryStage = "every stage lights";

    /// <summary>Names of measures; those of one stage have its prefix before them.</summary>
    public const string Lit = "lit", Margin = "margin", Apogee = "apogee";

    /// <summary>Nothing is kept that the odds do not ask for.</summary>
    private static readonly FlightOptions Lean = new() { Scope = FlightScope.UppermostStage, KeepTracks = false };

    private readonly JudgedInputs judged = new(plan);

    /// <summary>Whether anything is judged, so that there are odds.</summary>
    public bool HasInputs => !judged.Inputs.IsEmpty;

    public Odds Run(int cases, ulong seed, StudyOptions? options, IProgress<StudyProgress>? progress, CancellationToken cancel)
    {
        PointEvaluator.RefusePart(options);
        if (!HasInputs)
        {
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU001", "Flight.Stages",
                "No stage is lit through a gap whose inputs are judged, so there is nothing to vary; a ReliabilityStudy takes inputs "
                    + "of your own.")]);
        }

        ReliabilityRun run = new ReliabilityStudy<StagingPlan, FlightRun>
        {
            Inputs = new InputSet<StagingPlan>(OfCases(plan), judged.Inputs),
            Model = (p, stop) => p.Flight.Fly(Lean, cancellationToken: stop),
            Outcome = Outcome,
            Measures = [.. Measures()],
            Cases = cases,
            Seed = seed,
            KeepCases = true,
        }.Run(options, progress, cancel);
        return new Odds(plan, run, judged.NotVaried);
    }

    /// <summary>The plan with its gaps integrated as finely as many cases need.</summary>
    internal static StagingPlan OfCases(StagingPlan plan) => plan with
    {
        Flight = plan.Flight with
        {
            Stages = [.. plan.Flight.Stages.Select(s => s.Ignition is StageIgnition.ByGap { Gap: GapIgnition gap } through
                ? s with { Ignition = through with { Gap = gap with { Solver = gap.Solver.OfCases } } }
                : s)],
        },
    };

    /// <summary>The outcome of a case in which the gap of a stage was not solved: it is neither lit nor cold.</summary>
    public static string NotSolved(string stage) => $"{stage} not solved";

    /// <summary>The lowest stage that stays cold, or whose gap was not solved.</summary>
    private string Outcome(FlightRun flight) =>
        plan.Flight.Stages.Skip(1).FirstOrDefault(s => Staging(flight, s) is not { Lit: true }) is not { } cold ? EveryStage
            : IsUnsolved(Staging(flight, cold)) ? NotSolved(cold.Name)
            : $"{cold.Name} stays cold";

    private IEnumerable<Measure<FlightRun>> Measures()
    {
        foreach (Stage stage in plan.Flight.Stages.Skip(1))
        {
            string prefix = JudgedInputs.Prefix(plan.Flight, stage);
            yield return new Measure<FlightRun>(prefix + Lit, "-", f => Staging(f, stage) is { Lit: true } ? 1 : 0);
            if (stage.Gap() is not null && prefix.Length > 0)
                yield return new Measure<FlightRun>(prefix + Margin, "K", f => Margin_K(Staging(f, stage)));
        }

        yield return new Measure<FlightRun>(Margin, "K", f => f.Stagings.Any(IsUnsolved) ? null : f.Stagings.Min(Margin_K));
        yield return new Measure<FlightRun>(Apogee, "m", f => f.Apogee?.Meters);
    }

    private static StagingReport? Staging(FlightRun flight, Stage stage) => flight.Stagings.FirstOrDefault(s => s.UpperStage == stage.Name);

    private static bool IsUnsolved(StagingReport? staging) => staging?.Details is GapRun { Failure: not null };

    /// <summary>
    /// How far the grain surface got above its ignition temperature [K]; null where the gap was not reached, or not
    /// solved.
    /// </summary>
    private static double? Margin_K(StagingReport? staging) => staging?.Details is GapRun { Failure: null } gap
        ? gap.PeakGrainSurface.Kelvins - gap.Problem.Design.Grain.IgnitionTemperature.Kelvins
        : null;
}
