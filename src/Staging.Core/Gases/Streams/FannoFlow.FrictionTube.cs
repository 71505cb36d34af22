using Staging.Core.Solving;

namespace Staging.Core.Gases;

// Mass flow from a reservoir through a smooth entrance and a tube with wall friction to a back pressure, choked or
// not. Dimensionless: mass flow = area * p0/sqrt(R T0) * MassFlowFunction.
// A. H. Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow (1953), chapter 6: isentropic entrance to
// M1, friction from M1 to M2, exit at the back pressure while M2 is below 1. It tends to sqrt(2 (1 - r)/(1 + N)) for
// small differences and to the ideal nozzle for N = 0.
public static partial class FannoFlow
{
    /// <summary>The mass flow function.</summary>
    /// <param name="pressureRatio">Back pressure over stagnation pressure r [-], 0 to 1.</param>
    /// <param name="friction">f L/D with the Darcy friction factor [-], 0 to 1e6; an entrance loss of K dynamic heads
    /// adds K.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>mdot sqrt(R T0)/(A p0) [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double TubeMassFlowFunction(double pressureRatio, double friction, double gamma)
    {
        double r = Guard.In(pressureRatio, 0, 1, "-", nameof(pressureRatio));
        double N = Guard.In(friction, 0, 1e6, "-", nameof(friction));
        if (r <= ChokedPressureRatio(N, Argument.Gamma(gamma)))
            return IsentropicFlow.MassFlowFunction(SubsonicMach(N, gamma), gamma);
        if (r == 1)
            return 0;

        var exit = new ExitPressure(r, 2 * gamma / (gamma + 1) * N, gamma);
        double slowest = 0.5 * IsentropicFlow.MachFromPressureRatio(r, gamma) / (1 + N);
        (double low, double high) = BracketedRoot.Shrink(ref exit, slowest, exit.At(slowest), 1, exit.At(1), 0);
        return IsentropicFlow.MassFlowFunction(exit.EntranceMach(0.5 * (low + high)), gamma);
    }

    /// <summary>
    /// Exit pressure over the entrance's stagnation pressure, less the one asked for, against the Mach number at the
    /// exit.
    /// </summary>
    private readonly struct ExitPressure(double r, double c, double gamma) : IScalarFunction
    {
        public double EntranceMach(double M2)
        {
            double s2 = 2 * (1 - M2) * (1 + M2) / (M2 * M2 * (gamma + 1));
            return FannoFlow.FromS(FannoFlow.SubsonicS(FannoFlow.Excess(s2) + c), gamma);
        }

        public double At(double M2)
        {
            double M1 = EntranceMach(M2);
            return IsentropicFlow.PressureRatio(M1, gamma) * (FannoFlow.PressureRatio(M2, gamma) / FannoFlow.PressureRatio(M1, gamma)) - r;
        }
    }
}
