using System.Collections.Immutable;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Follows the grain surface at a fixed interval, and keeps moments, profiles and extremes of the run.
/// </summary>
internal sealed class OneDimensionalTracker : IGapExtremes
{
    private readonly GapParameters p;
    private readonly OneDimensionalGap gap;
    private readonly HeatedSurface surface;
    private readonly List<double> times = [];
    private readonly List<GapReading> moments = [];
    private readonly ImmutableArray<GapProfile>.Builder profiles = ImmutableArray.CreateBuilder<GapProfile>();
    private double temperature;
    private bool opened;
    private bool guided = true;

    public OneDimensionalTracker(GapParameters p, OneDimensionalGap gap)
    {
        this.p = p;
        this.gap = gap;
        surface = new HeatedSurface(p.Grain.Effusivity, IgnitionTracker.Interval, p.Horizon);
        temperature = PeakSurface = p.Grain.Initial;
        PeakPressure = p.OutsidePressure;
        MinFrontRemaining = p.LastVent;
        GrainHeating heating = gap.HeatingAt(gap.Time);
        surface.Start(heating.Total(temperature));
        Keep(heating);
    }

    public double LitTime { get; private set; } = double.NaN;

    public double PeakSurface { get; private set; }

    public double? PeakSurfaceAfterOpening { get; private set; }

    public double PeakPressure { get; private set; }

    public double PeakProducts { get; private set; }

    public double MinFrontRemaining { get; private set; }

    /// <summary>Time of the next look [s].</summary>
    public double Next => Marks * IgnitionTracker.Interval;

    /// <summary>Looks that lie behind, the one at the start included.</summary>
    private int Marks { get; set; } = 1;

    public OneDimensionalHistory Course => new(times, moments, profiles.ToImmutable());

    /// <summary>
    /// Tells that the joint has opened: from here on the extremes are those of an unguided gas, and what lights counts
    /// as lit only while the core of a jet has reached the throat ever since.
    /// </summary>
    public void Open() => opened = true;

    /// <summary>The extremes after a step.</summary>
    public void Stepped(double pressure, double productsAtNozzle)
    {
        if (opened)
            return;
        PeakPressure = Math.Max(PeakPressure, pressure);
        PeakProducts = Math.Max(PeakProducts, productsAtNozzle);
    }

    /// <summary>
    /// The run stands at <see cref="Next"/>: marches the surface by one interval and keeps the moment.
    /// </summary>
    public void Mark()
    {
        guided &= !opened || gap.CoreReachesAt(gap.Time);
        GrainHeating heating = gap.HeatingAt(gap.Time);
        double settled = p.Grain.Initial + surface.Settle(IgnitionTracker.Interval);
        double after = heating.Settle(settled, surface.Gain, temperature, out double flux);
        surface.Advance(flux);
        if (guided && double.IsNaN(LitTime) && after >= p.Grain.Ignition)
            LitTime = Next - IgnitionTracker.Interval * (after - p.Grain.Ignition) / (after - temperature);
        temperature = after;
        Marks++;
        Keep(heating);
        if (guided)
            PeakSurface = Math.Max(PeakSurface, after);
        if (opened)
        {
            PeakSurfaceAfterOpening = Math.Max(PeakSurfaceAfterOpening ?? 0, after);
            return;
        }

        MinFrontRemaining = Math.Min(MinFrontRemaining, p.LastVent + gap.Stretch - moments[^1][GapChannel.Front]);
    }

    /// <summary>Keeps the last moment of the run.</summary>
    public void Finish()
    {
        if (gap.Time > times[^1])
            Keep(gap.HeatingAt(gap.Time));
    }

    /// <summary>Keeps the gas along the tube.</summary>
    public void KeepProfile()
    {
        TubeArrays a = gap.Tube.Cells;
        int n = a.Count;
        double[] x = new double[n], pressure = new double[n], velocity = new double[n], kelvins = new double[n], density = new double[n],
            products = new double[n];
        for (int k = 0; k < n; k++)
        {
            int i = a.First + k;
            x[k] = gap.StationOf(i);
            pressure[k] = a.Pressure[i];
            velocity[k] = a.Velocity[i];
            kelvins[k] = gap.TemperatureAt(i);
            density[k] = a.Density[i];
            products[k] = a.Fraction[i];
        }

        profiles.Add(new GapProfile(gap.Time)
        {
            Station_m = x,
            Pressure_Pa = pressure,
            Velocity_m_per_s = velocity,
            Temperature_K = kelvins,
            Density_kg_per_m3 = density,
            Products = products,
        });
    }

    private void Keep(in GrainHeating heating)
    {
        times.Add(gap.Time);
        moments.Add(GapReading.Of(gap, heating, temperature));
    }
}
