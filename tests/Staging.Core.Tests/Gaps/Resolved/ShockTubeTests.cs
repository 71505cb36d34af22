using Staging.Core.Gaps.Resolved;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Gaps.Resolved;

/// <summary>
/// The resolved tube against the exact Riemann solution of the library. Observed order: slope of the L1 error over three doublings.
/// </summary>
/// <remarks>
/// Shocks alone converge with order 1. A contact surface smears like n^(-2/3) to n^(-3/4) with a second-order limited scheme, so density,
/// which jumps there, cannot keep order 0.9 in every problem; pressure, which does not, can. Order 0.9 or more is asked
/// of pressure in Toro's problems 1 to 4 and the two-gas tube, and of density in problem 1. What is not reached, and why:
/// problem 2, density: the two fans part at the diaphragm and leave a heated spot there (start-up error at a contact of no strength);
/// problems 3 and 4, density: the shell between contact and shock is thin, and the contact carries most of the error;
/// problem 5, density and pressure: its left shock hardly moves, and behind slow shocks conservative schemes leave waves.
/// Their orders are held to what a scheme with such contacts must still reach, one half.
/// </remarks>
public class ShockTubeTests
{
    private static readonly FlowState SodLeft = new(1, 0, 1, 1.4);

    [Theory]
    [InlineData("1 (Sod)", 1.0, 0.0, 1.0, 1.4, 0.125, 0.0, 0.1, 0.2, 0.9, 0.9)]
    [InlineData("2 (parting fans)", 1.0, -2.0, 0.4, 1.4, 1.0, 2.0, 0.4, 0.15, 0.5, 0.9)]
    [InlineData("3 (left blast)", 1.0, 0.0, 1000.0, 1.4, 1.0, 0.0, 0.01, 0.012, 0.5, 0.9)]
    [InlineData("4 (right blast)", 1.0, 0.0, 0.01, 1.4, 1.0, 0.0, 100.0, 0.035, 0.5, 0.9)]
    [InlineData("5 (collision)", 5.99924, 19.5975, 460.894, 1.4, 5.99242, -6.19633, 46.095, 0.035, 0.5, 0.5)]
    [InlineData("two gases", 1.0, 0.0, 1.0, 1.25, 0.125, 0.0, 0.1, 0.2, 0.85, 0.9)]
    public void Shock_tubes_converge(
        string name, double rhoL, double uL, double pL, double gammaL, double rhoR, double uR, double pR, double time, double densityOrder, double pressureOrder)
    {
        var left = new FlowState(rhoL, uL, pL, gammaL);
        var right = new FlowState(rhoR, uR, pR, 1.4);
        (double coarseDensity, double coarsePressure) = ErrorsAt(100, left, right, time);
        (double fineDensity, double finePressure) = ErrorsAt(800, left, right, time);
        double density = Math.Log2(coarseDensity / fineDensity) / 3, pressure = Math.Log2(coarsePressure / finePressure) / 3;
        Assert.True(density >= densityOrder && pressure >= pressureOrder, $"{name}: density {density:F3}, pressure {pressure:F3}");
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

    private static (double Density, double Pressure) ErrorsAt(int cells, in FlowState left, in FlowState right, double time)
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
