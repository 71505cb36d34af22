using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Vessels that settle or are flushed far faster than the step: what passes is that of very fine explicit substeps, at a bounded cost.</summary>
public class StiffVesselTests
{
    private const double Step = 3e-6;
    private static readonly CountingLaw Law = new();
    private static readonly GapParameters P = GapToSi.ToSi(Bench.Adiabatic.With(d => d with { DischargeLaw = Law }));

    [Theory]
    [InlineData(1e-9, 6)]
    [InlineData(1e-9, 20)]
    [InlineData(10e-9, 60)]
    [InlineData(100e-9, 20)]
    public void A_flushed_jacket_passes_what_fine_explicit_substeps_pass(double volume, double out_mm)
    {
        // A cell that loses one or two per cent of its gas a step: one implicit step errs by about the square of that.
        VesselNetwork exact = CellAndJacket(volume, out_mm, int.MaxValue), stiff = CellAndJacket(volume, out_mm);
        double masses = 0, exactMasses = 0;
        for (int s = 0; s < 40; s++)
        {
            exact.Pass(Step);
            stiff.Pass(Step);
            exactMasses += exact.Passed[1].Mass;
            masses += stiff.Passed[1].Mass;
        }

        Assert.True(exactMasses > 0.2 * 2e-6, $"{exactMasses} kg passed");
        Assert.InRange(masses / exactMasses - 1, -2e-4, 2e-4);
        Assert.InRange(stiff.PressureOf(0) / exact.PressureOf(0) - 1, -2e-4, 2e-4);
        Assert.InRange(stiff.PressureOf(1) / exact.PressureOf(1) - 1, -2e-4, 2e-4);
        Assert.InRange(stiff.Gas[1].Zone(P).Temperature.Value / exact.Gas[1].Zone(P).Temperature.Value - 1, -2e-4, 2e-4);
    }

    [Fact]
    public void The_error_falls_with_the_square_of_the_step()
    {
        double Error(int steps)
        {
            VesselNetwork exact = CellAndJacket(10e-9, 20, int.MaxValue), stiff = CellAndJacket(10e-9, 20, 0);
            for (int s = 0; s < steps; s++)
            {
                exact.Pass(120e-6 / steps);
                stiff.Pass(120e-6 / steps);
            }

            return Math.Abs(stiff.PressureOf(0) / exact.PressureOf(0) - 1);
        }

        double coarse = Error(8), fine = Error(16);
        Assert.InRange(coarse / fine, 3, 6);
    }

    [Fact]
    public void A_hole_at_rest_does_not_empty_a_vessel_that_another_fills()
    {
        // The jacket stands at the outside pressure: its wide way out passes nothing yet, and a hundred times what comes in once it is a little above.
        VesselNetwork network = CellAndJacket(10e-9, 60, int.MaxValue);
        for (int s = 0; s < 100; s++)
        {
            network.Pass(0.02 * Step);
            Assert.InRange(network.PressureOf(1), 0.999 * P.OutsidePressure, 1.01 * P.OutsidePressure);
        }
    }

    [Theory]
    [InlineData(1e-9, 60)]
    [InlineData(1e-12, 60)]
    [InlineData(1e-6, 6)]
    public void A_step_costs_a_bounded_number_of_calls_of_the_law_however_small_the_jacket(double volume, double out_mm)
    {
        VesselNetwork network = CellAndJacket(volume, out_mm);
        for (int s = 0; s < 20; s++)
        {
            int before = Law.Calls;
            network.Pass(Step);
            Assert.InRange(Law.Calls - before, 1, 2 * (2 * 32 + 3 * 60));
        }
    }

