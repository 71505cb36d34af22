using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Sizing;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

/// <summary>The vent area of a gap that is fed without end: closed forms, and the pressure at which whole runs settle.</summary>
public class SteadyVentTests
{
    private const double Outside = 101325, Flame = 1900;

    private static readonly GasConstants Products = Bench.Powder(0.65).Equivalent().Constants;

    private static readonly ConstantCoefficientLaw Half = ConstantCoefficientLaw.Ideal with { Coefficient = 0.5 };

    private static OrificeConditions At(double pressure) => new(pressure, Flame, Outside, Products.R, Products.Gamma, 6e-3, 0.5e-3);

    [Fact]
    public void A_joint_bears_its_force_over_its_area() =>
        Assert.Equal(Outside + 20 / 2.5e-4, SteadyVent.PressureBorne(Outside, 20, 2.5e-4), 1e-9);

    [Fact]
    public void Choked_it_is_the_mass_over_the_critical_flux()
    {
        const double pressure = 400e3, made = 3.4e-3;
        double g = Products.Gamma, factor = Math.Sqrt(g) * Math.Pow(2 / (g + 1), (g + 1) / (2 * (g - 1)));
        double expected = made * Math.Sqrt(Products.R * Flame) / (0.5 * pressure * factor);
        Assert.Equal(expected, SteadyVent.Area(Half, At(pressure), made, 0, 0), 1e-12 * expected);
    }

    [Fact]
    public void Below_the_critical_ratio_it_is_the_mass_over_the_flux_of_Saint_Venant_and_Wantzel()
    {
        const double pressure = 150e3, made = 3.4e-3;
        double g = Products.Gamma, r = Outside / pressure;
        double psi = Math.Sqrt(2 * g / (g - 1) * (Math.Pow(r, 2 / g) - Math.Pow(r, (g + 1) / g)));
        double expected = made * Math.Sqrt(Products.R * Flame) / (0.5 * pressure * psi);
        Assert.Equal(expected, SteadyVent.Area(Half, At(pressure), made, 0, 0), 1e-12 * expected);
    }

    [Fact]
    public void Throat_and_leak_count_by_what_they_pass()
    {
        OrificeConditions gap = At(180e3);
        double shut = SteadyVent.Area(Half, gap, 3.4e-3, 0, 0);
        Assert.Equal(shut - 2 * 9.6e-6, SteadyVent.Area(Half, gap, 3.4e-3, 9.6e-6, 0), 1e-15);
        Assert.Equal(shut - 8e-6, SteadyVent.Area(Half, gap, 3.4e-3, 0, 8e-6), 1e-15);
        Assert.Equal(0, SteadyVent.Area(Half, gap, 3.4e-3, shut, 0));

        // A leak has no depth: a law that knows depth lets it pass what a thin wall does, and a deep vent more.
        OrificeConditions deep = gap with { WallThickness_m = 12e-3 };
        double thin = ShortTubeLaw.SquareInlet.MassFlux_kg_per_m2s(gap with { WallThickness_m = 0 }), tube = ShortTubeLaw.SquareInlet.MassFlux_kg_per_m2s(deep);
        Assert.NotEqual(thin, tube);
        double expected = SteadyVent.Area(ShortTubeLaw.SquareInlet, deep, 3.4e-3, 0, 0) - 8e-6 * thin / tube;
        Assert.Equal(expected, SteadyVent.Area(ShortTubeLaw.SquareInlet, deep, 3.4e-3, 0, 8e-6), 1e-15);
    }

    /// <summary>No length occurs: a short and a long gap settle at the pressure that the area was asked for, some with a leak.</summary>
    [Theory]
    [InlineData(60, 40e3, 0)]
    [InlineData(400, 40e3, 0)]
    [InlineData(60, 40e3, 10e-6)]
    [InlineData(400, 40e3, 10e-6)]
    [InlineData(60, 150e3, 0)]
    [InlineData(400, 150e3, 0)]
    public void A_gap_of_any_length_settles_at_the_pressure_asked_for(double millimetres, double gauge, double leak)
    {
        const double made = 3.4e-3;
        double area = SteadyVent.Area(SharpEdgedLaw.Perry, At(Outside + gauge), made, 0, leak);
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Tube = Bench.Tube(millimetres),
            Vents = [Bench.Hole(Bench.Tube(millimetres), 1e3 * Math.Sqrt(4 / Math.PI * area))],
            Source = d.Fed([0, 0.6], [made, made], [Flame, Flame]),
            Joint = Bench.Joint(2000) with { LeakArea = Area.FromSquareMeters(leak) },
            MixingAndHeat = MixingAndHeat.Judged with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0 },
        }) with
        { Horizon = Duration.FromMilliseconds(600) };
        foreach (GapModel model in (GapModel[])[new GapModel.TwoZone(), new GapModel.WellStirred()])
        {
            GapRun run = gap.Solve(model);
            Assert.Equal(gauge, run.At(Duration.FromMilliseconds(590)).GapPressure.Pascals - Outside, 1e-5 * gauge);
        }
    }
}
