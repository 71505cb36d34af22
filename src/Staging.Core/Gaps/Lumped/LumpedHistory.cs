using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>The course of a run on a lumped model: dense states and surface temperatures.</summary>
internal sealed class LumpedHistory(GapParameters parameters, DenseTrack track, IgnitionTracker watch) : GapHistory
{
    public GapParameters Parameters => parameters;

    public DenseTrack Track => track;

    public override GapReading At(double time)
    {
        Span<double> y = stackalloc double[parameters.StateCount];
        track.At(time, y);
        var now = new GapState(parameters, y);
        double surface = watch.SurfaceAt(time);
        GrainHeating heating = now.HeatingAt(time);
        return new GapReading
        {
            GapPressure = now.Pressure,
            ChamberPressure = now.ChamberPressure,
            JacketPressures = JacketPressures(now),
            Front = now.Front,
            HotTemperature = now.Hot.Temperature,
            NozzleTemperature = now.DeadEnd.Temperature,
            ProductsAtNozzle = now.DeadEnd.ProductFraction,
            GrainSurface = surface,
            JointTravel = y[StateLayout.Slide],
            Convection = heating.Convection(surface),
            Radiation = heating.Radiation(surface),
            Particles = heating.Particles(surface),
        };
    }

    private double[] JacketPressures(in GapState now)
    {
        if (parameters.Jackets.Length == 0)
            return [];
        var pressures = new double[parameters.Jackets.Length];
        for (int i = 0; i < pressures.Length; i++)
            pressures[i] = now.PressureOf(parameters.Jackets[i]);
        return pressures;
    }
}