    [Theory]
    [InlineData(400e3, 100e3, 300e3)]
    [InlineData(101325, 101325, 101325)]
    [InlineData(90e3, 250e3, 101325)]
    [InlineData(150e3, 20e3, 400e3)]
    public void Whichever_way_the_gas_goes_nothing_is_made_or_lost_and_no_vessel_empties(double cell, double one, double two)
    {
        // A cell into one jacket, that into another and back outside; holes of very different size, so that all settle within the step.
        HoleLink[] links = [new(0, 1, Holes(6), 0), new(1, 2, Holes(60), 0), new(2, -1, Holes(20), P.OutsidePressure), new(1, -1, Holes(0.5), 0.7 * P.OutsidePressure)];
        var network = new VesselNetwork(P, 3, links);
        Fill(network, 0, 1e-6, cell, 900, 1);
        Fill(network, 1, 1e-10, one, 288, 0);
        Fill(network, 2, 3e-9, two, 500, 0.5);
        network.Speeds[0] = 200;
        double mass = Sum(network, g => g.Mass), products = Sum(network, g => g.Products), energy = Sum(network, g => g.Energy), lost = 0, lostEnergy = 0, kinetic = 0;
        for (int s = 0; s < 50; s++)
        {
            network.Pass(Step);
            lost += network.Passed[2].Mass + network.Passed[3].Mass;
            lostEnergy += network.Passed[2].Energy + network.Passed[3].Energy;
            kinetic += 0.5 * 200 * 200 * network.Passed[0].Forward;
            Assert.All(network.Gas, g => Assert.True(g.HoldsGas && g.IsMixture, $"{g.Products} {g.Air} {g.Energy}"));
        }

        Assert.InRange((Sum(network, g => g.Mass) + lost) / mass - 1, -1e-13, 1e-13);
        Assert.InRange((Sum(network, g => g.Energy) + lostEnergy - kinetic) / energy - 1, -1e-13, 1e-13);
        Assert.True(Sum(network, g => g.Products) <= products * (1 + 1e-13));
    }

    [Fact]
    public void A_small_jacket_without_a_way_out_comes_to_the_pressure_of_its_cell()
    {
        var network = new VesselNetwork(P, 2, [new HoleLink(0, 1, Holes(20), 0)]);
        Fill(network, 0, 1e-6, 300e3, 900, 1);
        Fill(network, 1, 1e-9, 101325, 288, 0);
        network.Pass(Step);
        Assert.InRange(network.PressureOf(1) / network.PressureOf(0) - 1, -1e-4, 1e-4);
        network.Pass(Step);
        Assert.InRange(network.PressureOf(1) / network.PressureOf(0) - 1, -1e-8, 1e-8);
    }

    private static VesselNetwork CellAndJacket(double volume, double out_mm, int maxSubsteps = 32)
    {
        var network = new VesselNetwork(P, 2, [new HoleLink(0, 1, Holes(6), 0), new HoleLink(1, -1, Holes(out_mm), P.OutsidePressure)], maxSubsteps);
        Fill(network, 0, 1e-6, 300e3, 500, 0.3);
        Fill(network, 1, volume, 101325, 288, 0);
        return network;
    }

    private static OrificeSize Holes(double millimetres) => new(Math.PI / 4 * millimetres * millimetres * 1e-6, millimetres * 1e-3, 0);

    private static void Fill(VesselNetwork network, int i, double volume, double pressure, double temperature, double fraction)
    {
        double mass = pressure * volume / (temperature * (fraction * P.Products.R + (1 - fraction) * P.Air.R));
        network.Volumes[i] = volume;
        network.Gas[i] = new Parcel(fraction * mass, (1 - fraction) * mass, mass * temperature * (fraction * P.Products.Cv + (1 - fraction) * P.Air.Cv));
    }

    private static double Sum(VesselNetwork network, Func<Parcel, double> of) => network.Gas.Sum(of);

    /// <summary>A law that counts how often it is asked.</summary>
    private sealed class CountingLaw : IDischargeLaw
    {
        public int Calls { get; private set; }

        public ValidityRange Validity => SharpEdgedLaw.Perry.Validity;

        public double MassFlux_kg_per_m2s(in OrificeConditions conditions)
        {
            Calls++;
            return SharpEdgedLaw.Perry.MassFlux_kg_per_m2s(conditions);
        }
    }
}
