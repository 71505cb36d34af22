using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Openings so large that the stream crosses them as a free jet, on the resolved model.</summary>
public class ResolvedJetTests
{
    private static readonly GapModel.OneDimensional Coarse = new() { Cells = 60 };
    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromMilliseconds(30) };

    [Fact]
    public void Across_small_holes_nothing_is_lost()
    {
        // To the last bit: the core of the jet does not enter the run.
        GapRun a = Held.Solve(Coarse), b = Held.With(d => d with { MixingAndHeat = d.MixingAndHeat with { FreeJetCoreInBores = 1 } }).Solve(Coarse);
        Assert.Equal(a.PeakGrainSurface, b.PeakGrainSurface);
        Assert.Equal(a.Statistics.Work, b.Statistics.Work);
    }

    [Fact]
    public void A_core_longer_than_the_opening_loses_nothing_and_a_shorter_one_the_more()
    {
        GapProblem Core(double bores) => Held.With(d => d with { Vents = [Opening(d.Tube, 3, 150)], MixingAndHeat = d.MixingAndHeat with { FreeJetCoreInBores = bores } });
        GapRun none = Core(100).Solve(Coarse), longer = Core(9).Solve(Coarse), some = Core(4).Solve(Coarse), much = Core(2).Solve(Coarse);

        // The stream of some 1500 K is 0.36 times as dense as the air: of a core of 9 bores 5.4 are left, and the opening is shorter. It is looked at all the
        // same, and nothing is mixed in, to round-off of the sums. Of 4 bores 2.4 are left.
        Assert.InRange(longer.PeakGrainSurface.Kelvins / none.PeakGrainSurface.Kelvins - 1, -1e-9, 1e-9);
        Assert.True(some.PeakGrainSurface < none.PeakGrainSurface);
        Assert.True(much.PeakGrainSurface < some.PeakGrainSurface);
        Assert.All([none, longer, some, much], Closes);
    }

    [Fact]
    public void An_open_truss_loses_the_gas_and_a_tube_across_it_with_a_small_hole_cures_it()
    {
        // The same case as on the lumped models, which say the same.
        GapProblem shorter = Held.With(d => d with { Tube = Bench.Tube(200), Vents = [Bench.Hole(Bench.Tube(200), 6, 2)], Source = d.Motor() with { Web = d.Web() with { Mass = Mass.FromGrams(0.3) } } });
        GapRun guided = shorter.Solve(Coarse);
        GapRun open = shorter.With(d => d with { Vents = [Opening(d.Tube, 8, 150)] }).Solve(Coarse);
        Assert.IsType<GapOutcome.Lit>(guided.Outcome);
        Assert.False(open.Outcome.IsLit);
        Assert.Contains("guide tube across", open.Outcome.Remedy, StringComparison.Ordinal);
        Assert.True(open.PeakGrainSurface.Kelvins < guided.PeakGrainSurface.Kelvins - 100);
        Closes(open);
    }

    private static void Closes(GapRun run)
    {
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    /// <summary>An opening that ends at the nozzle plane, as large as so many bores of tube without a wall, in holes of about 8 mm.</summary>
    private static Vent Opening(GuideTube tube, double bores, double millimetres)
    {
        double bore = tube.Bore.Meters, area = Math.PI * bore * bore * bores;
        int count = (int)Math.Round(area / (Math.PI / 4 * 64e-6));
        return new Vent
        {
            Station = tube.Length - Length.FromMillimeters(0.5 * millimetres),
            Holes = new VentHoles { Diameter = Length.FromMeters(Math.Sqrt(4 * area / (Math.PI * count))), WallThickness = Length.FromMillimeters(0.5), Count = count },
            AxialLength = Length.FromMillimeters(millimetres),
        };
    }
}
