using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Discharge;

public class OrificeTests
{
    private static readonly VentHoles Holes = new()
    {
        Diameter = Length.FromMillimeters(4),
        WallThickness = Length.FromMillimeters(0.5),
        Count = 2,
    };

    [Fact]
    public void Flow_is_zero_at_equal_pressures()
    {
        OrificeFlow flow = Orifice.Flow(Air(150e3, 1500), Air(150e3, 288), Holes, SharpEdgedLaw.Perry);
        Assert.Equal(0, flow.MassFlow.KilogramsPerSecond);
        Assert.False(flow.IsChoked);
        Assert.Equal(0, flow.JetSpeed.MetersPerSecond);
    }

    [Fact]
    public void Flow_from_side_two_is_negative_and_carries_the_gas_of_side_two()
    {
        GasState hot = Air(150e3, 1500);
        GasState cold = Air(300e3, 288);
        OrificeFlow flow = Orifice.Flow(hot, cold, Holes, ConstantCoefficientLaw.Ideal);
        Assert.True(flow.MassFlow.KilogramsPerSecond < 0);
        Assert.Same(cold, flow.Upstream);
    }

    [Fact]
    public void A_nozzle_levels_off_past_the_critical_ratio_and_a_sharp_edge_does_not()
    {
        OrificeFlow nozzle = Orifice.Flow(Air(300e3, 288), Air(100e3, 288), Holes, ConstantCoefficientLaw.RoundedInlet);
        OrificeFlow sharp = Orifice.Flow(Air(300e3, 288), Air(100e3, 288), Holes, SharpEdgedLaw.Perry);
        Assert.True(nozzle.IsChoked);
        Assert.True(sharp.IsChoked);
        Assert.False(nozzle.AnswersToDownstream);
        Assert.True(sharp.AnswersToDownstream);

        OrificeFlow nozzleLower = Orifice.Flow(Air(300e3, 288), Air(50e3, 288), Holes, ConstantCoefficientLaw.RoundedInlet);
        OrificeFlow sharpLower = Orifice.Flow(Air(300e3, 288), Air(50e3, 288), Holes, SharpEdgedLaw.Perry);
        Assert.Equal(nozzle.MassFlow, nozzleLower.MassFlow);
        Assert.True(sharpLower.MassFlow > sharp.MassFlow);
    }

    [Fact]
    public void The_jet_of_a_choked_hole_has_the_speed_of_sound_of_its_throat()
    {
        OrificeFlow flow = Orifice.Flow(Air(300e3, 288), Air(100e3, 288), Holes, ConstantCoefficientLaw.Ideal);
        double throatTemperature = 288 / 1.2;
        Assert.Equal(Math.Sqrt(1.4 * 8314.32 / 28.9644 * throatTemperature), flow.JetSpeed.MetersPerSecond, 9);
        Assert.Equal(1, flow.DischargeCoefficient, 12);
    }

    [Theory]
    [InlineData(4.0, "DIS001")]
    [InlineData(0.5)]
    public void A_thick_wall_is_noted_for_a_sharp_edged_law(double wall_mm, params string[] codes)
    {
        VentHoles holes = Holes with { WallThickness = Length.FromMillimeters(wall_mm) };
        Assert.Equal(codes, Orifice.Flow(Air(2e5, 288), Air(1e5, 288), holes, SharpEdgedLaw.Perry).Findings.Select(f => f.Code));
    }

    [Theory]
    [InlineData(1e-3 - 1e-12)]
    [InlineData(0.999e-3)]
    public void The_blend_meets_the_root_in_value_and_slope_at_its_width(double d)
    {
        double psi = NozzleFunction.Value(d, 1.25);
        double root = IsentropicFlow.ThroatMassFlow(1 - d, 1.25);
        Assert.Equal(root, psi, 1e-8 * root);
        PhiDerivative inside = NozzleFunction.WithSlope(d, 1.25);
        PhiDerivative outside = NozzleFunction.WithSlope(Orifice.BlendWidth * (1 + 1e-12), 1.25);
        Assert.Equal(outside.ByRatio, inside.ByRatio, 1e-3 * Math.Abs(outside.ByRatio));
    }

    [Fact]
    public void Outside_the_blend_nothing_is_changed()
    {
        for (double r = 0; r <= 1 - Orifice.BlendWidth; r += 1e-3)
            Assert.Equal(IsentropicFlow.ThroatMassFlow(r, 1.4), NozzleFunction.Value(1 - r, 1.4), 1e-11);
    }

    [Fact]
    public void Perry_coefficient_has_the_published_end_values()
    {
        Assert.Equal(0.6001, SharpEdgedLaw.Coefficient(1), 12);
        Assert.Equal(0.8414, SharpEdgedLaw.Coefficient(0), 12);
    }

    [Theory]
    [InlineData(0.4, -0.119)]
    [InlineData(0.5, -0.098)]
    [InlineData(1, 0)]
    public void The_blend_of_a_power_is_low_at_half_its_width_by_what_it_says_and_never_high(double m, double atHalf)
    {
        double half = 0.5 * Orifice.BlendWidth;
        Assert.Equal(atHalf, SmoothRoot.Power(half, m).Value / Math.Pow(half, m) - 1, 0.0005);
        for (double x = 0.001; x <= 1; x += 0.001)
        {
            double d = x * Orifice.BlendWidth;
            Assert.True(SmoothRoot.Power(d, m).Value <= Math.Pow(d, m) * (1 + 1e-12));
        }
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(double.NaN)]
    public void A_coefficient_outside_its_range_is_refused(double coefficient) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ConstantCoefficientLaw.Ideal with { Coefficient = coefficient });

    private static GasState Air(double p, double T) => new()
    {
        Gas = PerfectGas.DryAir,
        Pressure = Pressure.FromPascals(p),
        Temperature = Temperature.FromKelvins(T),
    };
}
