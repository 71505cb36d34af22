using System.Globalization;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Validation.Published;

/// <summary>Printed values of books, standards and the test suites of other libraries.</summary>
public class DischargeChecks
{
    private const string Cengel = "Y. A. Cengel and J. M. Cimbala, Fluid Mechanics, ch. 12 (worked again in an open textbook companion, whose output was seen)";
    private const string FluidLibrary = "test value of an open-source fluid-mechanics library (fluids, Python), for ";

    [Fact]
    public void Air_leaves_a_flat_tyre()
    {
        OrificeFlow flow = Orifice.Flow(Gas(287, 1.4, 314e3, 298), Gas(287, 1.4, 94e3, 298), Hole(4), ConstantCoefficientLaw.Ideal);
        Assert.True(flow.IsChoked);
        Check($"air loss from a flat tyre, 4 mm, 314 to 94 kPa", "kg/s", 0.00924, flow.MassFlow.KilogramsPerSecond, Tolerance.Printed(5), Cengel, "example 12-5");
    }

    [Theory]
    [InlineData(400e3, 7.11, 0.005, "half a unit of the last printed digit")]
    [InlineData(700e3, 6.77, 0.02, "the book reads its isentropic table, 0.2 %")]
    public void Converging_nozzle_of_the_textbook(double back, double expected, double within, string reason)
    {
        // 1 MPa and 873 K at 150 m/s: stagnation 884.194 K and 1045.603 kPa with cp = 1005 J/(kg K), k = 1.4, R = 287.
        double T0 = 873 + 150 * 150 / (2 * 1005.0);
        double p0 = 1e6 * Math.Pow(T0 / 873, 3.5);
        VentHoles throat = Hole(Math.Sqrt(4 * 5000 / Math.PI));
        OrificeFlow flow = Orifice.Flow(Gas(287, 1.4, p0, T0), Gas(287, 1.4, back, T0), throat, ConstantCoefficientLaw.Ideal);
        Check($"nozzle of 50 cm2, 1046 to {back / 1e3:0} kPa", "kg/s", expected, flow.MassFlow.KilogramsPerSecond, Tolerance.FixedAmount(within, reason), Cengel, "example 12-4");
    }

    [Fact]
    public void Choked_coefficient_of_hot_gas()
    {
        OrificeFlow flow = Orifice.Flow(Gas(286, 1.4, 7e6, 2273), Gas(286, 1.4, 1e5, 2273), Hole(20), ConstantCoefficientLaw.Ideal);
        double ours = flow.MassFlow.KilogramsPerSecond * Math.Sqrt(2273) / (7e6 * Math.PI / 4 * 0.02 * 0.02);
        Check($"choked q sqrt(T0)/(p0 A), k 1.4, R 286", "SI", 0.0404, ours, Tolerance.FixedAmount(1e-4, "the printed 0.0404 is cut, not rounded, from 0.04049"),
            "R. T. Balmer, Modern Engineering Thermodynamics, ch. 16 (worked again in an open textbook companion, whose output was seen)", "example 16.12");
    }

    [Theory]
    [InlineData(0, 0.0036990460646834414, 3e-5, "the standard rounds the constant of C to four digits")]
    [InlineData(532e3, 0.004248358775943481, 6e-4, "the standard rounds its constant to 17.9")]
    public void Relief_valve_area(double back, double expected, double within, string reason)
    {
        double R = 8.31446261815324 / 0.051 * 0.90;
        var law = new ConstantCoefficientLaw { Coefficient = 0.975, Provenance = new Provenance { Source = "API 520", How = Evidence.SeenInSource } };
        double flux = law.MassFlux_kg_per_m2s(new OrificeConditions(670e3, 348, back, R, 1.11, 0.05, 0.001));
        Check($"relief area, 24270 kg/h, M 51, k 1.11, Z 0.9, 348 K, 670 kPa to {back / 1e3:0} kPa", "m2", expected, 24270 / 3600.0 / flux,
            Tolerance.Relative(within, reason), FluidLibrary + "API 520 part I", back == 0 ? "example 1, critical" : "example 2, subcritical");
    }

    [Fact]
    public void Factors_of_the_relief_valve_standard()
    {
        double cStar = ConstantCoefficientLaw.Ideal.MassFlux_kg_per_m2s(new OrificeConditions(1, 1, 0, 1, 1.35, 1, 0));
        Check($"API 520 C, k 1.35", "API unit", 0.02669419967057233, 0.03948 * cStar, Tolerance.ClosedForm, FluidLibrary + "API 520 part I", "C = 0.03948 C*");
        double psi = ConstantCoefficientLaw.Ideal.MassFlux_kg_per_m2s(new OrificeConditions(1, 1, 0.7, 1, 1.8, 1, 0));
        Check($"API 520 F2, k 1.8, r 0.7", "-", 0.8600724121105563, psi / Math.Sqrt(2 * 0.3), Tolerance.ClosedForm, FluidLibrary + "API 520 part I", "F2 = psi/sqrt(2 (1-r))");
    }

