using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>The course of a displacement run: dense states and surface temperatures.</summary>
internal sealed class DisplacementCourse(GapParameters parameters, DenseTrack track, GapWatch watch) : GapCourse
{
    public override GapMoment At(double time)
    {
        Span<double> y = stackalloc double[GapState.Count];
        track.At(time, y);
        GapRates rates = default;
        var flows = new GapFlows(parameters, time, y, ref rates);
        double surface = watch.SurfaceAt(time);
        var heating = new GrainHeating(flows, parameters);
        return new GapMoment
        {
            GapPressure = flows.Pressure,
            ChamberPressure = flows.ChamberPressure,
            Front = flows.Front,
            HotTemperature = flows.Hot.Temperature,
            NozzleTemperature = flows.DeadEnd.Temperature,
            ProductsAtNozzle = flows.DeadEnd.ProductFraction,
            GrainSurface = surface,
            JointTravel = y[GapState.Slide],
            Convection = heating.Convection(surface),
            Radiation = heating.Radiation(surface),
            Particles = heating.Particles(surface),
        };
    }
}
