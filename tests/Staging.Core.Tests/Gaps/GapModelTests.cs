using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>The stirred model beside the displacement model: where they must agree, and which way they differ.</summary>
public class GapModelTests
{
    private static readonly GapModel Stirred = new GapModel.WellStirred();
    private static readonly GapProblem Closed = Bench.Adiabatic.With(d => d with { Vents = [], Joint = Bench.Joint(2000) });

    [Fact]
    public void A_run_says_which_model_made_it_and_displacement_is_usual()
    {
        Assert.IsType<GapModel.TwoZone>(Bench.Gap.Solve().Model);
        Assert.Equal(Stirred, Bench.Gap.Solve(Stirred).Model);
    }

    [Fact]
    public void In_a_closed_gap_of_one_gamma_both_have_one_pressure()
    {
        // One gamma and no heat loss: p V = 0.4 U whatever mixes with what. The tolerance is the integrator's.
        GapRun apart = Closed.Solve(options: SolverOptions.Default), mixed = Closed.Solve(Stirred, SolverOptions.Default);
        for (double ms = 0.5; ms < 60; ms += 3.1)
        {
            Pressure a = apart.At(Duration.FromMilliseconds(ms)).GapPressure, b = mixed.At(Duration.FromMilliseconds(ms)).GapPressure;
            Assert.InRange(b / a - 1, -1e-7, 1e-7);
        }
    }

    [Fact]
    public void A_stirred_vessel_that_is_fed_with_another_gas_has_its_energy_and_mass()
    {
        // 10 cm3 of air at 101325 Pa and 288.15 K, fed with 10 mg of gas of gamma 1.25 and 34.75 g/mol at 2000 K: by the balance of energy
        // 1441.03117 K and 851512.355 Pa (as computed from T = (m1 cv1 T1 + m cp T)/(m1 cv1 + m cv), p = (m1 R1 + m R) T/V).
        // The recess, 1 mm3 of the 10 cm3, is a pocket of its own: it may shift the temperature by a few parts in 1e4.
        var gas = PerfectGas.FromMolarMass("feed", MolarMass.FromGramsPerMole(34.75), 1.25, Bench.Invented);
        double length = (10e-6 - 1e-9) / (Math.PI / 4 * 0.018 * 0.018);
        GapProblem vessel = Closed.With(d => d with
        {
            Tube = new GuideTube { Bore = Length.FromMillimeters(18), Length = Length.FromMeters(length) },
            Grain = d.Grain with { RecessVolume = Volume.FromCubicMillimeters(1) },
            Source = d.Fed([0, 0.01], [1e-3, 1e-3], [2000, 2000]) with
            {
                Products = new DustyGas { Name = "feed", Gas = gas, GasMassFraction = 1, ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1000), Provenance = Bench.Invented },
            },
        });
        vessel = vessel with { Surroundings = vessel.Surroundings with { Gas = PerfectGas.FromMolarMass("air", MolarMass.FromGramsPerMole(28.9644), 1.4, Bench.Invented) } };
        GapRun run = vessel.Solve(Stirred);
        GapSnapshot end = run.At(run.End);
        Assert.InRange(end.HotTemperature.Kelvins / 1441.03117194 - 1, -5e-4, 5e-4);
        Assert.InRange(end.GapPressure.Pascals / 851512.354998 - 1, -5e-4, 5e-4);
        Assert.Equal(10e-6, run.Ledger.Burnt.Kilograms, 1e-14);
    }

    [Fact]
    public void With_products_like_the_air_both_models_are_one()
    {
        // Fed with air at the temperature of the air, there is nothing to mix but what compression warmed unequally: at 1.5 kPa by less than
        // 0.4/1.4 times 1.5/101, 0.4 %, which the pressure follows.
        GapProblem cold = Bench.Adiabatic.With(d => d with
        {
            Joint = Bench.Joint(2000),
            Source = d.Fed([0, 0.004, 0.02], [0, 0.001, 0], [288.15, 288.15, 288.15]),
        });
        GapRun apart = cold.Solve(), mixed = cold.Solve(Stirred);
        Assert.InRange(apart.PeakGaugePressure.Pascals, 1000, 2000);
        Assert.InRange(mixed.PeakGaugePressure / apart.PeakGaugePressure - 1, -4e-3, 4e-3);
    }

    [Fact]
    public void Mixing_brings_warm_gas_sooner_but_never_as_hot()
    {
        GapProblem held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000) });
        GapRun apart = held.Solve(), mixed = held.Solve(Stirred);
        Duration early = 0.3 * apart.TimeOf(GapEventKind.FrontAtLastVent)!.Value;
        Assert.Equal(0, apart.At(early).ProductsAtNozzle, 1e-9);
        Assert.True(mixed.At(early).ProductsAtNozzle > 0.01);
        Assert.True(mixed.PeakGrainSurface < apart.PeakGrainSurface);
    }

    [Fact]
    public void The_front_of_a_stirred_gap_is_where_its_products_would_reach_if_gathered()
    {
        GapRun run = Closed.Solve(Stirred);
        GapSnapshot end = run.At(run.End);
        Assert.InRange(end.Front.Millimeters, 1, 249);
        Assert.True(end.Front > run.At(Duration.FromMilliseconds(5)).Front);
    }

    [Fact]
    public void Ledgers_of_the_stirred_model_close_to_round_off()
    {
        foreach (double diameter in (double[])[2, 6, 12])
        {
            GapLedger ledger = Bench.Gap.With(d => d with { Vents = [Bench.Hole(d.Tube, diameter)] }).Solve(Stirred).Ledger;
            Assert.InRange(ledger.RelativeMassResidual, -1e-12, 1e-12);
            Assert.InRange(ledger.RelativeEnergyResidual, -1e-12, 1e-12);
        }
    }
}
