using System.Collections.Immutable;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>What a one-dimensional run keeps: readings at the marks of the grain surface, and profiles.</summary>
internal sealed class OneDimensionalRecord(GapParameters p, OneDimensionalGap gap, IgnitionTracker ignition)
{
    private readonly List<double> times = [];
    private readonly List<GapReading> readings = [];
    private readonly ImmutableArray<GapProfile>.Builder profiles = ImmutableArray.CreateBuilder<GapProfile>();

    public OneDimensionalHistory Course => new(times, readings, profiles.ToImmutable());

    /// <summary>Starts the surface and keeps the first reading.</summary>
    public void Start()
    {
        GrainHeating heating = gap.HeatingAt(gap.Time);
        ignition.Start(heating);
        Keep(heating);
    }

    /// <summary>The run stands at the next mark: marches the surface and keeps the reading.</summary>
    public void Mark()
    {
        Keep(ignition.Mark(gap));
        ignition.NoteFront(p.LastVent + gap.Stretch - readings[^1][GapChannel.Front]);
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
            products[k] = GapReading.Share(a.Fraction[i]);
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
        readings.Add(GapReading.Of(gap, heating, ignition.Surface));
    }
}
