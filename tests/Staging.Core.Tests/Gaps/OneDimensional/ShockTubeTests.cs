using System.Globalization;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>
/// The resolved tube against the exact Riemann solution of the library. Observed order: slope of a line through the logarithms of the L1 errors on thirteen
/// grids of 100 to 800 cells. A few grids would not do: the error of a captured shock depends on where in its cell the shock stands.
/// </summary>
/// <remarks>
/// A shock converges with order 1. A contact converges with p/(p + 1) only in a scheme of order p that nothing steepens (J. W. Banks, T. Aslam and W. J. Rider,
/// J. Comput. Phys. 227 (2008) 6985), and with order 1 when it keeps its number of cells. Order 0.9 is asked of every quantity in every problem that has a shock.
/// Problem 2 of Toro has none; what it has is a middle almost without gas, which these grids do not resolve: it is asked on finer ones.
/// </remarks>
public class ShockTubeTests
{
    private static readonly string TheoryPage = File.ReadAllText(Path.Combine(Repository.Root, "docs", "theory", "resolved.md"));

    private static readonly FlowState SodLeft = new(1, 0, 1, 1.4);

    private static readonly FlowState FanLeft = new(1, -2, 0.4, 1.4), FanRight = new(1, 2, 0.4, 1.4);

    /// <summary>Name, states, time, and the orders asked of density, velocity, pressure, momentum and energy.</summary>
    private static readonly (string Name, FlowState Left, FlowState Right, double Time, double[] Asked)[] Problems =
    [
        ("1, Sod", SodLeft, new(0.125, 0, 0.1, 1.4), 0.2, [0.9, 0.9, 0.9, 0.9, 0.9]),
        ("2, fans that part", FanLeft, FanRight, 0.15, [0.5, 0.45, 0.9, 0.85, 0.9]),
        ("3, left blast", new(1, 0, 1000, 1.4), new(1, 0, 0.01, 1.4), 0.012, [0.9, 0.9, 0.9, 0.9, 0.9]),
        ("4, right blast", new(1, 0, 0.01, 1.4), new(1, 0, 100, 1.4), 0.035, [0.9, 0.9, 0.9, 0.9, 0.9]),
        ("5, collision", new(5.99924, 19.5975, 460.894, 1.4), new(5.99242, -6.19633, 46.095, 1.4), 0.035, [0.9, 0.9, 0.9, 0.9, 0.9]),
        ("two gases, gamma 1.25 and 1.4", new(1, 0, 1, 1.25), new(0.125, 0, 0.1, 1.4), 0.2, [0.9, 0.9, 0.9, 0.9, 0.9]),
    ];

