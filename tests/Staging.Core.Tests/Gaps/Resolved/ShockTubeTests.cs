using System.Globalization;
using Staging.Core.Gaps.Resolved;
using Staging.Core.Gases;
using Staging.Core.Tests.Hygiene;

namespace Staging.Core.Tests.Gaps.Resolved;

/// <summary>
/// The resolved tube against the exact Riemann solution of the library. Observed order: slope of the L1 error over three doublings.
/// </summary>
/// <remarks>
/// Shocks alone converge with order 1. A contact converges with p/(p + 1) in a scheme of order p, here 2/3, because nothing steepens it again (J. W. Banks,
/// T. Aslam and W. J. Rider, J. Comput. Phys. 227 (2008) 6985), so density, which jumps there, cannot keep order 0.9 where the contact carries the error;
/// velocity and pressure, which do not jump, can. Order 0.9 or more is asked of pressure in Toro's problems 1 to 4 and the two-gas tube, and of density in
/// problem 1. What else is not reached, and why: problem 2, density and velocity: the two fans part at the diaphragm and leave a heated spot there (start-up
/// error at a contact of no strength); problem 5, everything: its left shock hardly moves, and behind slow shocks conservative schemes leave waves.
/// </remarks>
public class ShockTubeTests
{
    private static readonly string TheoryPage = File.ReadAllText(Path.Combine(Repository.Root, "docs", "theory", "resolved.md"));

    private static readonly FlowState SodLeft = new(1, 0, 1, 1.4);

    /// <summary>Name, states, time, and the orders asked of density, velocity and pressure.</summary>
    private static readonly (string Name, FlowState Left, FlowState Right, double Time, double Density, double Velocity, double Pressure)[] Problems =
    [
        ("1, Sod", SodLeft, new(0.125, 0, 0.1, 1.4), 0.2, 0.9, 0.9, 0.9),
        ("2, fans that part", new(1, -2, 0.4, 1.4), new(1, 2, 0.4, 1.4), 0.15, 0.5, 0.45, 0.9),
        ("3, left blast", new(1, 0, 1000, 1.4), new(1, 0, 0.01, 1.4), 0.012, 2.0 / 3, 0.9, 0.9),
        ("4, right blast", new(1, 0, 0.01, 1.4), new(1, 0, 100, 1.4), 0.035, 2.0 / 3, 0.9, 0.9),
        ("5, collision", new(5.99924, 19.5975, 460.894, 1.4), new(5.99242, -6.19633, 46.095, 1.4), 0.035, 0.5, 0.5, 0.5),
        ("two gases, gamma 1.25 and 1.4", new(1, 0, 1, 1.25), new(0.125, 0, 0.1, 1.4), 0.2, 0.85, 0.9, 0.9),
    ];

    [Fact]
    public void Shock_tubes_converge_with_the_orders_that_the_theory_page_prints()
    {
        Assert.All(Problems, x =>
        {
            (double Density, double Velocity, double Pressure) coarse = ErrorsAt(100, x.Left, x.Right, x.Time), fine = ErrorsAt(800, x.Left, x.Right, x.Time);
            double density = Order(coarse.Density, fine.Density), velocity = Order(coarse.Velocity, fine.Velocity), pressure = Order(coarse.Pressure, fine.Pressure);
            Assert.True(density >= x.Density && velocity >= x.Velocity && pressure >= x.Pressure, $"{x.Name}: density {density:F3}, velocity {velocity:F3}, pressure {pressure:F3}");
            Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"| {x.Name} | {density:F2} | {velocity:F2} | {pressure:F2} |"), TheoryPage, StringComparison.Ordinal);
        });

        static double Order(double coarse, double fine) => Math.Log2(coarse / fine) / 3;
    }

    [Fact]
    public void A_contact_alone_converges_with_two_thirds_to_three_quarters()
    {
        // A jump of density carried with the flow: p/(p + 1) is 2/3 with p = 2 and 3/4 with p = 3. MUSCL-Hancock with central slopes, which has little dispersion
        // at this Courant number, comes between; first order would give one half.
        double Error(int n)
        {
            TubeFlow tube = Tubes.Shock(n, SodLeft, SodLeft);
            Tubes.Fill(tube, new(1, 1, 1, 1.4), new(0.25, 1, 1, 1.4));
            tube.RunTo(0.3);
            return Enumerable.Range(0, n).Sum(i =>
            {
                double share = Math.Clamp(0.8 * n - i, 0, 1);
                return Math.Abs(tube.Cells.Density[tube.Cells.First + i] - (share + 0.25 * (1 - share)));
            }) / n;
        }

        double order = Math.Log2(Error(100) / Error(800)) / 3;
        Assert.InRange(order, 0.64, 0.76);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"carried by the flow, gives {order:F2} here"), TheoryPage, StringComparison.Ordinal);
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
        double Disturbance(int n)
        {
            var hot = new FlowState(101325 / (152.0 * 1900), 100, 101325, 1.14);
            var air = new FlowState(101325 / (Tubes.Air * 288.15), 100, 101325, 1.4);
            TubeFlow tube = Tubes.Shock(n, hot, air, 152);
            tube.RunTo(0.3e-3);
            TubeArrays a = tube.Cells;
            return Enumerable.Range(a.First, n).Average(i => Math.Abs(a.Pressure[i] / 101325 - 1));
        }

        double coarse = Disturbance(100), fine = Disturbance(400);
        Assert.InRange(fine, 0, 0.02);
        Assert.True(fine < coarse / 2, $"{coarse:P2} on 100 cells, {fine:P2} on 400");
    }

    private static (double Density, double Velocity, double Pressure) ErrorsAt(int cells, in FlowState left, in FlowState right, double time)
    {
        TubeFlow tube = Tubes.Shock(cells, left, right);
        tube.RunTo(time);
        Assert.Equal(0, tube.Repeats);
        return Tubes.Errors(tube, RiemannProblem.Solve(left, right), time);
    }

    private static double Bump(double x)
    {
        double z = (x - 0.3) / 0.2;
        return Math.Abs(z) < 1 ? 1 + 0.5 * Math.Pow(1 - z * z, 4) : 1;
    }
}
