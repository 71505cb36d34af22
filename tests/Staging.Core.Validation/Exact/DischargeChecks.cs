using System.Globalization;
using Staging.Core.Discharge;

namespace Staging.Core.Validation.Exact;

/// <summary>Values that follow from a published equation; computed independently of this library at 25 digits or more.</summary>
public class DischargeChecks
{
    private static readonly Tolerance EightDigits = Tolerance.Printed(8);
    private static readonly Tolerance TenDigits = Tolerance.Relative(1e-10, "closed form or root, twelve digits printed");

    [Theory]
    [InlineData(0.99, 1.4, 0.61272706)]
    [InlineData(0.9, 1.4, 0.62950509)]
    [InlineData(0.8, 1.4, 0.65168014)]
    [InlineData(0.7, 1.4, 0.67891176)]
    [InlineData(0.6, 1.4, 0.71338775)]
    [InlineData(0.56, 1.4, 0.72996331)]
    [InlineData(0.528281787717174, 1.4, 0.74455997)]
    [InlineData(0.95, 1.25, 0.62093157)]
    [InlineData(0.75, 1.25, 0.67117587)]
    [InlineData(0.554928957306644, 1.25, 0.74779899)]
    public void Plane_jet_contracts_as_Chaplygin_found(double r, double gamma, double expected) =>
        Check($"Chaplygin slit Cc, r {r:0.####}, gamma {gamma}", "-", expected, ChaplyginSlit.ContractionCoefficient(r, gamma), EightDigits,
            "S. A. Chaplygin, On gas jets (1904; NACA TM 1063), hodograph series summed at high precision");

    [Fact]
    public void Incompressible_plane_jet_is_Kirchhoffs() =>
        Check("Chaplygin slit Cc, r = 1", "-", Math.PI / (Math.PI + 2), ChaplyginSlit.ContractionCoefficient(1, 1.4), TenDigits,
            "G. Kirchhoff 1869, pi/(pi + 2)");

    [Theory]
    [InlineData(0.9, 0.60, 1.4, 0.61769538)]
    [InlineData(0.7, 0.60, 1.4, 0.66627253)]
    [InlineData(0.5, 0.60, 1.4, 0.74537919)]
    [InlineData(0.3, 0.60, 1.4, 0.81194204)]
    [InlineData(0, 0.60, 1.4, 0.86570449)]
    [InlineData(0.95, 0.611, 1.4, 0.61918983)]
    [InlineData(0.8, 0.611, 1.25, 0.654226)]
    [InlineData(0.4, 0.611, 1.25, 0.80550533)]
    public void Sharp_edge_follows_the_momentum_equation(double r, double ci, double gamma, double expected) =>
        Check($"Jobson Cc, r {r}, Ci {ci}, gamma {gamma}", "-", expected, new JobsonLaw { IncompressibleContraction = ci }.Coefficient(r, gamma), EightDigits,
            "D. A. Jobson, Proc. Inst. Mech. Engrs 169 (1955) 767-776, momentum equation derived again; its abstract was seen, its tables were not");

    [Theory]
    [InlineData(300e3, 2000, 34.75e-3, 1.25, 2e-3, 8.96571845800187e-4)]
    [InlineData(150e3, 1500, 34.75e-3, 1.25, 4e-3, 1.9970014390706e-3)]
    [InlineData(120e3, 288.15, 28.9644e-3, 1.4, 3e-3, 1.50203628259737e-3)]
    public void Ideal_vent_passes_the_isentropic_flow(double p0, double T0, double molarMass, double gamma, double d, double expected) =>
        Check($"ideal vent, {p0 / 1e3:0} kPa, {T0} K, gamma {gamma}, {d * 1e3:0} mm to 101.325 kPa", "kg/s", expected,
            Math.PI / 4 * d * d * ConstantCoefficientLaw.Ideal.MassFlux_kg_per_m2s(new OrificeConditions(p0, T0, 101325, 8.31446261815324 / molarMass, gamma, d, 1e-3)),
            Tolerance.ClosedForm, "NACA Report 1135 (1953), isentropic mass flow");

    [Theory]
    [InlineData(1.4, 1, 1, 0.95, 0.975330130609, 0.219170257269)]
    [InlineData(1.4, 1, 1, 0.5, 0.812766342003, 0.547163763647)]
    [InlineData(1.4, 1, 1, 0.1, 0.807458329555, 0.55289211796)]
    [InlineData(1.4, 1, 0.5, 0.8, 0.966044683561, 0.255812502766)]
    [InlineData(1.4, 0.5, 1, 0.9, 0.920284730284, 0.190928622715)]
    [InlineData(1.4, 0.5, 1, 0.5, 0.615182955002, 0.33660582099)]
    [InlineData(1.4, 0.5, 1, 0.3, 0.50486486643, 0.342365728189)]
    [InlineData(1.4, 2, 1, 0.7, 0.954387694748, 0.589123296899)]
    public void Two_holes_in_series_share_the_pressure(double gamma, double a1, double a2, double r, double middle, double flow)
    {
        const double p1 = 2e5;
        const double T = 400;
        const double R = 287;
        SeriesMember[] members = [Member(a1), Member(a2)];
        double[] between = new double[1];
        double ours = SeriesKernel.MassFlow(members, new OrificeSide(p1, T, new(R, gamma)), r * p1, between);
        string source = "NACA Report 1135 (1953), isentropic flow through both holes, intermediate pressure solved at high precision";
        string name = $"series A1:A2 {a1}:{a2}, p3/p1 {r}, gamma {gamma}: ";
        Check(name + "pm/p1", "-", middle, between[0] / p1, TenDigits, source);
        Check(name + "q sqrt(R T0)/p1", "area", flow, ours * Math.Sqrt(R * T) / p1, TenDigits, source);
    }

