using Staging.Core.Solving;

namespace Staging.Core.Discharge;

/// <summary>One hole that passes the flow of several; see <see cref="VentHoles.ForFlow"/>.</summary>
internal static class EquivalentHole
{
    private const double MinDiameter = 1e-4;
    private const double MaxDiameter = 0.1;

    /// <summary>Its diameter [m] from a signed flow [kg/s] and a wall [m].</summary>
    public static double DiameterFor(double flow, OrificeSide one, OrificeSide two, IDischargeLaw law, double wall)
    {
        double smallest = SmallestDiameter(law, wall);
        var f = new HoleSurplus(flow, one, two, law, wall);
        double min = f.FlowAt(smallest);
        double most = f.FlowAt(MaxDiameter);
        if (min == most)
            throw new ArgumentException("The pressures of both sides are equal: no hole passes anything.", nameof(two));
        Guard.In(flow, Math.Min(min, most), Math.Max(min, most), "kg/s", nameof(flow));
        (double low, double high) = BracketedRoot.Shrink(ref f, smallest, f.At(smallest), MaxDiameter, f.At(MaxDiameter), 1e-15);
        return 0.5 * (low + high);
    }

    /// <summary>The least diameter whose hole is not too long for the law.</summary>
    private static double SmallestDiameter(IDischargeLaw law, double wall)
    {
        Guard.In(wall, 0, MaxDiameter * law.ThicknessToDiameterLimit, "m", "wallThickness");
        double d = Math.Max(MinDiameter, wall / law.ThicknessToDiameterLimit);
        return wall / d <= law.ThicknessToDiameterLimit ? d : Math.BitIncrement(d);
    }

    /// <summary>Magnitude of the flow through a hole of a diameter less that of a given flow.</summary>
    private readonly struct HoleSurplus(double flow, OrificeSide one, OrificeSide two, IDischargeLaw law, double wall) : IScalarFunction
    {
        public double FlowAt(double diameter) =>
            OrificeKernel.SignedMassFlow(law, new OrificeSize(Math.PI / 4 * diameter * diameter, diameter, wall), one, two);

        public double At(double x) => Math.Abs(FlowAt(x)) - Math.Abs(flow);
    }
}
