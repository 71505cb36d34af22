using Staging.Core.Discharge;
using UnitsNet;
using static Staging.Core.Tests.Discharge.DischargeTestGas;

namespace Staging.Core.Tests.Discharge;

public class MeteringDeviceTests
{
    private static readonly DynamicViscosity AirViscosity = DynamicViscosity.FromPascalSeconds(1.82e-5);

    [Fact]
    public void A_vent_hole_in_a_body_tube_lies_outside_the_orifice_plate_standard_and_says_so()
    {
        MeterReading r = Read(Plate(18, 4), 1.3e5, 1.0e5);
        Assert.Equal(["DIS011", "DIS012"], r.Findings.Select(f => f.Code).Take(2));
        Assert.Contains("4 mm", r.Findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plate_within_the_standard_has_no_notes_and_its_stated_uncertainty()
    {
        MeterReading r = Read(Plate(100, 50), 1.05e5, 1.0e5);
        Assert.Empty(r.Findings);
        Assert.Equal(0.005, r.CoefficientUncertainty, 12);
        Assert.Equal(0.035 * (1 - 1 / 1.05) / 1.4, r.FactorUncertainty, 12);
    }

    [Fact]
    public void The_reading_satisfies_the_flow_equation_at_its_own_Reynolds_number()
    {
        OrificePlateIso5167 plate = Plate(80, 40);
        MeterReading r = Read(plate, 1.05e5, 1.0e5);
        double q = r.MassFlow.KilogramsPerSecond;
        Assert.Equal(4 * q / (Math.PI * 0.08 * 1.82e-5), r.Reynolds, 1e-9 * r.Reynolds);
        Assert.Equal(plate.DischargeCoefficient(r.Reynolds), r.DischargeCoefficient, 12);
        double beta4 = Math.Pow(0.5, 4);
        double equation = r.DischargeCoefficient / Math.Sqrt(1 - beta4) * r.FlowFactor * Math.PI / 4 * 0.04 * 0.04 * Math.Sqrt(2 * 0.05e5 * 1.2);
        Assert.Equal(equation, q, 1e-9 * q);
    }

    [Theory]
    [InlineData(1.4e5, "DIS016")]
    [InlineData(1.0005e5)]
    public void An_expansion_beyond_the_fit_is_noted(double p1, params string[] codes) =>
        Assert.Equal(codes, Read(Plate(100, 50), p1, 1.0e5).Findings.Select(f => f.Code));

    /// <summary>Each limit of use alone: a wider pipe, a wider hole, a slower flow than the standard was made for.</summary>
    [Theory]
    [InlineData(1010, 505, 1.05e5, "DIS013")]
    [InlineData(100, 76, 1.05e5, "DIS014")]
    [InlineData(100, 75, 1.05e5)]
    [InlineData(60, 15, 1.0005e5, "DIS015")]
    public void Each_limit_of_the_standard_is_told_alone(double pipe, double bore, double p1, params string[] codes) =>
        Assert.Equal(codes, Read(Plate(pipe, bore), p1, 1.0e5).Findings.Select(f => f.Code));

    [Fact]
    public void A_wider_hole_never_asks_for_a_slower_flow()
    {
        // 5000 up to a diameter ratio of 0.56, where 16 000 times its square takes over at 5018.
        double last = 5000;
        for (double bore = 15; bore <= 75; bore += 0.5)
        {
            double least = Plate(100, bore).MinReynolds;
            Assert.InRange(least, last, 1.05 * last);
            last = least;
        }
    }

    [Theory]
    [InlineData(0.45, 0)]
    [InlineData(0.55, 0.005)]
    [InlineData(0.7, 0.005)]
    public void A_slow_flow_through_a_wide_hole_is_half_a_percent_less_sure(double beta, double more) =>
        Assert.Equal(more, ReaderHarrisGallagher.Uncertainty(beta, 0.1, 9_999) - ReaderHarrisGallagher.Uncertainty(beta, 0.1, 10_001), 1e-15);

    [Fact]
    public void A_flow_too_slow_for_the_correlation_is_refused()
    {
        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => Read(Plate(50, 5), 1.00001e5, 1.0e5));
        Assert.Contains("PipeReynolds", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_orifice_as_wide_as_its_pipe_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Read(Plate(50, 48), 1.05e5, 1.0e5));

    [Fact]
    public void An_unchoked_critical_nozzle_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Nozzle().Read(Air(1.5e5, 293), Pressure.FromPascals(1e5), AirViscosity));

    [Fact]
    public void A_diffuser_lets_a_critical_nozzle_work_at_a_higher_back_pressure()
    {
        MeterReading r = (Nozzle() with { ChokedUpTo = 0.85 }).Read(Air(1.5e5, 293), Pressure.FromPascals(1e5), AirViscosity);
        Assert.Empty(r.Findings);
    }

    [Fact]
    public void A_critical_nozzle_satisfies_its_flow_equation_at_its_own_Reynolds_number()
    {
        MeterReading r = Nozzle().Read(Air(3e5, 293), Pressure.FromPascals(1e5), AirViscosity);
        Assert.Equal(4 * r.MassFlow.KilogramsPerSecond / (Math.PI * 0.005 * 1.82e-5), r.Reynolds, 1e-9 * r.Reynolds);
        Assert.Equal(0.9959 - 2.720 / Math.Sqrt(r.Reynolds), r.DischargeCoefficient, 12);
    }

    [Fact]
    public void A_tiny_critical_nozzle_is_noted_as_outside_its_Reynolds_range() =>
        Assert.Equal("DIS017", Assert.Single((Nozzle() with { ThroatDiameter = Length.FromMillimeters(0.5) }).Read(Air(2.5e5, 293), Pressure.FromPascals(1e5), AirViscosity).Findings).Code);

    [Fact]
    public void Shapes_and_tappings_that_are_none_are_refused_by_name()
    {
        Assert.Equal("Shape", Assert.Throws<ArgumentOutOfRangeException>(() => Nozzle() with { Shape = (CriticalNozzleShape)3 }).ParamName);
        Assert.Equal("Tappings", Assert.Throws<ArgumentOutOfRangeException>(() => Plate(50, 25) with { Tappings = (PressureTappings)(-1) }).ParamName);
    }

    private static CriticalNozzle Nozzle() => new() { ThroatDiameter = Length.FromMillimeters(5), Shape = CriticalNozzleShape.Toroidal };

    private static OrificePlateIso5167 Plate(double pipe_mm, double bore_mm) => new()
    {
        PipeDiameter = Length.FromMillimeters(pipe_mm),
        Bore = Length.FromMillimeters(bore_mm),
        Tappings = PressureTappings.Corner,
    };

    private static MeterReading Read(OrificePlateIso5167 plate, double p1, double p2) => plate.ReadGas(
        Pressure.FromPascals(p1), Pressure.FromPascals(p2), Density.FromKilogramsPerCubicMeter(1.2), AirViscosity, 1.4);
}
