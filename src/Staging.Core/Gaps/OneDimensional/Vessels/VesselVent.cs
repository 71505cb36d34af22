using Staging.Core.Discharge;
using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// What went from a parcel to the outside in a step: mass [kg], enthalpy [J], volume at the parcel's pressure [m3].
/// Negative when air came in.
/// </summary>
internal record struct Passed(double Mass, double Enthalpy, double Volume);

/// <summary>
/// Flow between a parcel and the air behind a hole over a time, by a discharge law: second order, and never past the
/// pressure there.
/// </summary>
internal static class VesselVent
{
    /// <summary>
    /// Share of the way to outside pressure, and of the mass, that one substep may go [-]; the midpoint rule errs by
    /// its cube.
    /// </summary>
    private const double SubstepShare = 0.25;

    /// <summary>
    /// Pressure difference over outside pressure at which the rest of the time passes nothing [-]: round-off of the
    /// law.
    /// </summary>
    private const double Settled = 1e-12;

    public static Passed Pass(IDischargeLaw law, in OrificeSize size, ref Parcel parcel, double volume, double time, double behind,
        GapParameters p)
    {
        var passed = default(Passed);
        var outside = new OrificeSide(behind, p.OutsideTemperature, p.Air);
        double left = time;
        while (left > 0)
        {
            Zone<Real> zone = parcel.Zone(p);
            double pressure = zone.PressureVolume / volume, over = Math.Abs(pressure - behind);
            double flow = OrificeKernel.SignedMassFlow(law, size, Side(zone, pressure), outside);
            if (flow == 0 || over <= Settled * behind)
                break;

            // Rate at which the parcel nears outside pressure, and at which its mass turns over [1/s].
            double swelling = flow > 0
                ? zone.Gamma * pressure / zone.DensityAt(pressure)
                : zone.GammaMinusOne * p.Air.Cp * p.OutsideTemperature;
            double rate = Math.Abs(flow) * Math.Max(swelling / (volume * over), 1.0 / zone.Mass);
            double h = Math.Min(left, SubstepShare / rate);

            // Midpoint: the state after half a substep gives the flow and the enthalpy of the whole.
            Parcel half = parcel;
            Move(ref half, zone, 0.5 * h * flow, p);
            Zone<Real> middle = half.Zone(p);
            double at = middle.PressureVolume / volume;
            double m = h * OrificeKernel.SignedMassFlow(law, size, Side(middle, at), outside);
            double enthalpy = Move(ref parcel, middle, m, p);
            passed.Mass += m;
            passed.Enthalpy += enthalpy;
            passed.Volume += m > 0 ? m / middle.DensityAt(at) : m * p.Air.R * p.OutsideTemperature / at;
            left -= h;
        }

        return passed;
    }

    /// <summary>
    /// Takes m kg of a zone's gas out, or lets -m kg of outside air in; returns the enthalpy that left.
    /// </summary>
    private static double Move(ref Parcel parcel, in Zone<Real> zone, double m, GapParameters p)
    {
        double enthalpy = m * (m > 0 ? zone.Enthalpy : p.Air.Cp * p.OutsideTemperature);
        if (m > 0)
            parcel.Add(-m * zone.ProductFraction, -m * (1.0 - zone.ProductFraction), -enthalpy);
        else
            parcel.Add(0, -m, -enthalpy);
        return enthalpy;
    }

    private static OrificeSide Side(in Zone<Real> zone, double pressure) =>
        new(pressure, zone.Temperature, new GasConstants(zone.R, zone.Gamma));
}
