using Staging.Core.Gases;

namespace Staging.Core.Discharge;

/// <summary>One side of an opening as plain SI numbers: gas at rest.</summary>
internal readonly struct OrificeSide(double pressure, double temperature, GasConstants gas)
{
    /// <summary>Absolute pressure [Pa].</summary>
    public double P { get; } = pressure;

    /// <summary>Absolute temperature [K].</summary>
    public double T { get; } = temperature;

    public GasConstants Gas { get; } = gas;
}

/// <summary>The holes as plain SI numbers.</summary>
internal readonly struct OrificeSize(double area, double diameter, double thickness)
{
    public OrificeSize(VentHoles holes)
        : this(holes.TotalArea.SquareMeters, holes.Diameter.Meters, holes.WallThickness.Meters)
    {
    }

    /// <summary>Area of all holes [m2].</summary>
    public double Area { get; } = area;

    /// <summary>Diameter of one hole [m].</summary>
    public double Diameter { get; } = diameter;

    /// <summary>Wall thickness [m].</summary>
    public double Thickness { get; } = thickness;
}

/// <summary>Signed flow between two sides, for inner loops: no checks, no allocation.</summary>
internal static class OrificeKernel
{
    /// <summary>
    /// Mass flow [kg/s] from side one to side two; negative when it runs the other way, with the gas of side two.
    /// </summary>
    public static double SignedMassFlow(IDischargeLaw law, in OrificeSize size, in OrificeSide one, in OrificeSide two)
    {
        if (one.P == two.P)
            return 0;
        return one.P > two.P
            ? size.Area * law.MassFlux_kg_per_m2s(Conditions(size, one, two.P))
            : -size.Area * law.MassFlux_kg_per_m2s(Conditions(size, two, one.P));
    }

    /// <summary>
    /// Signed mass flow with its derivatives with respect to the two pressures [kg/s, kg/(s Pa)], at fixed
    /// temperatures.
    /// </summary>
    public static OrificeDerivatives SignedSlopes(IDischargeLaw law, in OrificeSize size, in OrificeSide one,
        in OrificeSide two)
    {
        bool forward = one.P >= two.P;
        (double flux, double byUpstream,
            double byDownstream) = law.SlopesAt(forward ? Conditions(size, one, two.P) : Conditions(size, two, one.P));
        return forward
            ? new OrificeDerivatives(size.Area * flux, size.Area * byUpstream,
                size.Area * byDownstream)
            : new OrificeDerivatives(-size.Area * flux, -size.Area * byDownstream,
                -size.Area * byUpstream);
    }

    /// <summary>Conditions for the law, seen from the side of the higher pressure.</summary>
    public static OrificeConditions Conditions(in OrificeSize size, in OrificeSide upstream, double downstreamPressure) =>
        new(upstream.P, upstream.T, downstreamPressure, upstream.Gas.R, upstream.Gas.Gamma, size.Diameter, size.Thickness);
}