    [Theory]
    [InlineData(PressureTappings.Corner, 0.1, 0.5, 5e3, 0.627573497595)]
    [InlineData(PressureTappings.Corner, 0.1, 0.5, 1e6, 0.60377708906)]
    [InlineData(PressureTappings.Corner, 0.025, 0.2, 1e5, 0.609112579609)]
    [InlineData(PressureTappings.Corner, 0.1, 0.75, 1e5, 0.605962850462)]
    public void Plate_coefficient_on_the_grid(PressureTappings taps, double D, double beta, double re, double expected) =>
        Check($"ISO 5167-2 C, {taps}, D {D} m, beta {beta}, Re {re:0.#e0}", "-", expected, Plate(taps, D, beta * D).DischargeCoefficient(re), TenDigits,
            "ISO 5167-2:2003, equation 4");

    [Theory]
    [InlineData(0, 0.99, 1.2, 0.997072552969)]
    [InlineData(0.5, 0.95, 1.25, 0.985099036285)]
    [InlineData(0.5, 0.8, 1.4, 0.945392905973)]
    public void Plate_expansibility_on_the_grid(double beta, double r, double kappa, double expected)
    {
        // The library wants a bore; the grid's beta = 0 is approached to 1e-7 by the smallest it accepts.
        double b = Math.Max(beta, 0.02);
        Check($"ISO 5167-2 epsilon, beta {beta}, p2/p1 {r}, kappa {kappa}", "-", expected, Plate(PressureTappings.Corner, 0.1, b * 0.1).Expansibility(r, kappa),
            Tolerance.Relative(1e-9, "twelve digits printed; beta 0.02 for 0 moves it by 3e-10"), "ISO 5167-2:2003, equation 5");
    }

    [Theory]
    [InlineData(1e-8, 0.35, 700e3, 293.15, 100e3, 0.008295)]
    [InlineData(1e-8, 0.35, 200e3, 293.15, 100e3, 0.00230603017065)]
    [InlineData(1e-8, 0.35, 200e3, 288.15, 150e3, 0.00188423592807)]
    [InlineData(1e-8, 0.35, 120e3, 288.15, 101325, 0.000931205945344)]
    [InlineData(1e-9, 0.3, 120e3, 288.15, 101325, 9.01680161553e-5)]
    public void Pneumatic_component_flows_as_its_standard_says(double C, double b, double p1, double T1, double p2, double expected)
    {
        var law = new SonicConductanceLaw
        {
            SonicConductance_m3_per_sPa = C,
            CriticalRatio = b,
            SubsonicIndex = 0.5,
            ReferenceArea = UnitsNet.Area.FromSquareMillimeters(1),
            Provenance = new Provenance { Source = "invented component", How = Evidence.Invented },
        };
        double R = SonicConductanceLaw.ReferencePressure_Pa / (SonicConductanceLaw.ReferenceDensity_kg_per_m3 * SonicConductanceLaw.ReferenceTemperature_K);
        double ours = 1e-6 * law.MassFlux_kg_per_m2s(new OrificeConditions(p1, T1, p2, R, 1.4, 1e-3, 1e-3));
        Check($"ISO 6358 flow, C {C}, b {b}, {p1 / 1e3:0} to {p2 / 1e3:0.###} kPa, {T1} K", "kg/s", expected, ours, TenDigits,
            "ISO 6358 with rho0 = 1.185 kg/m3, T0 = 293.15 K; formula seen in two reference pages that cite the standard");
    }

    [Theory]
    [InlineData(2, 1e4, 0.802846636469)]
    [InlineData(10, 2e4, 0.729283483891)]
    public void Long_hole_loses_to_friction(double length, double re, double expected) =>
        Check($"long hole Cd, L/d {length}, Re {re:0}", "-", expected, ShortTubeLaw.IncompressibleCoefficient(length, re), TenDigits,
            "A. Lichtarowicz, R. K. Duggins and E. Markland, J. Mech. Eng. Sci. 7 (1965) 210-219; equation from memory", Evidence.FromMemory);

    private static SeriesMember Member(double area) => new(ConstantCoefficientLaw.Ideal, new OrificeSize(area, 1e-3, 1e-3));

    private static OrificePlateIso5167 Plate(PressureTappings taps, double D, double d) => new()
    {
        PipeDiameter = UnitsNet.Length.FromMeters(D),
        Bore = UnitsNet.Length.FromMeters(d),
        Tappings = taps,
    };

    private static void Check(FormattableString quantity, string unit, double expected, double ours, Tolerance within, string source,
        Evidence how = Evidence.ComputedFromFormula) =>
        Check(quantity.ToString(CultureInfo.InvariantCulture), unit, expected, ours, within, source, how);

    private static void Check(string quantity, string unit, double expected, double ours, Tolerance within, string source,
        Evidence how = Evidence.ComputedFromFormula) => new OutsideCheck
        {
            Floor = "Discharge",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Ours = ours,
            Within = within,
            Provenance = new Provenance { Source = source, How = how },
        }.Verify();
}
