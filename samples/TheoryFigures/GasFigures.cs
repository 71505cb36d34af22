using Samples;
using ScottPlot;
using Staging.Core.Gases;

namespace TheoryFigures;

internal static class GasFigures
{
    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        // Points: tables of NACA Report 1135, gamma 1.4, as the tests of an open-source aeronautics library quote them;
        // the checks hold the same four.
        double[] mach = [0.38, 0.79, 1.24, 2.14], area = [1.6587, 1.0425, 1.043, 1.902];
        yield return ("area-ratio", Figure.New("Area over throat area of an isentropic duct", "Mach number", "A/A*")
            .Curve(m => IsentropicFlow.AreaRatio(m, 1.14), 0.15, 3, "", 1)
            .Note("gamma 1.14, gas and particles", 1.15, 4.2, 1)
            .Curve(m => IsentropicFlow.AreaRatio(m, 1.4), 0.15, 3, "", 0)
            .Note("gamma 1.4", 2.6, 2.3, 0)
            .Points(mach, area, "", 0)
            .Note("circles: NACA Report 1135 as quoted in a library, gamma 1.4", 0.95, 0.4, 0)
            .Limits(0, 3.2, 0, 6));
        yield return ("friction-tube", Figure.New("Mass flow function of a tube with friction, gamma 1.25",
            "back pressure over stagnation pressure", "mass flow function")
            .Curve(r => FannoFlow.TubeMassFlowFunction(r, 0, 1.25), 0.01, 1, "N = 0", 3, 0.05)
            .Curve(r => FannoFlow.TubeMassFlowFunction(r, 0.5, 1.25), 0.01, 1, "N = 0.5", 0, 0.05)
            .Curve(r => FannoFlow.TubeMassFlowFunction(r, 2, 1.25), 0.01, 1, "N = 2", 1, 0.05)
            .Curve(r => FannoFlow.TubeMassFlowFunction(r, 10, 1.25), 0.01, 1, "N = f L/D + entry = 10", 2, 0.05)
            .Limits(0, 1, 0, 0.75));

        // Points: the five-digit table of a public archive, by geometric altitude; the checks hold the same rows.
        double[] km = [0, 4, 8, 12, 16, 20, 24, 28, 32];
        double[] percent = [.. new[] { 101320, 61660, 35652, 19399, 10353, 5529.3, 2971.7, 1616.2, 889.06 }.Select(p => 100 * p / 101325)];
        yield return ("standard-atmosphere",
            Figure.New("US Standard Atmosphere 1976", "geometric altitude [km]", "share of the sea-level value [%]")
            .Curve(z => 100 * StandardAtmosphere.Us1976.At(1000 * z).Pressure_Pa / 101325, 0, 32, "pressure", 0, 0.15)
            .Curve(z => 100 * StandardAtmosphere.Us1976.At(1000 * z).Temperature_K / 288.15, 0, 32, "", 1)
            .Note("absolute temperature", 11.5, 77, 1)
            .Points(km, percent, "", 0)
            .Note("circles: printed table of the standard", 9, 34, 0)
            .Limits(0, 32, 0, 110));
    }
}