    [Fact]
    public void Shock_tubes_converge_with_the_orders_that_the_theory_page_prints()
    {
        int[] grids = [.. Enumerable.Range(0, 13).Select(k => 2 * (int)Math.Round(50 * Math.Pow(2, k / 4.0)))];
        Assert.All(Problems, x =>
        {
            double[] orders = Orders(grids, x.Left, x.Right, x.Time);
            string row = string.Create(CultureInfo.InvariantCulture, $"| {x.Name} | {orders[0]:F2} | {orders[1]:F2} | {orders[2]:F2} | {orders[3]:F2} | {orders[4]:F2} |");
            Assert.All(orders, (order, k) => Assert.True(order >= x.Asked[k], row));
            Assert.Contains(row, TheoryPage, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Fans_that_part_converge_once_the_grid_resolves_their_middle()
    {
        double[] orders = Orders([1600, 2264, 3200, 4526, 6400], FanLeft, FanRight, 0.15);
        Assert.True(orders[0] >= 0.8 && orders[1] >= 0.9, $"density {orders[0]:F2}, velocity {orders[1]:F2}");
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"density {orders[0]:F2}, velocity {orders[1]:F2}"), TheoryPage, StringComparison.Ordinal);
    }

    [Fact]
    public void A_contact_keeps_its_number_of_cells_and_converges_with_first_order()
    {
        // A jump of density alone, carried with the flow.
        (double Error, int Within) Run(int n)
        {
            TubeFlow tube = Tubes.Shock(n, SodLeft, SodLeft);
            Tubes.Fill(tube, new(1, 1, 1, 1.4), new(0.25, 1, 1, 1.4));
            tube.RunTo(0.3);
            double[] rho = tube.Cells.Density[tube.Cells.First..tube.Cells.End];
            double error = Enumerable.Range(0, n).Sum(i =>
            {
                double share = Math.Clamp(0.8 * n - i, 0, 1);
                return Math.Abs(rho[i] - (share + 0.25 * (1 - share)));
            });
            return (error / n, rho.Count(x => x is > 0.25 + 0.05 * 0.75 and < 1 - 0.05 * 0.75));
        }

        (double coarse, int coarseWithin) = Run(100);
        (double fine, int fineWithin) = Run(800);
        double order = Math.Log2(coarse / fine) / 3;
        Assert.True(order >= 0.95, $"order {order:F3}");
        Assert.Equal(coarseWithin, fineWithin);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"carried by the flow, stays {fineWithin} cells wide and converges with {order:F2}"), TheoryPage, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slow_shock_leaves_waves_below_a_thousandth()
    {
        // A shock of Mach 3 that moves over the grid with a small part of the speed of sound ahead. With slopes within it the waves are about 0.11, 0.27 and 0.20 %.
        double Waves(double speed)
        {
            const int n = 400;
            double mach = 3, a1 = SodLeft.SoundSpeed, p2 = NormalShock.PressureRatio(mach, 1.4), rho2 = NormalShock.HugoniotDensityRatio(p2, 1.4);
            FlowState ahead = SodLeft with { Velocity = (speed + mach) * a1 }, behind = new(rho2, (speed + mach / rho2) * a1, p2, 1.4);
            TubeFlow tube = Tubes.Shock(n, ahead, behind);
            double time = 0.35 / behind.Velocity;
            tube.RunTo(time);
            int from = tube.Cells.First + n / 2 + (int)(speed * a1 * time * n) + 8;
            return tube.Cells.Density[from..(from + 60)].Average(rho => Math.Abs(rho / rho2 - 1));
        }

        double[] waves = [Waves(0.02), Waves(0.1), Waves(0.3)];
        Assert.All(waves, x => Assert.InRange(x, 0, 1e-3));
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"| {100 * waves[0]:F2} %, {100 * waves[1]:F2} %, {100 * waves[2]:F2} % |"), TheoryPage, StringComparison.Ordinal);
    }

    [Fact]
    public void A_smooth_bump_is_carried_with_second_order()
    {
        double Error(int n)
        {
            TubeFlow tube = Tubes.Shock(n, SodLeft, SodLeft);
            for (int i = 0; i < n; i++)
                tube.Fill(i, Bump((i + 0.5) / n), 1, 1, 0);
            tube.Look();
            tube.RunTo(0.4);
            return Enumerable.Range(0, n).Sum(i => Math.Abs(tube.Cells.Density[tube.Cells.First + i] - Bump((i + 0.5) / n - 0.4))) / n;
        }

        double order = Math.Log2(Error(100) / Error(400)) / 2;
        Assert.True(order >= 1.8, $"order {order:F3}");
    }

