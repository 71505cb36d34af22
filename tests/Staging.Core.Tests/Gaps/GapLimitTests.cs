using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Limits in which the gap model has a closed form.</summary>
public class GapLimitTests
{
    private static readonly FrictionJoint Unyielding = Bench.Joint(2000);

    [Fact]
    public void A_closed_gap_of_one_gamma_has_the_pressure_of_its_energy()
    {
        GapProblem gap = Bench.Adiabatic.With(d => d with { Vents = [], Joint = Unyielding }) with { Horizon = Duration.FromMilliseconds(80) };
        GapRun run = gap.Solve();

        double cp = gap.Surroundings.Gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin;
        double chamber = gap.Motor().ChamberVolume.CubicMeters;
        double air = gap.Design.Tube.Volume.CubicMeters + gap.Design.Grain.RecessVolume.CubicMeters;
        double burnt = gap.Motor().Web.Mass.Kilograms * cp * gap.Motor().FlameTemperature.Kelvins;
        double expected = (gap.Motor().ChamberPressure.Pascals * chamber + 101325 * air + 0.4 * burnt) / (chamber + air);
        GapSnapshot end = run.At(run.End);
        Near(expected, end.GapPressure.Pascals, 1e-7);
        Near(expected, end.ChamberPressure.Pascals, 1e-6);
    }

    [Fact]
    public void Two_zones_of_one_gas_are_one_zone_at_every_moment()
    {
        GapProblem gap = Bench.Adiabatic.With(d => d with { Vents = [], Joint = Unyielding });
        GapRun run = gap.Solve(options: SolverOptions.Default);
        double cp = gap.Surroundings.Gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin;
        double chamber = gap.Motor().ChamberVolume.CubicMeters;
        double air = gap.Design.Tube.Volume.CubicMeters + gap.Design.Grain.RecessVolume.CubicMeters;
        double tau = gap.Web().Time.Seconds;
        for (double t = 0.5e-3; t < tau; t += 1.7e-3)
        {
            double burnt = gap.Motor().Web.Mass.Kilograms * (1 - Math.Cos(Math.PI * t / tau)) / 2 * cp * gap.Motor().FlameTemperature.Kelvins;
            GapSnapshot s = run.At(Duration.FromSeconds(t));
            double oneZone = ((gap.Motor().ChamberPressure - s.ChamberPressure).Pascals * chamber + 101325 * air + 0.4 * burnt) / air;
            Near(oneZone, s.GapPressure.Pascals, 1e-7);
        }
    }

    [Fact]
    public void A_closed_gap_of_two_gases_compresses_its_air_isentropically()
    {
        // Products of another gamma: energy balance with the air compressed as an isentrope; solved by bisection.
        GapProblem gap = Bench.Adiabatic.With(d => d with { Vents = [], Joint = Unyielding, Source = d.Motor() with { Products = Bench.Powder(0.65) } }) with
        {
            Horizon = Duration.FromMilliseconds(80),
        };
        GapRun run = gap.Solve();
        PerfectGas products = gap.Motor().Products.Equivalent();
        double kp = 1 / (products.HeatCapacityRatio - 1), ka = 1 / 0.4;
        double chamber = gap.Motor().ChamberVolume.CubicMeters, air = gap.Design.Tube.Volume.CubicMeters + gap.Design.Grain.RecessVolume.CubicMeters;
        double burnt = gap.Motor().Web.Mass.Kilograms * products.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin * gap.Motor().FlameTemperature.Kelvins;
        double energy = gap.Motor().ChamberPressure.Pascals * chamber * kp + 101325 * air * ka + burnt;
        double low = 101325, high = 1e7;
        for (int i = 0; i < 200; i++)
        {
            double p = 0.5 * (low + high);
            double compressed = air * Math.Pow(101325 / p, 1 / 1.4);
            bool tooHigh = p * (chamber + air - compressed) * kp + p * compressed * ka > energy;
            (low, high) = tooHigh ? (low, p) : (p, high);
        }

        // The first products mix with a slab of air 0.001 bore thick: a few parts in 1e5 of their heat capacity.
        Near(low, run.At(run.End).GapPressure.Pascals, 1e-4);
    }

