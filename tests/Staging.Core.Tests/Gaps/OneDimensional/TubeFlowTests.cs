using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>What the sweep owes whatever flows: the same bits on any number of lanes, closed ledgers, rest at rest, no allocation.</summary>
public class TubeFlowTests
{
    private static readonly FlowState Hot = new(800e3 / (152.0 * 1900), 0, 800e3, 1.14);
    private static readonly FlowState Air = new(101325 / (Tubes.Air * 288.15), 0, 101325, 1.4);

    [Theory]
    [InlineData(1.14)]
    [InlineData(1.4)]
    public void Every_number_of_lanes_gives_the_same_bits(double gamma)
    {
        // 203 cells: more than a tile, and no multiple of any number of lanes. Near vacuum on the right, so that guards are met too.
        FlowState left = Hot with { Gamma = gamma }, right = Air with { Density = 1e-6, Pressure = 0.1 };
        TubeFlow one = Tubes.Shock(203, left, right, 152, lanes: 1);
        one.RunTo(0.2e-3);
        foreach (int lanes in (int[])[4, 8])
        {
            TubeFlow tube = Tubes.Shock(203, left, right, 152, lanes: lanes);
            tube.RunTo(0.2e-3);
            Assert.Equal(one.Steps, tube.Steps);
            Assert.Equal(one.Repeats, tube.Repeats);
            for (int i = one.Cells.First; i < one.Cells.End; i++)
            {
                Assert.Equal(one.Cells.Density[i], tube.Cells.Density[i]);
                Assert.Equal(one.Cells.Momentum[i], tube.Cells.Momentum[i]);
                Assert.Equal(one.Cells.Energy[i], tube.Cells.Energy[i]);
                Assert.Equal(one.Cells.Products[i], tube.Cells.Products[i]);
            }
        }
    }

    [Theory]
    [InlineData(1.14)]
    [InlineData(1.4)]
    public void A_closed_tube_keeps_mass_energy_and_products(double gamma)
    {
        TubeFlow tube = Tubes.Shock(200, Hot with { Gamma = gamma }, Air, 152);
        (tube.Left, tube.Right) = (new ClosedEnd(), new ClosedEnd());
        (double mass, _, double energy, double products) = Tubes.Totals(tube);
        tube.RunTo(20e-3);
        (double mass1, _, double energy1, double products1) = Tubes.Totals(tube);
        Assert.True(tube.Steps > 2000, "many reflections");
        Assert.InRange(mass1 / mass - 1, -1e-12, 1e-12);
        Assert.InRange(energy1 / energy - 1, -1e-12, 1e-12);
        Assert.InRange(products1 / products - 1, -1e-12, 1e-12);
    }

    [Fact]
    public void Gas_at_rest_stays_at_rest_over_steps_of_the_bore_to_the_last_bit()
    {
        double[] areas = [.. Enumerable.Range(0, 60).Select(i => i < 20 ? 3e-4 : i < 41 ? 1e-4 : 2.5e-4)];
        TubeFlow tube = Stepped(areas, 60);
        for (int i = 0; i < 60; i++)
            tube.Fill(i, i < 30 ? 0.3 : 1.2, 0, 101325, i < 30 ? 1 : 0);
        tube.Look();
        double[] density = [.. tube.Cells.Density], energy = [.. tube.Cells.Energy];
        for (int s = 0; s < 500; s++)
            tube.Step(tube.LongestStep(0.8));
        Assert.All(tube.Cells.Velocity[tube.Cells.First..tube.Cells.End], u => Assert.Equal(0, u));
        Assert.Equal(density[tube.Cells.First..tube.Cells.End], tube.Cells.Density[tube.Cells.First..tube.Cells.End]);
        Assert.Equal(energy[tube.Cells.First..tube.Cells.End], tube.Cells.Energy[tube.Cells.First..tube.Cells.End]);
    }

