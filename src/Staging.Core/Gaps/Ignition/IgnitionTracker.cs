using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// Marches the grain surface at a fixed interval, notes when it passes its ignition temperature, and keeps the extremes
/// of a run: the same for every model.
/// </summary>
/// <remarks>The gas does not feel the grain, so the surface may be marched behind the flow.</remarks>
internal sealed class IgnitionTracker(GapParameters p)
{
    /// <summary>
    /// Interval of the surface march [s]: a hundredth of the shortest heating that matters (a few milliseconds).
    /// </summary>
    public const double Interval = 20e-6;

    private readonly HeatedSurface surface = new(p.Grain.Effusivity, Interval, p.Horizon);
    private double[] temperatures = [p.Grain.Initial, .. new double[255]];
    private int count = 1;
    private bool guided = true;

    /// <summary>Number of the next mark; the first is at time zero.</summary>
    public int NextMark => count;

    /// <summary>Time of the next mark [s].</summary>
    public double Next => TimeOf(count);

    /// <summary>Surface temperature at the last mark [K].</summary>
    public double Surface => temperatures[count - 1];

    /// <summary>Whether the joint has opened.</summary>
    public bool Opened { get; private set; }

    /// <summary>
    /// Whether each mark asks for the core of a jet: the joint has opened, and it has reached the throat ever since.
    /// </summary>
    public bool FollowsCore => Opened && guided;

    /// <summary>When the surface passed its ignition temperature [s]; not a number while it has not.</summary>
    public double LitTime { get; private set; } = double.NaN;

    /// <summary>Whether it has passed it.</summary>
    public bool IsLit => !double.IsNaN(LitTime);

    /// <summary>Whether the jet out of a chamber did it.</summary>
    public bool LitByJet { get; private set; }

    /// <summary>Highest surface temperature while something guided the gas [K].</summary>
    public double PeakSurface { get; private set; } = p.Grain.Initial;

    /// <summary>
    /// Highest surface temperature after the joint had opened [K]; null while it has not been followed beyond.
    /// </summary>
    public double? PeakSurfaceAfterOpening { get; private set; }

    /// <summary>Highest gap pressure [Pa].</summary>
    public double PeakPressure { get; private set; } = p.OutsidePressure;

    /// <summary>Greatest product fraction at the nozzle [-].</summary>
    public double PeakProducts { get; private set; }

    /// <summary>Least distance of the front from the last vent [m].</summary>
    public double MinFrontRemaining { get; private set; } = p.LastVent;

    /// <summary>Time of a mark [s].</summary>
    public static double TimeOf(int mark) => mark * Interval;

    /// <summary>Surface temperature at a time [s], linear between the marks [K].</summary>
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
    public void Open() => Opened = true;

    /// <summary>Sets the heat transfer at time zero.</summary>
    public void Start(in GrainHeating heating) => surface.Start(heating.Total(p.Grain.Initial));

    /// <summary>Marches the surface by one interval, to <see cref="Next"/>, where the gap is in view.</summary>
    /// <returns>The heat transfer there.</returns>
    public GrainHeating Mark<TView>(in TView gap)
        where TView : IGapView, allows ref struct
    {
        guided = guided && (!Opened || gap.CoreReachesAt(Next));
        GrainHeating heating = gap.HeatingAt(Next);
        March(heating);
        return heating;
    }

    /// <summary>Marches the surface by one interval, with the heat transfer at <see cref="Next"/>.</summary>
    public void March(in GrainHeating heating)
    {
        double before = Surface;
        double after = heating.Settle(p.Grain.Initial + surface.Settle(Interval), surface.Gain, before, out double flux);
        if (guided && !IsLit && after >= p.Grain.Ignition)
        {
            var crossing = new Crossing(surface, p.Grain.Ignition - p.Grain.Initial, flux);
            LitByJet = heating.IsByJet;
            LitTime = Next - Interval + crossing.Find(before - p.Grain.Ignition, after - p.Grain.Ignition);
            surface.Settle(Interval);
        }

        surface.Advance(flux);
        if (count == temperatures.Length)
            Array.Resize(ref temperatures, 2 * count);
        temperatures[count++] = after;
        if (Opened)
            PeakSurfaceAfterOpening = Math.Max(PeakSurfaceAfterOpening ?? 0, after);
        if (guided)
            PeakSurface = Math.Max(PeakSurface, after);
    }

    /// <summary>Takes note of gap pressure [Pa] and products at the nozzle [-] at a moment.</summary>
    public void Note(double pressure, double products)
    {
        if (Opened)
            return;
        PeakPressure = Math.Max(PeakPressure, pressure);
        PeakProducts = Math.Max(PeakProducts, products);
    }

    /// <summary>Takes note of the distance of the front from the last vent at a moment [m].</summary>
    public void NoteFront(double remaining)
    {
        if (!Opened)
            MinFrontRemaining = Math.Min(MinFrontRemaining, remaining);
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
