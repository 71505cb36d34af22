using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Decides the outcome of a run and puts cause and remedy into words and numbers.</summary>
internal sealed class OutcomeDiagnosis(
    GapParameters p, IgnitionTracker ignition, ImmutableArray<GapEvent> events, SolverFailure? failure, double end)
{
    /// <summary>
    /// Depth of a dead end that counts as none, in bores [-]: a judgement, a third of the reach of stirring.
    /// </summary>
    private const double NearNozzle = 0.5;

    /// <summary>
    /// Peak gauge over outside pressure above which the holes, below which the source holds the heat back [-]:
    /// judgements, read off runs of the starting gap over vent area, whose grain is hottest between the two.
    /// </summary>
    private const double Crowded = 0.5, Slack = 0.1;

    private double Shortfall => Math.Max(0, p.Grain.Ignition - ignition.PeakSurface);

    private double DepthInBores => p.DeadEndDepth / p.Bore;

    private bool CrossesAsJet => p.FreeLength > 0 && FreeJet.Share<Real>(p.FreeLength, p.JetCore, FreeJet.Hot) < 1;

    /// <summary>Some vent lies along more than a bore of the tube.</summary>
    private bool OpensEarly => p.Vents.Any(v => v.Spread > p.Bore);

    /// <summary>No vent of the tube leads anywhere.</summary>
    private bool Closed => p.Vents.All(v => v.Stirring == 0);

    private double PeakGauge => ignition.PeakPressure - p.OutsidePressure;

    /// <summary>
    /// Peak gauge pressure as a share of the outside pressure [-]: says whether the air or the source is what is
    /// missing.
    /// </summary>
    private double Crowding => PeakGauge / p.OutsidePressure;

    private bool HorizonEndedIt => end >= p.Horizon;

    private string Watched => HorizonEndedIt ? Invariant.Text($" The gap was watched for {end * 1e3:F0} ms only.") : "";

    public GapOutcome Outcome =>
        failure is not null ? NotSolved(failure)
        : ignition.IsLit ? Lit()
        : TimeOf(GapEventKind.JointOpens) is double opened ? PushedApart(opened)
        : TimeOf(GapEventKind.ProductsAtNozzle) is not null ? TooCool()
        : TimeOf(GapEventKind.FrontAtLastVent) is not null ? VentedAway()
        : VentsPassed > 0 ? LeftEarly()
        : DidNotReach();

    /// <summary>How many vents before the last the front has passed.</summary>
    private int VentsPassed => p.Vents.Count(v => v.Stirring > 0 && v.Station < p.LastVent - ignition.MinFrontRemaining);

    private GapOutcome.Lit Lit()
    {
        double? margin = TimeOf(GapEventKind.JointOpens) - ignition.LitTime;
        string parted = margin < 0
            ? Invariant.Text($" The joint had opened {-margin * 1e3:F2} ms before; the core of the booster's jet still reached the throat.")
            : "";
        return new GapOutcome.Lit
        {
            Time = Duration.FromSeconds(ignition.LitTime),
            MarginToSeparation = margin is double m ? Duration.FromSeconds(m) : null,
            Path = Path,
            SurfaceMargin = TemperatureDelta.FromKelvins(ignition.PeakSurface - p.Grain.Ignition),
            Cause = Invariant.Text($"The grain surface passed {p.Grain.Ignition:F0} K {ignition.LitTime * 1e3:F2} ms after burn-through, "
                + $"{Way()}; the gap peaked at {PeakGauge / 1e3:F0} kPa gauge.{parted}"),
            Remedy = margin < 0
                ? "Tape or a joint that holds until the grain is lit: what a jet lights across an open gap hangs on its aim."
                : margin is double left
                ? Invariant.Text(
                    $"The joint opens {left * 1e3:F2} ms later by gap pressure alone; more holding force or engagement widens that margin.")
                : Invariant.Text($"The joint had not opened by {end * 1e3:F1} ms; the upper motor must push it apart itself."),
        };
    }

    private IgnitionPath Path => ignition.LitByJet ? IgnitionPath.Jet
        : TimeOf(GapEventKind.PiecesAtNozzle) < ignition.LitTime ? IgnitionPath.Pieces
        : IgnitionPath.Gas;

    private string Way() => Path switch
    {
        IgnitionPath.Jet => "by the jet out of the booster",
        IgnitionPath.Pieces => "by burning pieces before the nozzle",
        _ => "by gas and particles behind the front",
    };

    private string Holding() => p.Film is { } film
        ? Invariant.Text($"a joint of {p.Breakaway:F1} N and tape of {film.Strength:F1} N")
        : Invariant.Text($"a joint of {p.Breakaway:F1} N");

    private GapOutcome.PushedApart PushedApart(double opened)
    {
        double push = PeakGauge * p.JointArea, pressed = p.ReducedMass * p.ClosingAcceleration;
        double need = push - pressed;
        string helped = pressed >= 0
            ? Invariant.Text($"drag and thrust pressed the bodies together with {pressed:F1} N")
            : Invariant.Text($"drag and thrust pulled with {-pressed:F1} N more");
        return new GapOutcome.PushedApart
        {
            Time = Duration.FromSeconds(opened),
            PeakGaugePressure = Pressure.FromPascals(PeakGauge),
            FrontRemaining = Length.FromMeters(Math.Max(0, ignition.MinFrontRemaining)),
            SurfaceShortfall = TemperatureDelta.FromKelvins(Shortfall),
            Cause = Invariant.Text($"The gap peaked at {PeakGauge / 1e3:F0} kPa gauge and pushed with {push:F1} N against "
                + $"{Holding()}; {helped}; it opened {opened * 1e3:F2} ms after burn-through, the grain surface {Shortfall:F0} K short."),
            Remedy = p.Film is { } film && need < p.Breakaway + film.Strength
                ? "Tape that the heat does not soften so soon, thicker or of paper: cold it would have held."
                : InContact
                ? Invariant.Text($"Stronger tape, for more than {need:F1} N: nothing vents between motors in contact; or a gap with vents.")
                : Invariant.Text($"Vent more, so that the pressure stays lower, or hold longer: a joint that must not move needs more than "
                    + $"{need:F1} N; greater engagement than {p.Engagement * 1e3:F1} mm delays the opening."),
        };
    }

    /// <summary>Whether there is no gap to shorten, nor a wall to drill.</summary>
    private bool InContact => p.Vents.Length == 0 && p.TubeLength <= GapProblem.Shortest_m;

    private GapOutcome.VentedAway VentedAway() => new()
    {
        Time = Duration.FromSeconds(end),
        ProductsAtNozzle = GapReading.Share(ignition.PeakProducts),
        SurfaceShortfall = TemperatureDelta.FromKelvins(Shortfall),
        Cause = Closed
            ? Invariant.Text($"The front came to the end of the closed tube, but no stream stirs the gas before the nozzle; "
                + $"{ignition.PeakProducts:P0} of it was products at most.{Watched}")
            : Invariant.Text($"The front reached the last vent and left through it; {ignition.PeakProducts:P0} of the gas at the nozzle "
                + $"was products at most. The last vent is {DepthInBores:F1} bores short of the nozzle plane.{Watched}"),
        Remedy = CrossesAsJet ? GuideAcross
            : OpensEarly ? GuideToNozzle
            : Closed ? "Vent the gap directly below the upper nozzle."
            : DepthInBores > NearNozzle
            ? "Put the last vent directly below the upper nozzle; stirring reaches one to two bores into a dead end."
            : "More vent area there, so that a stream stirs the gas before the nozzle, or a source that lasts longer.",
    };

    private GapOutcome.VentedAway LeftEarly() => new()
    {
        Time = Duration.FromSeconds(end),
        ProductsAtNozzle = GapReading.Share(ignition.PeakProducts),
        SurfaceShortfall = TemperatureDelta.FromKelvins(Shortfall),
        Cause = Invariant.Text($"The products left through vents below the last, {VentsPassed} in number; the front came no nearer to "
            + $"the last vent than {Math.Max(0, ignition.MinFrontRemaining) * 1e3:F0} mm.{Watched}"),
        Remedy = "Close the vents below the last, or put a guide tube across them: all the area belongs directly below the upper nozzle.",
    };

    private GapOutcome.TooCool TooCool() => new()
    {
        Time = Duration.FromSeconds(end),
        PeakSurface = Temperature.FromKelvins(ignition.PeakSurface),
        SurfaceShortfall = TemperatureDelta.FromKelvins(Shortfall),
        Cause = Invariant.Text($"Products came to the nozzle, but the grain surface reached {ignition.PeakSurface:F0} K at most, "
            + $"{Shortfall:F0} K short; the gap peaked at {PeakGauge / 1e3:F0} kPa gauge.{Watched}"),
        Remedy = CrossesAsJet ? GuideAcross : OpensEarly
            ? GuideToNozzle
            : (InContact ? "A booster with more burn-through gas"
                : "A shorter gap, a narrower guide tube or a booster with more burn-through gas")
            + (Crowding > Crowded ? "; more vent area, for a stronger stream heats more." : Crowding < Slack
                ? "; less vent area, for denser gas heats more."
                : "."),
    };

    private GapOutcome.DidNotReach DidNotReach() => new()
    {
        Time = Duration.FromSeconds(end),
        FrontRemaining = Length.FromMeters(Math.Max(0, ignition.MinFrontRemaining)),
        Cause = Invariant.Text(
            $"The front came no nearer to "
                + $"{(Closed ? "the end of the tube" : "the last vent")} than {Math.Max(0, ignition.MinFrontRemaining) * 1e3:F0} mm; the "
                    + $"gap peaked at {PeakGauge / 1e3:F0} kPa gauge.{Watched}"),
        Remedy = Closed ? "Vent the gap: the air in a closed tube has nowhere to go."
            : Crowding < Slack
            ? "More burn-through gas, or a gap shorter by at least that distance: it is not the vent that holds the front back."
            : "Let more air out (more vent area at the last station, none before it) or shorten the gap by at least that distance.",
    };

    private GapOutcome.NotSolved NotSolved(SolverFailure failure) => new(failure)
    {
        Time = Duration.FromSeconds(end),
        Cause = failure.Message,
        Remedy = failure.Kind == SolverFailureKind.TooManySteps
            ? "Allow more steps, or watch a shorter time: very wide vents, small chambers and fine cells make many small steps."
            : "Check the inputs for extreme values.",
    };

    private double? TimeOf(GapEventKind kind) => events.FirstOrDefault(e => e.Kind == kind)?.Time.Seconds;

    private const string GuideToNozzle = "Run a guide tube across the opening, with small holes directly below the upper nozzle: holes "
        + "that lie far below it stir little of the gas before it.";

    private const string GuideAcross = "Run a guide tube across the opening, with small holes directly below the upper nozzle: the "
        + "stream crosses the opening as a free jet and mixes with air.";
}