    [Fact]
    public void A_sound_pulse_of_two_gases_converges_with_second_order()
    {
        // A weak, smooth pressure pulse in a smooth mixture: no exact solution, so three grids against each other (Richardson).
        double[] Run(int n)
        {
            TubeFlow tube = Tubes.Shock(n, SodLeft with { Gamma = 1.2 }, SodLeft, Tubes.HotGas);
            for (int i = 0; i < n; i++)
            {
                double x = (i + 0.5) / n;
                tube.Fill(i, Bump(x), 0, 1 + 0.02 * (Bump(x + 0.1) - 1), 0.5 + 0.2 * (Bump(x) - 1));
            }

            tube.Look();
            tube.RunTo(0.15);
            return [.. Enumerable.Range(0, n).Select(i => tube.Cells.Pressure[tube.Cells.First + i])];
        }

        double[] a = Run(100), b = Run(200), c = Run(400);
        double coarse = Difference(a, b), fine = Difference(b, c);
        Assert.True(Math.Log2(coarse / fine) >= 1.8, $"order {Math.Log2(coarse / fine):F3}");

        static double Difference(double[] coarse, double[] fine) =>
            coarse.Select((p, i) => Math.Abs(p - 0.5 * (fine[2 * i] + fine[2 * i + 1]))).Average();
    }

    /// <summary>
    /// The conservative form with mixing by mass is not free of pressure waves at a contact between gases of different gamma (R. Abgrall,
    /// J. Comput. Phys. 125 (1996) 150): a cell that holds both brings them to one temperature, and the pressure with it. Measured on hot
    /// products (gamma 1.14, 1900 K) beside cold air at one pressure and speed: the disturbance must fall as the grid is refined.
    /// </summary>
    [Fact]
    public void The_pressure_wave_of_a_contact_between_two_gases_shrinks_with_the_grid()
    {
        // Greatest ever, and greatest and mean after 1 ms [%].
        (double Ever, double Max, double Mean) Disturbance(int n)
        {
            var hot = new FlowState(101325 / (152.0 * 1900), 100, 101325, 1.14);
            var air = new FlowState(101325 / (Tubes.Air * 288.15), 100, 101325, 1.4);
            TubeFlow tube = Tubes.Shock(n, hot, air, 152);
            double[] At() => [.. tube.Cells.Pressure[tube.Cells.First..tube.Cells.End].Select(p => 100 * Math.Abs(p / 101325 - 1))];
            double ever = 0;
            for (double t = 0, dt; t < 1e-3; t += dt)
            {
                dt = tube.Step(Math.Min(tube.LongestStep(0.8), 1e-3 - t + 1e-15));
                ever = Math.Max(ever, At().Max());
            }

            return (ever, At().Max(), At().Average());
        }

        int[] cells = [100, 200, 400, 800];
        (double Ever, double Max, double Mean)[] found = [.. cells.Select(Disturbance)];
        Assert.True(found[2].Mean < found[0].Mean / 3, $"{found[0].Mean:F2} % on 100 cells, {found[2].Mean:F2} % on 400");
        Assert.All(found.Zip(cells), x => Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"| {x.Second} | {x.First.Ever:F0} % | {x.First.Max:F1} % | {x.First.Mean:F2} % |"), TheoryPage, StringComparison.Ordinal));
    }

    /// <summary>Slopes of the lines through the logarithms of the five errors over those of the cells.</summary>
    private static double[] Orders(int[] grids, FlowState left, FlowState right, double time)
    {
        RiemannSolution exact = RiemannProblem.Solve(left, right);
        double[] x = [.. grids.Select(n => Math.Log(n))];
        double[][] errors = [.. grids.Select(n =>
        {
            TubeFlow tube = Tubes.Shock(n, left, right);
            tube.RunTo(time);
            Assert.Equal(0, tube.Repeats);
            return Tubes.Errors(tube, exact, time);
        })];
        double middle = x.Average(), square = x.Sum(v => (v - middle) * (v - middle));
        return [.. Enumerable.Range(0, 5).Select(c => -x.Zip(errors, (v, e) => (v - middle) * Math.Log(e[c])).Sum() / square)];
    }

    private static double Bump(double x)
    {
        double z = (x - 0.3) / 0.2;
        return Math.Abs(z) < 1 ? 1 + 0.5 * Math.Pow(1 - z * z, 4) : 1;
    }
}
