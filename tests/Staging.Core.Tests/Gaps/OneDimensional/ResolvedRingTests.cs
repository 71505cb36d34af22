using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>The ring that burns on in the chamber, and the opening that grows with it.</summary>
public class ResolvedRingTests
{
    private static readonly GapParameters P = GapToSi.ToSi(ThrownGaps.Gap.With(d => d with { Source = ThrownGaps.Strong }));
    private static readonly RingParameters Ring = P.Chambers[0].Ring!;

    /// <summary>However coarse the steps, all of it burns: the mass is what its shape loses.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(50)]
    public void All_of_it_burns(int steps)
    {
        Assert.Equal(1, Burn(steps, 0.6).Given / Ring.Mass, 1e-12);
        Assert.Equal(0, Burn(steps, 0).Given);
    }

    /// <summary>
    /// In a chamber whose gas goes nowhere the pressure follows the mass burnt, and the time with it. The end is met by the rate of the last step's middle: second
    /// order again.
    /// </summary>
    [Fact]
    public void Mass_and_end_are_second_order_in_time()
    {
        (double fine, double fineEnd) = (Burn(10240, 0.01).Given, Burn(10240, 0.05).End);
        Assert.InRange(Convergence.ObservedOrder.Fit(20, 3, n => Math.Abs(Burn(n, 0.01).Given / fine - 1)), 1.8, 2.2);
        Assert.InRange(fineEnd, 0.01, 0.05);
        Assert.InRange(Convergence.ObservedOrder.Fit(40, 5, n => Math.Abs(Burn(n, 0.05).End / fineEnd - 1)), 1.6, 2.5);
    }

    /// <summary>The cap's hole opens as the web does, then the burning sphere widens it to the wall.</summary>
    [Fact]
    public void The_opening_grows_with_the_ring()
    {
        var chamber = new ChamberVessel(P.Chambers[0], P);
        double grain = 0.012, opening = P.Chambers[0].OpeningTime, last = 0;
        chamber.Open(0, opening, 1e-4);
        Assert.Equal(0.5 * Ring.AtOnce * grain, chamber.Mouth.Opening.Diameter, 1e-15);
        for (double t = 0; t < 0.6; t += 1e-3)
        {
            chamber.Burn(t, t + 1e-3);
            chamber.Open(t, 2e-3, 1e-4);
            Assert.True(chamber.Mouth.Opening.Diameter >= last);
            last = chamber.Mouth.Opening.Diameter;
            Assert.Equal(Math.PI / 4 * last * last, chamber.Mouth.Opening.Area, 1e-15);
        }

        Assert.Equal(grain, last, 1e-12);
    }

    /// <summary>The stronger the web, the smaller the cap: beta falls with the root of the strength, the ring is all of a thin dome's rest.</summary>
    [Fact]
    public void A_strong_web_leaves_a_ring_and_throws_a_small_cap()
    {
        BurnThroughEstimate strong = ThrownGaps.Strong.BurnThrough(), whole = ThrownGaps.Motor.BurnThrough();
        Assert.Null(whole.Ring);
        Assert.True(strong.PieceMass < 0.1 * strong.RingMass, $"{strong.PieceMass.Grams} g against {strong.RingMass.Grams} g");
        Assert.True(strong.OpeningDiameter < whole.OpeningDiameter);
        GapRun run = ThrownGaps.Gap.With(d => d with { Source = ThrownGaps.Strong, Vents = [Bench.Hole(d.Tube, 1, 8)] }).Solve(new GapModel.OneDimensional { Cells = 60 });
        Assert.Equal(1, run.Ledger.Burnt / (strong.RingMass + strong.PieceMass), 1e-12);
    }

    /// <summary>Mass that the ring gives in a time cut into steps [kg], and when it has burnt [s].</summary>
    private static (double Given, double End) Burn(int steps, double time)
    {
        var chamber = new ChamberVessel(P.Chambers[0], P);
        double given = 0;
        for (int i = 0; i < steps; i++)
            given += chamber.Burn(i * time / steps, (i + 1) * time / steps).Mass;
        return (given, chamber.BurntAt);
    }
}
