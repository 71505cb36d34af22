using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Gaps.OneDimensional;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

/// <summary>Random tubes and gaps: gas everywhere, and closed ledgers.</summary>
public class OneDimensionalLaws
{
    [Property(Arbitrary = [typeof(WildTube)], MaxTest = 150)]
    public void A_closed_tube_never_loses_gas_nor_mass_nor_energy(TubeCase wild)
    {
        TubeFlow tube = Tubes.Shock(50, wild.Left, wild.Right, wild.LeftR);
        (tube.Left, tube.Right) = (new ClosedEnd(), new ClosedEnd());
        (double mass, _, double energy, double products) = Tubes.Totals(tube);
        for (int s = 0; s < 150; s++)
        {
            Assert.True(tube.Step(tube.LongestStep(0.8)) > 0, "a step could be taken");
            Assert.True(tube.Extremes.AllPositive);
        }

        (double mass1, _, double energy1, double products1) = Tubes.Totals(tube);
        Assert.InRange(mass1 / mass - 1, -1e-12, 1e-12);
        Assert.InRange(energy1 / energy - 1, -1e-12, 1e-12);
        Assert.InRange((products1 - products) / mass, -1e-12, 1e-12);
    }

    [Property(Arbitrary = [typeof(WildGap)], MaxTest = 40)]
    public void A_gap_with_any_source_keeps_gas_in_every_cell_and_closes_its_ledgers(GapProblem gap) => HoldsGas(gap);

    [Property(Arbitrary = [typeof(LegalNetwork)], MaxTest = 25)]
    public void So_does_one_with_jackets_clusters_tables_and_a_stepped_bore_through_the_opening_of_its_joint(GapProblem gap) =>
        HoldsGas(gap with { Horizon = Duration.FromMilliseconds(6), AfterOpening = Duration.FromMilliseconds(3) });

    private static void HoldsGas(GapProblem gap)
    {
        GapRun run = gap.Solve(new GapModel.OneDimensional { Cells = 30, ProfileTimes = [Duration.FromMilliseconds(1), Duration.FromMilliseconds(4)] });
        Assert.IsNotType<GapOutcome.NotSolved>(run.Outcome);
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
        Assert.All(run.Profiles, p =>
        {
            Assert.All(p.Pressure_Pa.ToArray(), x => Assert.True(x > 0 && double.IsFinite(x)));
            Assert.All(p.Density_kg_per_m3.ToArray(), x => Assert.True(x > 0 && double.IsFinite(x)));
            Assert.All(p.Products.ToArray(), x => Assert.InRange(x, -1e-9, 1 + 1e-9));
        });
        Assert.True(double.IsFinite(run.PeakGaugePressure.Pascals) && double.IsFinite(run.PeakGrainSurface.Kelvins));
    }
}

/// <summary>Two gases beside each other, their states apart by up to six powers of ten.</summary>
public sealed record TubeCase(FlowState Left, FlowState Right, double LeftR);

/// <summary>Wild initial states, near vacuum among them.</summary>
public static class WildTube
{
    public static Arbitrary<TubeCase> Case() => (
        from rhoL in Power(-6, 1)
        from pL in Power(-6, 3)
        from uL in Between(-6, 6)
        from gammaL in Between(1.1, 1.67)
        from rhoR in Power(-6, 1)
        from pR in Power(-6, 3)
        from uR in Between(-6, 6)
        from gammaR in Between(1.1, 1.67)
        from r in Between(100, 500)
        select new TubeCase(State(rhoL, uL, pL, gammaL), State(rhoR, uR, pR, gammaR), r)).ToArbitrary();

    /// <summary>Velocities are given in units of the gas's own speed of sound.</summary>
    private static FlowState State(double rho, double mach, double p, double gamma) => new(rho, mach * Math.Sqrt(gamma * p / rho), p, gamma);

    private static Gen<double> Power(double low, double high) => Between(low, high).Select(x => Math.Pow(10, x));

    private static Gen<double> Between(double low, double high) =>
        Gen.Choose(0, int.MaxValue).Select(n => low + (high - low) * n / int.MaxValue);
}

/// <summary>Gaps with sources from feeble to absurd, and vents from pinholes to a missing side.</summary>
public static class WildGap
{
    public static Arbitrary<GapProblem> Gap() => (
        from legal in LegalGap.Gap().Generator
        from chamber in Gen.Choose(110, 20000)
        from opening in Gen.Choose(1, 18)
        from volume in Gen.Choose(1, 60)
        from milligrams in Gen.Choose(0, 20000)
        from holes in Gen.Choose(1, 400)
        from outside in Gen.Choose(1, 110)
        select legal with
        {
            Horizon = Duration.FromMilliseconds(5),
            Surroundings = legal.Surroundings with { Pressure = Pressure.FromKilopascals(outside) },
            Design = legal.Design with
            {
                Vents = [Opened(legal.Design, holes)],
                Source = legal.Motor() with
                {
                    ChamberPressure = Pressure.FromKilopascals(chamber),
                    OpeningDiameter = Length.FromMillimeters(Math.Min(opening, 13)),
                    ChamberVolume = Volume.FromCubicCentimeters(0.1 * volume),
                    Web = legal.Web() with { Mass = Mass.FromMilligrams(milligrams) },
                },
            },
        }).ToArbitrary();

    /// <summary>
    /// A vent with more holes, along as much of the tube as they need; together at most as large as 12 bores of open tube, and as nine
    /// tenths of this one: a missing side, which the stream crosses as a free jet.
    /// </summary>
    private static Vent Opened(GapDesign design, int holes)
    {
        Vent vent = design.Vents[0];
        double bore = design.Tube.Bore.Meters, hole = vent.Holes.Diameter.Meters, tube = design.Tube.Length.Meters;
        double longest = Math.Min(12 * bore, 0.9 * tube) - hole, perHole = 1.3 * hole * hole / (4 * bore);
        int ring = (int)(Math.PI * bore / hole), count = Math.Min(holes, Math.Max(ring, (int)(longest / perHole)));
        if (count <= ring)
            return vent with { Holes = vent.Holes with { Count = Math.Max(1, count) } };
        double length = count * perHole;
        return vent with
        {
            Station = Length.FromMeters(tube - 0.5 * (length + hole)),
            AxialLength = Length.FromMeters(length),
            Holes = vent.Holes with { Count = count },
        };
    }
}
