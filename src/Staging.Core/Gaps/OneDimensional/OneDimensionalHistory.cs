using System.Collections.Immutable;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// The course of a resolved run: moments at a fixed interval and at the end, straight lines between them.
/// </summary>
internal sealed class OneDimensionalHistory(IReadOnlyList<double> times, IReadOnlyList<GapReading> moments,
    ImmutableArray<GapProfile> profiles) : GapHistory
{
    public override ImmutableArray<GapProfile> Profiles => profiles;

    public override GapReading At(double time)
    {
        int low = 0, high = times.Count - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = times[middle] <= time ? (middle, high) : (low, middle);
        }

        double span = times[high] - times[low], s = span > 0 ? Math.Clamp((time - times[low]) / span, 0, 1) : 0;
        GapReading a = moments[low], b = moments[high];
        double Between(double x, double y) => x + s * (y - x);
        return new GapReading
        {
            GapPressure = Between(a.GapPressure, b.GapPressure),
            ChamberPressure = Between(a.ChamberPressure, b.ChamberPressure),
            JacketPressures = [.. a.JacketPressures.Zip(b.JacketPressures, Between)],
            Front = Between(a.Front, b.Front),
            HotTemperature = Between(a.HotTemperature, b.HotTemperature),
            NozzleTemperature = Between(a.NozzleTemperature, b.NozzleTemperature),
            ProductsAtNozzle = Between(a.ProductsAtNozzle, b.ProductsAtNozzle),
            GrainSurface = Between(a.GrainSurface, b.GrainSurface),
            JointTravel = Between(a.JointTravel, b.JointTravel),
            Convection = Between(a.Convection, b.Convection),
            Radiation = Between(a.Radiation, b.Radiation),
            Particles = Between(a.Particles, b.Particles),
        };
    }
}