    [Theory]
    [InlineData(PressureTappings.Corner, 0.6000085121444034)]
    [InlineData(PressureTappings.DAndHalfD, 0.5988219225153976)]
    [InlineData(PressureTappings.Flange, 0.5990042535666878)]
    public void Plate_coefficient_by_tappings(PressureTappings taps, double expected) =>
        Check($"ISO 5167-2 C, {taps}, D 73.91 mm, d 22.2 mm, air", "-", expected,
            Plate(taps, 0.07391, 0.0222).DischargeCoefficient(4 * 0.124431876 / (Math.PI * 0.07391 * 1.85861753095e-5)), Tolerance.ClosedForm,
            FluidLibrary + "ISO 5167-2:2003", "equation 4");

    [Fact]
    public void Plate_coefficient_in_a_small_pipe() =>
        Check($"ISO 5167-2 C, flange, D 40 mm, d 20 mm: term of the small pipe", "-", 0.6070252961791677,
            Plate(PressureTappings.Flange, 0.04, 0.02).DischargeCoefficient(4 * 0.2 / (Math.PI * 0.04 * 1.85e-5)), Tolerance.ClosedForm,
            "ISO 5167-2:2003, evaluated apart; the factor of the small pipe is 0.011, as a public library computes and not as its text says (0.11)", "equation 4", Evidence.ComputedFromFormula);

    [Fact]
    public void Plate_expansibility_and_flow()
    {
        OrificePlateIso5167 plate = Plate(PressureTappings.DAndHalfD, 0.0739, 0.0222);
        Check($"ISO 5167-2 epsilon, beta 0.3004, p2/p1 0.99, kappa 1.4", "-", 0.9974739057343425, plate.Expansibility(0.99, 1.4), Tolerance.ClosedForm,
            FluidLibrary + "ISO 5167-2:2003", "equation 5");
        // The published flow takes C = 0.5988 and epsilon = 0.9975 as given; ours is scaled to them to test the flow equation alone.
        MeterReading r = plate.ReadGas(Pressure.FromPascals(1e5), Pressure.FromPascals(9.9e4), Density.FromKilogramsPerCubicMeter(1.1646),
            DynamicViscosity.FromPascalSeconds(1.85e-5), 1.4);
        double ours = r.MassFlow.KilogramsPerSecond * 0.5988 / r.DischargeCoefficient * 0.9975 / r.FlowFactor;
        Check($"ISO 5167 flow equation, 100 to 99 kPa, d 22.2 mm, C 0.5988, epsilon 0.9975", "kg/s", 0.01120390943807026, ours, Tolerance.ClosedForm,
            FluidLibrary + "ISO 5167-1:2003", "equation 1");
    }

    [Fact]
    public void Plate_in_a_water_pipe()
    {
        MeterReading r = Plate(PressureTappings.DAndHalfD, 0.07366, 0.05).ReadLiquid(
            Pressure.FromPascals(17e3), Density.FromKilogramsPerCubicMeter(999.1), DynamicViscosity.FromPascalSeconds(1.1e-3));
        Check($"water, 80 mm pipe, 50 mm bore, 17 kPa", "L/min", 478, r.MassFlow.KilogramsPerSecond / 999.1 * 60e3,
            Tolerance.Relative(0.005, "the book reads C from a chart; a published calculator gives 476.8"), "Crane Technical Paper 410, quoted in the documentation of an open-source fluid-mechanics library", "example 7-29 after its erratum");
    }

    [Theory]
    [InlineData(0.99)]
    [InlineData(0.7)]
    [InlineData(0.528281787717174)]
    public void Sharp_round_hole_lies_near_the_exact_plane_slit(double r) =>
        Check($"Perry's Cd against Chaplygin's slit, r {r:0.###}", "-", ChaplyginSlit.ContractionCoefficient(r, 1.4), SharpEdgedLaw.Coefficient(r),
            Tolerance.Relative(0.02, "a round hole contracts to 0.60, a slit to 0.611"), "Our own sum of the plane slit of S. A. Chaplygin 1904 (NACA TM 1063), of another shape; Perry's printed numbers were not seen", "comparison", Evidence.ComputedFromFormula);

    [Theory]
    [InlineData(0.95, 0.563, 0.788)]
    [InlineData(0.5, 0.563, 0.788)]
    public void Sharp_holes_lie_in_Weisbachs_range(double r, double low, double high) =>
        Check($"sharp round hole Cd, r {r}", "-", 0.5 * (low + high), SharpEdgedLaw.Coefficient(r), Tolerance.FixedAmount(0.5 * (high - low), "published range 0.563 to 0.788"),
            "Weisbach, quoted in Encyclopaedia Britannica, 11th ed. (1911), Hydraulics", "section 63");

    [Theory]
    [InlineData(0.9)]
    [InlineData(0.7)]
    public void Short_mouthpieces_lie_near_Weisbachs_range(double r) =>
        Check($"short cylindrical hole Cd, L/d 3, r {r}", "-", 0.825, ShortTubeLaw.Coefficient(r, 1.4, 3), Tolerance.Relative(0.05, "published range 0.81 to 0.84, length not stated; law good to 3 %"),
            "Weisbach, quoted in Encyclopaedia Britannica, 11th ed. (1911), Hydraulics", "section 63");

