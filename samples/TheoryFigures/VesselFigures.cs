using Samples;
using ScottPlot;
using Staging.Core.Gases;

namespace TheoryFigures;

internal static class VesselFigures
{
    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        Plot plot = Figure.New("A vessel empties, gamma 1.25", "time in units of V / (Cd A sqrt(R T0))", "pressure over ambient");
        foreach ((double start, int colour) in (ReadOnlySpan<(double, int)>)[(5, 0), (2, 1), (1.2, 2)])
        {
            double end = Vessel.VentTime(start, 1, 1.25, isothermal: false);
            plot.Curve(t => Vessel.PressureAfterVenting(t, start, 1.25, isothermal: false), 0, end, $"from {start} times ambient",
                colour, 0.25);
            double slow = Vessel.VentTime(start, 1, 1.25, isothermal: true);
            plot.Curve(t => Vessel.PressureAfterVenting(t, start, 1.25, isothermal: true), 0, slow, "", colour, dashed: true);
        }

        yield return ("vessel-blowdown", plot
            .Curve(_ => 1 / IsentropicFlow.CriticalPressureRatio(1.25), 0, 3, "choked above", 3, 0.75, dashed: true)
            .Note("solid: adiabatic, dashed: isothermal", 1.6, 4.2, 3)
            .Limits(0, 3, 0.8, 5.2));
        yield return ("steady-vent",
            Figure.New("Steady pressure of a vented volume", "q = flow times sqrt(R T0) / (Cd A ambient pressure)", "pressure over ambient")
            .Curve(q => Vessel.SteadyPressureRatio(q, 1.14), 0, 2, "", 1)
            .Note("gamma 1.14", 1.45, 2.7, 1)
            .Curve(q => Vessel.SteadyPressureRatio(q, 1.4), 0, 2, "", 0)
            .Note("gamma 1.4", 1.6, 2, 0)
            .Limits(0, 2.2, 0.9, 3.4));
    }
}
