using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Gaps.BurnThrough;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

/// <summary>Random gaps with nested tubes, stepped bores and every kind of source, in both lumped models.</summary>
public class GapNetworkLaws
{
    [Property(Arbitrary = [typeof(LegalNetwork)], MaxTest = 60)]
    public void Ledgers_close_and_every_number_is_finite(GapProblem gap)
    {
        foreach (GapModel model in (GapModel[])[new GapModel.TwoZone(), new GapModel.WellStirred()])
        {
            GapRun run = gap.Solve(model);
            Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
            Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
            Assert.True(double.IsFinite(run.PeakGaugePressure.Pascals) && double.IsFinite(run.PeakGrainSurface.Kelvins));
            Assert.IsNotType<GapOutcome.NotSolved>(run.Outcome);
        }
    }

    [Property(Arbitrary = [typeof(LegalNetwork)], MaxTest = 30)]
    public void A_second_wall_never_lowers_the_peak_pressure(GapProblem gap)
    {
        // A wall more on the way out can only hold back: to the tolerance of the integrator, and but for what a cold jacket takes up before it is full.
        GapProblem held = gap.With(d => d with { Joint = Bench.Joint(2000) });
        GapProblem single = held.With(d => d with { Jackets = [], Vents = [.. d.Vents.Select(v => v with { To = VentTarget.Air })] });
        Assert.True(held.Solve(options: SolverOptions.Default).PeakGaugePressure.Pascals
            >= single.Solve(options: SolverOptions.Default).PeakGaugePressure.Pascals * (1 - 1e-6) - 1);
    }

    [Property(Arbitrary = [typeof(LegalNetwork)], MaxTest = 40)]
    public void What_a_source_holds_is_burnt_when_it_says_so(GapProblem gap)
    {
        GapRun run = gap.With(d => d with { Joint = Bench.Joint(2000) }).Solve(options: SolverOptions.Default);
        if (run.TimeOf(GapEventKind.SourceEnded) is null)
            return;
        double whole = Held(gap.Design.Source);
        Assert.InRange(run.Ledger.Burnt.Kilograms / whole - 1, -1e-6, 1e-6);
    }

    private static double Held(GapSource source) => source.Match(
        booster => booster.Web.Mass.Kilograms,
        tabulated => tabulated.TotalMass.Kilograms,
        cluster => cluster.Motors.Sum(Held),
        endBurner => (endBurner.BurnThrough().PieceMass + endBurner.BurnThrough().RingMass).Kilograms);
}

/// <summary>Random gaps whose vents lead through one or two jackets.</summary>
public static class LegalNetwork
{
    public static Arbitrary<GapProblem> Gap() => (
        from gap in LegalGap.Gap().Generator
        from source in Sources(gap.Design)
        from jackets in Gen.Choose(1, 2)
        from volume in Range(0.2, 80)
        from wall in Range(0, 60)
        from hole in Range(2, 8)
        from count in Gen.Choose(1, 4)
        from step in Range(0.3, 0.7)
        from bore in Range(10, 30)
        select gap.With(d => d with
        {
            Tube = d.Tube with { Steps = [new BoreStep { Station = step * d.Vents[0].Station, Bore = Length.FromMillimeters(bore) }] },
            Source = source,
            Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("jacket 1"), Holes = Fitting(d.Vents[0].Holes, bore) }],
            Jackets = [.. Enumerable.Range(1, jackets).Select(i => new Jacket
            {
                Name = $"jacket {i}",
                Volume = Volume.FromCubicCentimeters(volume / i),
                WallArea = Area.FromSquareCentimeters(wall),
                Openings = [new JacketOpening { Holes = Holes(hole, count), To = i < jackets ? VentTarget.IntoJacket($"jacket {i + 1}") : VentTarget.Air }],
            })],
        })).ToArbitrary();

    /// <summary>As many of some holes as fit round a bore, and none wider than it.</summary>
    private static VentHoles Fitting(VentHoles holes, double bore)
    {
        double diameter = Math.Min(holes.Diameter.Millimeters, bore);
        return holes with { Diameter = Length.FromMillimeters(diameter), Count = Math.Clamp((int)(Math.PI * bore / diameter), 1, holes.Count) };
    }

    private static VentHoles Holes(double millimetres, int count) =>
        new() { Diameter = Length.FromMillimeters(millimetres), WallThickness = Length.FromMillimeters(0.5), Count = count };

    private static Gen<GapSource> Sources(GapDesign design) =>
        from kind in Gen.Choose(0, 4)
        from thickness in Range(0.2, 1.2)
        from rate in Range(8, 20)
        from exponent in Range(0, 0.5)
        from delay in Range(0, 12)
        from flow in Range(0.001, 0.03)
        let motor = design.Motor()
        let fragments = motor with { Web = Bench.Plates(motor.Web.Mass.Grams, thickness, rate, exponent) with { Mass = motor.Web.Mass } }
        select kind switch
        {
            0 => (GapSource)motor,
            1 => fragments,
            2 => new GapSource.Cluster { Motors = [motor, fragments with { Delay = Duration.FromMilliseconds(delay) }] },
            3 => Grains.Whole with { Rate = fragments.Rate(), Products = motor.Products, BurntLength = Length.FromMillimeters(10 + 3 * delay) },
            _ => design.Fed([0, 0.003, 0.02], [0, flow, 0.1 * flow], [1900, 1900, 1500]),
        };

    private static BurnRateLaw Rate(this GapSource.Booster motor) => ((WebBurn.ByRateLaw)motor.Web).Rate;

    private static Gen<double> Range(double low, double high) =>
        Gen.Choose(0, int.MaxValue).Select(n => low + (high - low) * n / int.MaxValue);
}