    [Fact]
    public void Sonic_conductance_of_a_nozzle_is_a_fifth_of_its_area() =>
        Check($"ISO 6358: area in mm2 over C in dm3/(s bar)", "mm2 s bar/dm3", 5.0, 1e-8 / SonicConductanceLaw.OfIdealNozzle_m3_per_sPa(Area.FromSquareMillimeters(1)),
            Tolerance.FixedAmount(0.05, "half a unit of the last printed digit"), "ISO 6358: S = 5.0 C", null, Evidence.FromMemory);

    [Fact]
    public void Pneumatic_restriction_of_a_worked_exercise()
    {
        var law = new SonicConductanceLaw
        {
            SonicConductance_m3_per_sPa = 1e-8,
            CriticalRatio = 0.35,
            SubsonicIndex = 0.5,
            ReferenceArea = Area.FromSquareMillimeters(1),
            Provenance = new Provenance { Source = "the exercise", How = Evidence.SeenInSource },
        };
        double R = SonicConductanceLaw.ReferencePressure_Pa / (SonicConductanceLaw.ReferenceDensity_kg_per_m3 * SonicConductanceLaw.ReferenceTemperature_K);
        double ours = 1e-6 * law.MassFlux_kg_per_m2s(new OrificeConditions(700e3, 293.15, 100e3, R, 1.4, 1e-3, 1e-3));
        Check($"ISO 6358 worked: C 1e-8 m3/(s Pa), b 0.35, 700 to 100 kPa, 293.15 K", "kg/s", 0.008295, ours, Tolerance.Printed(6),
            "worked exercise with its answer in the documentation of an open-source equation solver (ISO 6358 orifice); it confirms 1.185 kg/m3", "choked air supply");
    }

    [Theory]
    [InlineData(CriticalNozzleShape.Toroidal, 1e6, 0.99318)]
    [InlineData(CriticalNozzleShape.AccurateToroidal, 1e6, 0.995088)]
    [InlineData(CriticalNozzleShape.Cylindrical, 1e6, 0.988842)]
    public void Critical_nozzle_coefficient(CriticalNozzleShape shape, double re, double expected) =>
        Check($"ISO 9300 Cd', {shape}, Re {re:0.#e0}", "-", expected, new CriticalNozzle { ThroatDiameter = Length.FromMillimeters(10), Shape = shape }.DischargeCoefficient(re),
            Tolerance.Printed(6), "ISO 9300:2005, a - b Re^-n", "coefficients from memory", Evidence.FromMemory);

    [Fact]
    public void Critical_nozzle_of_air_with_the_real_gas_factor()
    {
        // C* = 0.686275054 of air at 293.15 K and 5 bar from the equation of state of Lemmon et al. 2000.
        MeterReading ideal = Nozzle().Read(Gas(287.05287, 1.4, 5e5, 293.15), Pressure.FromPascals(1e5), DynamicViscosity.FromPascalSeconds(1.82e-5));
        Check($"ISO 9300 C* of air, 293.15 K, 5 bar, against the ideal gas", "-", 0.686275054, ideal.FlowFactor, Tolerance.Relative(0.0023, "an ideal-gas C* is 0.22 % low at 5 bar"),
            "E. W. Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, isentropic critical flow at 20 digits", null, Evidence.ComputedFromFormula);
    }

    private static CriticalNozzle Nozzle() => new() { ThroatDiameter = Length.FromMillimeters(10), Shape = CriticalNozzleShape.Toroidal };

    private static OrificePlateIso5167 Plate(PressureTappings taps, double D, double d) => new()
    {
        PipeDiameter = Length.FromMeters(D),
        Bore = Length.FromMeters(d),
        Tappings = taps,
    };

    private static VentHoles Hole(double mm) => new() { Diameter = Length.FromMillimeters(mm), WallThickness = Length.FromMillimeters(1), Count = 1 };

    private static GasState Gas(double R, double gamma, double p, double T) => new()
    {
        Gas = new PerfectGas
        {
            Name = "gas of the example",
            GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(R),
            HeatCapacityRatio = gamma,
            Provenance = new Provenance { Source = "the example", How = Evidence.SeenInSource },
        },
        Pressure = Pressure.FromPascals(p),
        Temperature = Temperature.FromKelvins(T),
    };

    private static void Check(
        FormattableString quantity, string unit, double expected, double ours, Tolerance within, string source, string? locator, Evidence how = Evidence.SeenInSource) => new OutsideCheck
        {
            Floor = "Discharge",
            Quantity = quantity.ToString(CultureInfo.InvariantCulture),
            Unit = unit,
            Expected = expected,
            Ours = ours,
            Within = within,
            Provenance = new Provenance { Source = source, Locator = locator, How = how },
        }.Verify();
}