    [Fact]
    public void The_chamber_blows_down_through_its_nozzle_as_an_adiabatic_vessel()
    {
        // A forward opening that needs 1 s to grow leaves the nozzle alone during the first milliseconds.
        GapProblem gap = Bench.Adiabatic.With(d => d with
        {
            Joint = Unyielding,
            Source = d.Motor() with
            {
                NozzleThroatDiameter = Length.FromMillimeters(3.5),
                OpeningDiameter = Length.FromMillimeters(0.5),
                OpeningTime = Duration.FromSeconds(1),
                Web = new WebBurn.OverTime { Mass = Mass.Zero, Time = Duration.FromSeconds(1) },
            },
        }) with
        { Horizon = Duration.FromMilliseconds(0.5) };
        GapRun run = gap.Solve();
        double sonic = IsentropicFlow.CriticalFlowFactor(1.4) * Math.Sqrt(gap.Surroundings.Gas.GasConstant.JoulesPerKilogramKelvin * 1900);
        double tau = 5e-6 / (Math.PI / 4 * 3.5e-3 * 3.5e-3 * sonic);
        double expected = 800e3 * Math.Pow(1 + 0.2 * run.End.Seconds / tau, -7);
        Assert.True(expected > 101325 / IsentropicFlow.CriticalPressureRatio(1.4), "still choked");
        Near(expected, run.At(run.End).ChamberPressure.Pascals, 1e-7);
    }

    [Fact]
    public void Behind_very_large_vents_the_front_moves_by_displacement_at_outside_pressure()
    {
        GuideTube tube = Bench.Tube(2000);
        GapProblem gap = Bench.Adiabatic.With(d => d with
        {
            Tube = tube,
            Vents = [new Vent { Station = Length.FromMillimeters(1940), Holes = new VentHoles { Diameter = Length.FromMillimeters(25), WallThickness = Length.FromMillimeters(0.5), Count = 1000 } }],
            Source = d.Motor() with { ChamberPressure = Pressure.FromKilopascals(150), Web = d.Web() with { Mass = Mass.FromGrams(0.004) } },
            Joint = Unyielding,
        }) with
        { Horizon = Duration.FromMilliseconds(20) };
        GapRun run = Bench.SolvedThoughImpossible(gap, options: new SolverOptions { RelativeTolerance = 1e-10 });
        double cp = gap.Surroundings.Gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin;
        double tau = gap.Web().Time.Seconds, area = tube.CrossSection.SquareMeters;
        for (double t = 2e-3; t < 20e-3; t += 3e-3)
        {
            // At constant pressure gamma/(gamma-1) p dV = enthalpy that came in = energy that left the chamber + enthalpy of the burnt fragments.
            GapSnapshot s = run.At(Duration.FromSeconds(t));
            double burnt = gap.Motor().Web.Mass.Kilograms * (1 - Math.Cos(Math.PI * t / tau)) / 2 * cp * gap.Motor().FlameTemperature.Kelvins;
            double heat = (gap.Motor().ChamberPressure - s.ChamberPressure).Pascals * 5e-6 / 0.4 + burnt;
            double expected = 0.018e-3 + 0.4 / (1.4 * 101325 * area) * heat;
            Near(expected, s.Front.Meters, 1e-6);
        }
    }

    [Fact]
    public void Ledgers_close_to_round_off()
    {
        foreach (double diameter in (double[])[2, 6, 12])
        {
            GapLedger ledger = Bench.Gap.With(d => d with { Vents = [Bench.Hole(d.Tube, diameter)] }).Solve().Ledger;
            Assert.InRange(ledger.RelativeMassResidual, -1e-12, 1e-12);
            Assert.InRange(ledger.RelativeEnergyResidual, -1e-12, 1e-12);
        }
    }

    private static void Near(double expected, double actual, double relative) =>
        Assert.True(Math.Abs(actual - expected) <= relative * Math.Abs(expected), $"expected {expected:R}, got {actual:R}, off by {Math.Abs(actual / expected - 1):E2}");

    [Theory]
    [InlineData(1, 3)]
    [InlineData(2, 2)]
    public void A_ring_of_holes_split_in_two_is_the_same_ring(int above, int below)
    {
        GapDesign whole = Bench.Design with { Vents = [Bench.Hole(Bench.Design.Tube, 6, 4)], Joint = Bench.Joint(60) };
        const double apart = 1e-6;
        Vent Ring(int count, double shift) => Bench.Hole(Bench.Design.Tube, 6, count) with { Station = whole.Vents[0].Station - Length.FromMeters(shift) };
        GapRun one = (Bench.Gap with { Design = whole }).Solve();
        GapRun two = (Bench.Gap with { Design = whole with { Vents = [Ring(above, 0), Ring(below, apart)] } }).Solve();
        // The lower ring stirs less by exp(-apart/reach), 1 - 4e-5, and sees the front apart/front speed sooner.
        Assert.Equal(one.TimeOf(GapEventKind.Lit)!.Value.Seconds, two.TimeOf(GapEventKind.Lit)!.Value.Seconds, 1e-6);
        Assert.Equal(one.PeakGrainSurface.Kelvins, two.PeakGrainSurface.Kelvins, 0.05);
    }
}
