using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Validation.GapCheck;

namespace Staging.Core.Validation.Exact;

/// <summary>Chamber, web and ring of an end burner against closed forms evaluated outside.</summary>
public class BurnThroughChecks
{
    private static readonly Provenance Mensuration = new()
    {
        Source = "Cap of a sphere: area 2 pi r h, volume pi h^2 (3 r - h)/3, as in any table of solids; evaluated outside",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance SuttonBiblarz = new()
    {
        Source = "G. P. Sutton and O. Biblarz, Rocket Propulsion Elements, 7th ed. (2001), p = (K a rho c*)^(1/(1-n)) with K = A_b/A_t and a in SI units; "
            + "equations from memory, evaluated outside",
        Locator = "chapters 3 and 11",
        How = Evidence.FromMemory,
    };

    private static readonly Tolerance Given = Tolerance.Relative(1e-9, "closed form, reference given to ten digits or more");

    [Theory]
    [InlineData(false, 3.5, 254939.2791349, 15.09934833372)]
    [InlineData(false, 2.6, 557390.5978266, 18.21762242048)]
    [InlineData(true, 3.5, 357038.1957225, 21.14638475464)]
    [InlineData(true, 2.6, 727032.2329256, 23.76214948476)]
    public void Pressure_of_an_end_burner(bool belyaev, double throat, double pressure, double rate)
    {
        // 75/15/10 powder: f R 151.809 J/(kg K), gamma 1.141034, 1890 K, c* 841.124 m/s; 1700 kg/m3, 12 mm, a spherical face of 45 mm.
        GapSource.EndBurner motor = Motor(throat, belyaev ? BurnRateLaw.BelyaevMaznev : BurnRateLaw.Shidlovskiy);
        BurnThroughEstimate e = motor.BurnThrough();
        string what = $"12 mm end burner, throat {throat} mm, {(belyaev ? "17.2 mm/s, n 0.164" : "12.1 mm/s, n 0.24")}";
        Verify($"chamber pressure of a {what}", "Pa", pressure, e.ChamberPressure.Pascals, Given, SuttonBiblarz);
        Verify($"burning rate of a {what}", "mm/s", rate, e.BurningRate.MillimetersPerSecond, Given, SuttonBiblarz);
    }

    [Fact]
    public void Characteristic_velocity() =>
        Verify("c* of powder gas with particles, f R 151.809, gamma 1.141034, 1890 K", "m/s", 841.124010195367,
            ChamberBalance.CharacteristicVelocity(BlackPowderProducts.Nominal.Equivalent().Constants, 1890), Given, SuttonBiblarz);

    [Theory]
    [InlineData(0.045, 0.006)]
    [InlineData(0.02, 0.006)]
    [InlineData(0.0061, 0.006)]
    public void Cap_of_a_sphere(double sphere, double wall)
    {
        double h = sphere - Math.Sqrt(sphere * sphere - wall * wall), cap = Math.PI * h * h * (3 * sphere - h) / 3;
        Verify($"burning face, sphere of {sphere * 1e3} mm in a bore of {2e3 * wall} mm", "m2", 2 * Math.PI * sphere * h, ChamberBalance.Face(sphere, wall), Given, Mensuration);
        Verify($"volume behind a sphere of {sphere * 1e3} mm in a bore of {2e3 * wall} mm", "m3", Math.PI * wall * wall * (sphere - h) + cap, ChamberBalance.Volume(sphere, wall), Given, Mensuration);
        Verify($"ring left when a sphere of {sphere * 1e3} mm touches the face of a bore of {2e3 * wall} mm", "m3", Math.PI * wall * wall * h - cap,
            new GrowingHole(wall, sphere, sphere, 0).Volume, Given, Mensuration);
    }

    private static GapSource.EndBurner Motor(double throat, BurnRateLaw law) => new()
    {
        Products = BlackPowderProducts.Nominal,
        FlameTemperature = Temperature.FromKelvins(1890),
        GrainDiameter = Length.FromMillimeters(12),
        BurntLength = Length.FromMillimeters(45),
        NozzleThroatDiameter = Length.FromMillimeters(throat),
        Density = Density.FromKilogramsPerCubicMeter(1700),
        Rate = law,
        Strength = Pressure.FromMegapascals(4),
        FreshFaceDelay = Duration.FromMilliseconds(20),
        OpeningCoefficient = 0.8,
        Provenance = new Provenance { Source = "Given with the check", How = Evidence.Invented },
    };
}
