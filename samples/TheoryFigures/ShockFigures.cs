using Samples;
using ScottPlot;
using Staging.Core.Gases;

namespace TheoryFigures;

internal static class ShockFigures
{
    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        yield return ("shock-reflection",
            Figure.New("A shock in air and its reflection from a closed end", "shock Mach number", "pressure over pressure ahead")
            .Curve(m => NormalShock.PressureRatio(m, 1.4), 1, 2, "", 0)
            .Note("behind the shock, p2/p1", 1.7, 1.6, 0)
            .Curve(m => NormalShock.Reflected(m, 1.4).TotalPressureRatio, 1, 2, "", 1)
            .Note("after reflection, p5/p1", 1.35, 8, 1)
            .Limits(1, 2, 0, 16));

        // Burn-through gas at 300 kPa and 2000 K (gamma 1.25, 34.75 g/mol) opens into air at 101325 Pa and 288.15 K.
        double hot = 8.314462618 / 0.03475, air = 8.314462618 / 0.0289644;
        RiemannSolution s = RiemannProblem.Solve(
            new FlowState(300e3 / (hot * 2000), 0, 300e3, 1.25), new FlowState(101325 / (air * 288.15), 0, 101325, 1.4));
        yield return ("riemann-hot-gas", Figure.New("Burn-through gas at 300 kPa opens into air: 1 ms later",
            "distance from the opening [mm]", "pressure [kPa], density [0.01 kg/m3]")
            .Curve(x => s.Sample(x).Pressure / 1e3, -900, 700, "pressure", 0, 0.2)
            .Curve(x => 100 * s.Sample(x).Density, -900, 700, "", 1)
            .Note("density", 60, 190, 1)
            .Note($"contact {s.ContactSpeed:F0} m/s", s.ContactSpeed, 20, 3)
            .Note($"shock {s.RightHead:F0} m/s", s.RightHead, 60, 3, Alignment.LowerRight)
            .Limits(-900, 700, 0, 330));
    }
}
