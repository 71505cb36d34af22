using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>One hole that passes what several pass; see <see cref="VentHoles.ForFlow"/>.</summary>
internal static class EquivalentHole
{
    private const double MinDiameter = 1e-4;
    private const double MaxDiameter = 0.1;

    public static VentHoles ForFlow(MassFlow flow, GasState one, GasState two, IDischargeLaw law, Length wallThickness)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(two);
        ArgumentNullException.ThrowIfNull(law);
        double wall = Guard.In(wallThickness, 1e-5, 0.05, nameof(wallThickness)).Meters;
        double smallest = SmallestDiameter(law, wall);
        var f = new Surplus(flow.KilogramsPerSecond, Orifice.ToSi(one), Orifice.ToSi(two), law, wall);
        double min = f.FlowAt(smallest);
        double most = f.FlowAt(MaxDiameter);
        if (min == most)
            throw new ArgumentException("The pressures of both sides are equal: no hole passes anything.", nameof(two));
        Guard.In(flow.KilogramsPerSecond, Math.Min(min, most), Math.Max(min, most), "kg/s", nameof(flow));
        (double low, double high) = BracketedRoot.Shrink(ref f, smallest, f.At(smallest), MaxDiameter, f.At(MaxDiameter), 1e-15);
        return new VentHoles { Diameter = Length.FromMeters(0.5 * (low + high)), WallThickness = wallThickness, Count = 1 };
    }

    /// <summary>The least diameter whose hole is not too long for the law.</summary>
    private static double SmallestDiameter(IDischargeLaw law, double wall)
    {
        Guard.In(wall, 0, MaxDiameter * law.ThicknessToDiameterLimit, "m", "wallThickness");
        double d = Math.Max(MinDiameter, wall / law.ThicknessToDiameterLimit);
        return wall / d <= law.ThicknessToDiameterLimit ? d : Math.BitIncrement(d);
    }

    private readonly struct Surplus(double flow, OrificeSide one, OrificeSide two, IDischargeLaw law, double wall) : IScalarFunction
    {
        public double FlowAt(double diameter) =>
            OrificeKernel.SignedMassFlow(law, new OrificeSize(Math.PI / 4 * diameter * diameter, diameter, wall), one, two);

        public double At(double x) => Math.Abs(FlowAt(x)) - Math.Abs(flow);
    }
}
