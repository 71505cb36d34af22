using System.Collections.Immutable;
using System.Globalization;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Decides the outcome of a run and puts cause and cure into words and numbers.</summary>
internal sealed class OutcomeLifting(
    GapDesign design, GapParameters p, IGapExtremes watch, ImmutableArray<GapEvent> events, SolverFailure? failure, double end)
{
    private double Shortfall => Math.Max(0, p.Grain.Ignition - watch.PeakSurface);

    private double DepthInBores => (design.Tube.Length.Meters - p.LastVent) / p.Bore;

    private double PeakGauge => watch.PeakPressure - p.OutsidePressure;

    public GapOutcome Outcome =>
        !double.IsNaN(watch.LitTime) ? Lit()
        : failure is not null ? NotSolved(failure)
        : TimeOf(GapEventKind.JointOpens) is double opened ? PushedApart(opened)
        : TimeOf(GapEventKind.FrontAtLastVent) is null ? DidNotReach()
        : TimeOf(GapEventKind.ProductsAtNozzle) is null ? VentedAway()
        : TooCool();

    private GapOutcome.Lit Lit()
    {
        double? margin = TimeOf(GapEventKind.JointOpens) - watch.LitTime;
        return new GapOutcome.Lit
        {
            Time = Duration.FromSeconds(watch.LitTime),
            MarginToSeparation = margin is double m ? Duration.FromSeconds(m) : null,
            SurfaceMargin = TemperatureDelta.FromKelvins(watch.PeakSurface - p.Grain.Ignition),
            Cause = Say($"The grain surface passed {p.Grain.Ignition:F0} K {watch.LitTime * 1e3:F2} ms after burn-through; the gap peaked at {PeakGauge / 1e3:F0} kPa gauge."),
            Cure = margin is double left
                ? Say($"The joint opens {left * 1e3:F2} ms later by gap pressure alone; more holding force or engagement widens that margin.")
                : Say($"The joint had not opened by {end * 1e3:F1} ms; the upper motor must push it apart itself."),
        };
    }

    private GapOutcome.PushedApart PushedApart(double opened)
    {
        double push = PeakGauge * p.JointArea;
        return new GapOutcome.PushedApart
        {
            Time = Duration.FromSeconds(opened),
            PeakGaugePressure = Pressure.FromPascals(PeakGauge),
            FrontRemaining = Length.FromMeters(Math.Max(0, watch.LeastFrontRemaining)),
            SurfaceShortfall = TemperatureDelta.FromKelvins(Shortfall),
            Cause = Say($"The gap peaked at {PeakGauge / 1e3:F0} kPa gauge and pushed with {push:F1} N against a joint of {p.Breakaway:F1} N; it opened {opened * 1e3:F2} ms after burn-through, the grain surface {Shortfall:F0} K short."),
            Cure = Say($"Vent more, so that the pressure stays lower, or hold longer: a joint that must not move needs more than {push:F1} N; greater engagement than {p.Engagement * 1e3:F1} mm delays the opening."),
        };
    }

    private GapOutcome.VentedAway VentedAway() => new()
    {
        Time = Duration.FromSeconds(end),
        ProductsAtNozzle = watch.PeakProducts,
        SurfaceShortfall = TemperatureDelta.FromKelvins(Shortfall),
        Cause = Say($"The front reached the last vent and left through it; {watch.PeakProducts:P0} of the gas at the nozzle was products at most. The last vent is {DepthInBores:F1} bores short of the nozzle plane."),
        Cure = "Put the last vent directly below the upper nozzle; stirring reaches one to two bores into a dead end.",
    };

    private GapOutcome.TooCool TooCool() => new()
    {
        Time = Duration.FromSeconds(end),
        PeakSurface = Temperature.FromKelvins(watch.PeakSurface),
        SurfaceShortfall = TemperatureDelta.FromKelvins(Shortfall),
        Cause = Say($"Products came to the nozzle, but the grain surface reached {watch.PeakSurface:F0} K at most, {Shortfall:F0} K short; the gap peaked at {PeakGauge / 1e3:F0} kPa gauge."),
        Cure = "A shorter gap, a narrower guide tube, less vent area (denser gas at the grain) or a booster with more burn-through gas.",
    };

    private GapOutcome.DidNotReach DidNotReach() => new()
    {
        Time = Duration.FromSeconds(end),
        FrontRemaining = Length.FromMeters(Math.Max(0, watch.LeastFrontRemaining)),
        Cause = Say($"The front came no nearer to the last vent than {Math.Max(0, watch.LeastFrontRemaining) * 1e3:F0} mm; the gap peaked at {PeakGauge / 1e3:F0} kPa gauge."),
        Cure = p.Vents.Length == 0
            ? "Vent the gap: the air in a closed tube has nowhere to go."
            : "Let more air out (more vent area at the last station, none before it) or shorten the gap by at least that distance.",
    };

    private static GapOutcome.NotSolved NotSolved(SolverFailure failure) => new()
    {
        Time = failure.Time,
        Failure = failure,
        Cause = failure.Message,
        Cure = "Check the inputs for extreme values, or loosen the tolerance.",
    };

    private double? TimeOf(GapEventKind kind) => events.FirstOrDefault(e => e.Kind == kind)?.Time.Seconds;

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
