using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>What is lost across a large opening, and the tube that cures it.</summary>
public class FreeJetTests
{
    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000) });

    [Fact]
    public void The_hot_jet_is_the_nominal_products_at_1500_K_in_standard_air()
    {
        double Density(PerfectGas gas, double kelvins) => gas.DensityAt(Pressure.FromPascals(101325), Temperature.FromKelvins(kelvins)).KilogramsPerCubicMeter;
        Assert.Equal(FreeJet.Hot, Density(BlackPowderProducts.Nominal.Equivalent(), 1500) / Density(PerfectGas.DryAir, 288.15), 0.005);
    }

    [Fact]
    public void Across_small_holes_nothing_is_lost()
    {
        // To the last bit: the core of the jet does not enter the run.
        GapRun a = Held.Solve(), b = Held.With(d => d with { MixingAndHeat = d.MixingAndHeat with { FreeJetCoreInBores = 1 } }).Solve();
        Assert.Equal(a.PeakGrainSurface, b.PeakGrainSurface);
        Assert.Equal(a.Statistics.Work, b.Statistics.Work);
    }

    [Theory]
    [InlineData(4, 1, 1)]
    [InlineData(11, 1, 0.5)]
    [InlineData(22, 1, 0.25)]
    [InlineData(11, 0.25, 0.25)]
    public void Beyond_the_core_the_share_falls_as_one_over_the_free_length(double bores, double density, double expected) =>
        Assert.Equal(expected, FreeJet.Share<Real>(bores, 5.5, density), 1e-12);

    [Fact]
    public void Air_that_crosses_an_opening_is_a_jet_of_its_own_density_and_products_are_lighter()
    {
        GapProblem open = Held.With(d => d with { Vents = [Opening(d.Tube, 11, 200)] });
        GapParameters p = GapToSi.ToSi(open);
        var y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        Assert.Equal(0.5, new GapState<Real>(p, new(y)).JetShare, 1e-9);
        var course = (LumpedHistory)open.Solve().Course;
        course.Track.At(0.01, y);
        var later = new GapState<Real>(course.Parameters, new(y));
        Assert.InRange(later.ShareOfHot.Value, 0.99, 1);
        double products = 0.5 * Math.Sqrt(287.05 * 288.15 / (later.Hot.R * later.Hot.Temperature));
        Assert.InRange(products, 0.1, 0.4);
        Assert.InRange(later.JetShare.Value / products - 1, 0, 0.01);
    }

    [Fact]
    public void A_long_opening_is_air_and_not_part_of_the_dead_end()
    {
        GapParameters p = GapToSi.ToSi(Held.With(d => d with { Vents = [Opening(d.Tube, 6, 100)] }));
        double area = Math.PI / 4 * 18e-3 * 18e-3;
        double half = 0.5 * p.Vents[0].Outlet.Size.Diameter;
        Assert.Equal(0.150 + half, p.LastVent, 1e-12);
        Assert.Equal(0.3e-6 + area * half, p.DeadEndVolume, 1e-15);
    }

    [Fact]
    public void An_open_truss_loses_the_gas_and_a_tube_across_it_with_a_small_hole_cures_it()
    {
        GapProblem shorter = Held.With(d => d with { Tube = Bench.Tube(200), Vents = [Bench.Hole(Bench.Tube(200), 6, 2)], Source = d.Motor() with { Web = d.Web() with { Mass = Mass.FromGrams(0.3) } } });
        GapRun guided = shorter.Solve();
        GapRun open = shorter.With(d => d with { Vents = [Opening(d.Tube, 8, 150)] }).Solve();
        Assert.IsType<GapOutcome.Lit>(guided.Outcome);
        var away = Assert.IsType<GapOutcome.VentedAway>(open.Outcome);
        Assert.Contains("guide tube across", away.Remedy, StringComparison.Ordinal);
        Assert.True(open.PeakGrainSurface.Kelvins < guided.PeakGrainSurface.Kelvins - 100);
        Assert.InRange(open.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(open.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    [Fact]
    public void A_large_opening_is_noted_and_a_bad_length_refused()
    {
        Assert.Contains(Held.With(d => d with { Vents = [Opening(d.Tube, 8, 200)] }).Check(), f => f.Code == "GAP022" && f.Severity == FindingSeverity.Warning);
        Assert.Contains(Held.With(d => d with { Vents = [d.Vents[0] with { AxialLength = Length.FromMillimeters(3) }] }).Check(), f => f.Code == "GAP021");
        Length half = 0.5 * Held.Design.Vents[0].Holes.Diameter;
        Assert.Empty(At(half).Check().Where(f => f.Code == "GAP021"));
        Assert.Equal("Vents[0].Station", Assert.Single(At(0.9 * half).Check(), f => f.Code == "GAP021").Path);
        Assert.Contains(Held.With(d => d with { Vents = [d.Vents[0] with { AxialLength = Length.FromMillimeters(30) }] }).Check(), f => f.Code == "GAP010");

        GapProblem At(Length station) => Held.With(d => d with { Vents = [d.Vents[0] with { Station = station }] });
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