    [Fact]
    public void A_stepped_closed_tube_keeps_mass_and_energy()
    {
        double[] areas = [.. Enumerable.Range(0, 100).Select(i => i < 50 ? 1e-4 : 2.5e-4)];
        TubeFlow tube = Stepped(areas, 100);
        Tubes.Fill(tube, Hot, Air);
        (double mass, double energy) = (Content(tube.Cells.Density), Content(tube.Cells.Energy));
        for (int s = 0; s < 3000; s++)
            tube.Step(tube.LongestStep(0.8));
        Assert.InRange(Content(tube.Cells.Density) / mass - 1, -1e-12, 1e-12);
        Assert.InRange(Content(tube.Cells.Energy) / energy - 1, -1e-12, 1e-12);

        double Content(double[] column) => Enumerable.Range(0, 100).Sum(i => areas[i] * column[tube.Cells.First + i]);
    }

    [Theory]
    [InlineData(20.0)]
    [InlineData(200.0)]
    public void Behind_a_receding_end_the_gas_expands_as_in_a_simple_wave(double speed)
    {
        // p/p0 = (1 - (gamma - 1)/2 w/a)^(2 gamma/(gamma - 1)) at the face of a receding piston (Liepmann and Roshko 1957, section 3.7).
        const int n = 400;
        var end = new ClosedEnd();
        var tube = new TubeFlow(n, 1.0 / n, new GasConstants(Tubes.Air, 1.4), new GasConstants(Tubes.Air, 1.4), room: 200) { Left = end };
        for (int i = 0; i < n; i++)
            tube.Fill(i, Air.Density, 0, Air.Pressure, 0);
        tube.Look();
        (double mass, _, double energy, _) = Tubes.Totals(tube);
        end.Recede(speed);
        double work = 0, time = 0;
        while (time < 1.5e-3)
        {
            double dt = tube.LongestStep(0.8);
            double taken = tube.Step(dt);
            work -= end.LastFlow.Energy * taken;
            time += taken;
        }

        double expected = Air.Pressure * Math.Pow(1 - 0.2 * speed / Air.SoundSpeed, 7);
        TubeArrays a = tube.Cells;
        Assert.Equal(n + (int)(speed * time * n), a.Count);
        Assert.InRange(a.Pressure[a.First + 5] / expected - 1, -0.002, 0.002);
        (double mass1, _, double energy1, _) = Tubes.Totals(tube);
        Assert.InRange(mass1 / mass - 1, -1e-12, 1e-12);
        Assert.InRange((energy1 + work) / energy - 1, -1e-12, 1e-12);
    }

    [Theory]
    [InlineData(100)]
    [InlineData(1000)]
    [InlineData(10000)]
    public void Work_is_cells_times_steps(int cells)
    {
        TubeFlow tube = Tubes.Shock(cells, Hot, Air, 152);
        for (int s = 0; s < 50; s++)
            tube.Step(tube.LongestStep(0.8));
        Assert.Equal(50, tube.Steps);
        Assert.Equal(50L * cells, tube.CellSteps);
    }

    [Fact]
    public void A_step_allocates_nothing()
    {
        Assert.Equal(0, Allocated.By(() =>
        {
            TubeFlow tube = Tubes.Shock(400, Hot, Air, 152);
            Take();
            return Take;

            void Take()
            {
                for (int s = 0; s < 100; s++)
                    tube.Step(tube.LongestStep(0.8));
            }
        }));
    }

    [Fact]
    public void A_step_that_would_empty_a_cell_is_repeated_shorter_and_without_slopes()
    {
        // The left gas runs away from a closed end at five times its speed of sound, which leaves next to nothing behind.
        FlowState left = new(0.0362, 239, 49.1, 1.5), right = new(0.00614, -100, 1.557, 1.19);
        TubeFlow tube = Tubes.Shock(50, left, right);
        (tube.Left, tube.Right) = (new ClosedEnd(), new ClosedEnd());
        for (int s = 0; s < 150; s++)
            Assert.True(tube.Step(tube.LongestStep(0.8)) > 0);
        Assert.True(tube.Repeats > 0, "the guard was met");
        Assert.True(tube.Extremes.AllPositive);
    }

    private static TubeFlow Stepped(double[] areas, int cells) => new(
        cells, 1.0 / cells, new GasConstants(152, 1.14), new GasConstants(Tubes.Air, 1.4), bore: new TubeBore(areas));
}
