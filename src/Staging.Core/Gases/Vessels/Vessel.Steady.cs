namespace Staging.Core.Gases;

// The pressure at which a vented vessel settles under a constant inflow of gas of constant temperature, in closed form
// and both ways; q = mdot sqrt(R T0)/(Cd A pa) with the pressure pa outside.
// Mass flow of NACA Report 1135 set equal to the inflow. Unchoked p/pa = ((1 + sqrt(1 + 2 (gamma - 1)
// q^2/gamma))/2)^(gamma/(gamma - 1)); choked p/pa = q/C*.
public static partial class Vessel
{
    private const double MaxFlow = 1e6;

    /// <summary>p/pa at which a vented vessel settles for an inflow q = mdot sqrt(R T0)/(Cd A pa).</summary>
    /// <param name="flow">q [-], 0 to 1e6.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>p/pa [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SteadyPressureRatio(double flow, double gamma)
    {
        double q = Guard.In(flow, 0, MaxFlow, "-", nameof(flow));
        double choked = q / IsentropicFlow.CriticalFlowFactor(gamma);
        if (choked * IsentropicFlow.CriticalPressureRatio(gamma) >= 1)
            return choked;
        return Math.Pow((1 + Math.Sqrt(1 + 2 * (gamma - 1) / gamma * q * q)) / 2, gamma / (gamma - 1));
    }

    /// <summary>The inflow that holds a vented vessel at a pressure: q = p/pa psi(pa/p).</summary>
    /// <param name="pressureRatio">p/pa [-], 1 to that of the greatest flow, 1e6/C*.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>q [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SteadyFlow(double pressureRatio, double gamma)
    {
        double cStar = IsentropicFlow.CriticalFlowFactor(gamma);
        double x = Guard.In(pressureRatio, 1, MaxFlow / cStar, "-", nameof(pressureRatio));
        if (x * IsentropicFlow.CriticalPressureRatio(gamma) >= 1)
            return x * cStar;
        double excess = NearZero.Expm1((gamma - 1) / gamma * Math.Log(x));
        return Math.Sqrt(2 * gamma / (gamma - 1) * excess * (1 + excess));
    }
}
