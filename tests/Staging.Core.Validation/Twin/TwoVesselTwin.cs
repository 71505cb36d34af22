using Staging.Core.Gases;
using Staging.Core.Solving;
using Staging.Core.Tests;

namespace Staging.Core.Validation.Twin;

/// <summary>
/// <see cref="TwoVesselGap"/> by an independent program in C++ in extended precision: Dormand-Prince at tolerance 1e-14, which agrees with its own run at 1e-13 to 5e-12 in
/// the events and to 2e-10 at the end.
/// </summary>
public class TwoVesselTwin
{
    /// <summary>The tolerances of the timed run lie between 1e-10 and this.</summary>
    private const double Timed = 1e-7;

    /// <summary>A hundred times the tolerance of the fine run: some hundreds of steps add up, and the reference has an error of 2e-10.</summary>
    private const double Fine = 1e-9;

    [Fact]
    public void The_run_of_the_benchmark_lies_within_its_tolerances() => Near(TwoVesselGap.Timed(), Timed);

    [Fact]
    public void A_fine_run_lies_within_what_the_reference_is_good_for() => Near(new TwoVesselGap(1e-11, 1e-11, 1e-11, 1e-11), Fine);

    [Fact]
    public void The_work_of_the_benchmark_is_pinned()
    {
        var gap = TwoVesselGap.Timed();
        gap.Run();
        Assert.Equal(new SolverWork(268, 10, 1805, 0) { JacobianCalls = 22, Factorisations = 24 }, gap.Statistics with { EventCalls = 0 });
    }

    [Fact]
    public void A_second_run_gives_the_same_bits_and_allocates_nothing()
    {
        var gap = TwoVesselGap.Timed();
        gap.Run();
        double[] first = gap.Last.ToArray();
        Assert.Equal(0, Allocated.By(gap.Run));
        Assert.Equal(first, gap.Last.ToArray());
    }

    /// <summary>The formula by powers against the polynomial and the exponentials.</summary>
    [Theory]
    [InlineData(1.25)]
    [InlineData(1.3)]
    [InlineData(1.3777)]
    [InlineData(1.4)]
    public void The_orifice_is_the_formula(double gamma)
    {
        for (double ratio = 0.02; ratio < 1; ratio += 0.02)
        {
            double r = Math.Max(ratio, IsentropicFlow.CriticalPressureRatio(gamma)), psi = IsentropicFlow.ThroatMassFlow(ratio, gamma);
            double F = (gamma - 1) * psi * psi * (1 - r) / (1 - r + TwoVesselOrifice.Width);
            Assert.Equal(1, TwoVesselOrifice.Square(ratio, gamma) / F, 1e-12);
        }
    }

    [Fact]
    public void The_half_sine_is_a_sine()
    {
        for (double u = 0; u <= 1; u += 1.0 / 64)
            Assert.Equal(Math.Sin(Math.PI * u), TwoVesselSystem.HalfSine(u), 1e-15);
    }

    private static void Near(TwoVesselGap gap, double within)
    {
        gap.Run();
        ReadOnlySpan<double> y = gap.Last;
        double Y = y[4], R2 = TwoVesselSystem.Hot.R * Y + TwoVesselSystem.Air.R * (1 - Y), gamma2 = 1.25 * Y + 1.4 * (1 - Y);
        (string What, double Twin, double Ours)[] outputs =
        [
            ("breakaway", 2.26940881580676e-05, gap.Breakaway),
            ("separation", 0.00460685282897536, gap.Separation),
            ("speed then", 5.92304105455419, gap.SeparationSpeed),
            ("pressure then", 470155.751530976, gap.SeparationPressure),
            ("chamber at burnout", 101345.331600154, gap.ChamberPressureAtBurnout),
            ("gap at burnout", 101332.083970597, gap.GapPressureAtBurnout),
            ("mass in the chamber", 1.50325609044101e-06, y[0]),
            ("temperature in the chamber", 1965.94081260828, y[1] / (y[0] * TwoVesselSystem.Hot.Cv)),
            ("mass in the gap", 1.53424390915066e-05, y[2]),
            ("temperature in the gap", 2001.78620371521, y[3] * (gamma2 - 1) / (y[2] * R2)),
            ("share of hot gas", 0.999691472879335, Y),
            ("travel", 0.338095884834941, y[5]),
        ];
        foreach ((string what, double twin, double ours) in outputs)
            Assert.True(Math.Abs(ours / twin - 1) <= within, $"{what}: twin {twin:R}, ours {ours:R}, relative difference {ours / twin - 1:G3}.");
    }
}
