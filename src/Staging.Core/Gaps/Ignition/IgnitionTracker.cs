using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// Follows the grain surface along the accepted steps, at a fixed interval, and keeps the extremes of the run.
/// </summary>
/// <remarks>
/// The gas does not feel the grain, so the surface can be marched on the dense output behind the integrator.
/// </remarks>
internal sealed class IgnitionTracker(GapParameters p) : IStepObserver, IGapExtremes
{
    /// <summary>
    /// Interval of the surface march [s]: a hundredth of the shortest heating that matters (a few milliseconds).
    /// </summary>
    public const double Interval = 20e-6;

    private readonly HeatedSurface surface = new(p.Grain.Effusivity, Interval, p.Horizon);
    private readonly double[] y = new double[p.StateCount];
    private double[] temperatures = [p.Grain.Initial, .. new double[255]];
    private int count = 1;
    private bool opened;
    private bool guided = true;
    private double lastPressure = p.OutsidePressure;

    /// <summary>Number of surface temperatures kept, one each <see cref="Interval"/> from time zero.</summary>
    public int Count => count;

    public double LitTime { get; private set; } = double.NaN;

    public double PeakSurface { get; private set; } = p.Grain.Initial;

    public double? PeakSurfaceAfterOpening { get; private set; }

    public double PeakPressure { get; private set; } = p.OutsidePressure;

    public double PeakProducts { get; private set; }

    public double MinFrontRemaining { get; private set; } = p.LastVent;

    /// <summary>Surface temperature at a time [s], linear between the kept values [K].</summary>
    public double SurfaceAt(double time)
    {
        double s = Math.Clamp(time / Interval, 0, count - 1);
        int i = Math.Min((int)s, count - 1);
        return i + 1 < count ? temperatures[i] + (s - i) * (temperatures[i + 1] - temperatures[i]) : temperatures[i];
    }

    /// <summary>
    /// Tells that the joint has opened: from here on the extremes are those of an unguided gas, and what lights counts
    /// as lit only while the core of a jet has reached the throat ever since.
    /// </summary>
    public void Open() => opened = true;

    public void Accept(double start, double length, in DenseStep step)
    {
        if (start == 0)
            surface.Start(FluxAt(step, 0, p.Grain.Initial));
        for (double next = count * Interval; next <= start + length; next = count * Interval)
            March(step, next);
        if (!opened)
            Extremes(step, start, length);
    }

    /// <summary>
    /// Extremes stand at the ends of steps, where sources turn abruptly, or within a smooth one: there at the top of
    /// the parabola through the pressures at its ends and middle.
    /// </summary>
    private void Extremes(in DenseStep step, double start, double length)
    {
        double middle = Look(step, start + 0.5 * length), end = Look(step, start + length);
        double bend = lastPressure - 2 * middle + end, top = 0.25 * (lastPressure - end) / bend;
        if (bend < 0 && Math.Abs(top) < 0.5)
            Look(step, start + (0.5 + top) * length);
        lastPressure = end;
    }

    /// <summary>Takes note of the extremes at a time; returns the pressure there [Pa].</summary>
    private double Look(in DenseStep step, double time)
    {
        step.At(time, y);
        var now = new GapState(p, y);
        PeakPressure = Math.Max(PeakPressure, now.Pressure);
        PeakProducts = Math.Max(PeakProducts, now.DeadEnd.ProductFraction);
        MinFrontRemaining = Math.Min(MinFrontRemaining, p.LastVent - now.Reach);
        return now.Pressure;
    }

    private void March(in DenseStep step, double time)
    {
        guided &= !opened || CoreReaches(step, time);
        double before = temperatures[count - 1];
        double after = SurfaceAfter(step, time, Interval, before, out double flux);
        if (guided && double.IsNaN(LitTime) && after >= p.Grain.Ignition)
        {
            var crossing = new Crossing(surface, p.Grain.Ignition - p.Grain.Initial, flux);
            LitTime = time - Interval + crossing.Find(before - p.Grain.Ignition, after - p.Grain.Ignition);
            surface.Settle(Interval);
        }

        surface.Advance(flux);
        if (count == temperatures.Length)
            Array.Resize(ref temperatures, 2 * count);
        temperatures[count++] = after;
        if (opened)
            PeakSurfaceAfterOpening = Math.Max(PeakSurfaceAfterOpening ?? 0, after);
        if (guided)
            PeakSurface = Math.Max(PeakSurface, after);
    }

    private bool CoreReaches(in DenseStep step, double time)
    {
        step.At(time, y);
        return new GapState(p, y).CoreReachesAt(time);
    }

    /// <summary>
    /// Surface temperature after a step of size h that ends at <paramref name="time"/>; the flux there depends on it,
    /// weakly.
    /// </summary>
    private double SurfaceAfter(in DenseStep step, double time, double h, double guess, out double flux)
    {
        step.At(Math.Max(time, step.Start), y);
        var now = new GapState(p, y);
        double settled = p.Grain.Initial + surface.Settle(h);
        return now.HeatingAt(time).Settle(settled, surface.Gain, guess, out flux);
    }

    private double FluxAt(in DenseStep step, double time, double temperature)
    {
        step.At(time, y);
        return new GapState(p, y).HeatingAt(time).Total(temperature);
    }

    /// <summary>
    /// The moment within one interval at which the surface passes its ignition temperature, with the flux that the
    /// march itself takes: linear.
    /// </summary>
    private struct Crossing(HeatedSurface surface, double rise, double flux) : IScalarFunction
    {
        /// <summary>
        /// Time into the interval [s], from the shortfall at its start and the excess at its end [K].
        /// </summary>
        public double Find(double atStart, double atEnd) =>
            atStart >= 0 ? 0 : BracketedRoot.Shrink(ref this, 0, atStart, Interval, atEnd, 1e-12).High;

        public readonly double At(double h)
        {
            double settled = surface.Settle(h);
            return settled + surface.Gain * (surface.Flux + (flux - surface.Flux) * (h / Interval)) - rise;
        }
    }
}
