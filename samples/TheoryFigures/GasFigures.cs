using ScottPlot;
using Staging.Core.Gases;

namespace TheoryFigures;

internal static class GasFigures
{
    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        // Points: NACA Report 1135, gamma 1.4.
        double[] mach = [0.5, 1, 1.5, 2, 3], area = [1.3398, 1, 1.176, 1.6875, 4.235];
        yield return ("area-ratio", Sheet.New("Area over throat area of an isentropic duct", "Mach number", "A/A*")
            .Curve(m => AreaRatio.At(m, 1.14), 0.15, 3, "", 1)
            .Note("gamma 1.14, gas and particles", 1.15, 4.2, 1)
            .Curve(m => AreaRatio.At(m, 1.4), 0.15, 3, "", 0)
            .Note("gamma 1.4", 2.6, 2.3, 0)
            .Points(mach, area, "", 0)
            .Note("circles: NACA Report 1135, gamma 1.4", 1.2, 0.5, 0)
            .Limits(0, 3.2, 0, 6));
        yield return ("friction-tube", Sheet.New("Mass flow function of a tube with friction, gamma 1.25", "back pressure over stagnation pressure", "mass flow function")
            .Curve(r => FrictionTube.MassFlowFunction(r, 0, 1.25), 0.01, 1, "N = 0", 3, 0.05)
            .Curve(r => FrictionTube.MassFlowFunction(r, 0.5, 1.25), 0.01, 1, "N = 0.5", 0, 0.05)
            .Curve(r => FrictionTube.MassFlowFunction(r, 2, 1.25), 0.01, 1, "N = 2", 1, 0.05)
            .Curve(r => FrictionTube.MassFlowFunction(r, 10, 1.25), 0.01, 1, "N = f L/D + entry = 10", 2, 0.05)
            .Limits(0, 1, 0, 0.75));

        // Points: US Standard Atmosphere, 1976, by geometric altitude.
        double[] km = [0, 5, 10, 15, 20, 30], percent = [100, 100 * 54048.0 / 101325, 100 * 26500.0 / 101325, 100 * 12112.0 / 101325, 100 * 5529.3 / 101325, 100 * 1197.0 / 101325];
        yield return ("standard-atmosphere", Sheet.New("US Standard Atmosphere 1976", "geometric altitude [km]", "share of the sea-level value [%]")
            .Curve(z => 100 * StandardAtmosphere.Us1976.At(1000 * z).Pressure_Pa / 101325, 0, 32, "pressure", 0, 0.15)
            .Curve(z => 100 * StandardAtmosphere.Us1976.At(1000 * z).Temperature_K / 288.15, 0, 32, "absolute temperature", 1, 0.5)
            .Points(km, percent, "", 0)
            .Note("circles: table of the standard", 8, 34, 0)
            .Limits(0, 32, 0, 110));
    }
}
