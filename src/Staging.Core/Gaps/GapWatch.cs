using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Follows the grain surface along the accepted steps, at a fixed interval, and keeps the extremes of the run.</summary>
/// <remarks>The gas does not feel the grain, so the surface can be marched on the dense output behind the integrator.</remarks>
internal sealed class GapWatch(GapParameters p) : IStepSink, IGapExtremes
{
    /// <summary>Interval of the surface march [s]: a hundredth of the shortest heating that matters (a few milliseconds).</summary>
    public const double Interval = 20e-6;

    private readonly HeatedSurface surface = new(p.Grain.Effusivity, Interval);
    private readonly double[] y = new double[GapState.Count];
    private double[] temperatures = [p.Grain.Initial, .. new double[255]];
    private int count = 1;

    private double Ignition => p.Grain.Ignition;

    /// <summary>Number of surface temperatures kept, one each <see cref="Interval"/> from time zero.</summary>
    public int Count => count;

    public double LitTime { get; private set; } = double.NaN;

    public double PeakSurface { get; private set; } = p.Grain.Initial;

    public double PeakPressure { get; private set; } = p.OutsidePressure;

    public double PeakProducts { get; private set; }

    public double LeastFrontRemaining { get; private set; } = p.LastVent;

    /// <summary>Surface temperature at a time [s], linear between the kept values [K].</summary>
    public double SurfaceAt(double time)
    {
        double s = Math.Clamp(time / Interval, 0, count - 1);
        int i = Math.Min((int)s, count - 1);
        return i + 1 < count ? temperatures[i] + (s - i) * (temperatures[i + 1] - temperatures[i]) : temperatures[i];
    }

    public void Accept(double start, double length, in DenseStep step)
    {
        if (start == 0)
            surface.Start(FluxAt(step, 0, p.Grain.Initial));
        for (double next = count * Interval; next <= start + length; next = count * Interval)
            March(step, next);
    }

    private void March(in DenseStep step, double time)
    {
        double before = temperatures[count - 1];
        double after = SurfaceAfter(step, time, Interval, before, out double flux);
        if (double.IsNaN(LitTime) && after >= p.Grain.Ignition)
        {
            var crossing = new Crossing(this, step, time - Interval, before);
            LitTime = crossing.Find();
            after = SurfaceAfter(step, time, Interval, before, out flux);
        }

        surface.Advance(flux);
        if (count == temperatures.Length)
            Array.Resize(ref temperatures, 2 * count);
        temperatures[count++] = after;
        PeakSurface = Math.Max(PeakSurface, after);
    }

    /// <summary>Surface temperature after a step of size h that ends at <paramref name="time"/>; the flux there depends on it, weakly.</summary>
    private double SurfaceAfter(in DenseStep step, double time, double h, double guess, out double flux)
    {
        step.At(Math.Max(time, step.Start), y);
        GapRates rates = default;
        var flows = new GapFlows(p, time, y, ref rates);
        PeakPressure = Math.Max(PeakPressure, flows.Pressure);
        PeakProducts = Math.Max(PeakProducts, flows.DeadEnd.ProductFraction);
        LeastFrontRemaining = Math.Min(LeastFrontRemaining, p.LastVent + flows.Stretch - flows.Front);

        double settled = p.Grain.Initial + surface.Settle(h);
        return new GrainHeating(flows, p).Settle(settled, surface.Gain, guess, out flux);
    }

    private double FluxAt(in DenseStep step, double time, double temperature)
    {
        step.At(time, y);
        GapRates rates = default;
        return new GrainHeating(new GapFlows(p, time, y, ref rates), p).Total(temperature);
    }

    /// <summary>The moment within one interval at which the surface passes its ignition temperature.</summary>
    private ref struct Crossing(GapWatch watch, DenseStep step, double start, double before) : IScalarFunction
    {
        private readonly DenseStep step = step;

        public double Find()
        {
            double low = 1e-3 * Interval;
            double atLow = At(low), atHigh = At(Interval);
            return atLow >= 0 ? start + low : start + BracketedRoot.Shrink(ref this, low, atLow, Interval, atHigh, 1e-9).High;
        }

        public double At(double h) =>
            watch.SurfaceAfter(step, start + h, h, before, out _) - watch.Ignition;
    }
}
