using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Validation.GapCheck;

namespace Staging.Core.Validation.Published;

/// <summary>The stress in a round plate and the speed of a burning face, as handbooks give them.</summary>
public class BurnThroughChecks
{
    private static readonly Provenance DataHandbook = new()
    {
        Source = "Mechanical Engineer's Data Handbook, loaded flat plates, read on a public copy: maximum stress 3 p r^2/(4 t^2) clamped (at the edge), "
            + "1.238 p r^2/t^2 simply supported (at the centre, nu 0.3)",
        Locator = "page 53",
        How = Evidence.SeenInSource,
    };

    private static readonly Provenance Timoshenko = new()
    {
        Source = "S. Timoshenko, Strength of Materials, part II, 3rd ed. (1956), a clamped plate of r 40 in, t 1 in under 6 psi: 7200 psi; "
            + "its numbers seen where a worked example quotes them",
        Locator = "pages 96 to 103",
        How = Evidence.SeenInSource,
    };

    private static readonly Provenance Formula = new()
    {
        Source = "S. P. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. (1959), articles 16 and 17: 6 M/t^2 of M = p r^2/8 at the "
            + "clamped edge and (3 + nu) p r^2/16 in the simply supported middle, nu 0.3; from memory, evaluated outside",
        How = Evidence.FromMemory,
    };

    private static readonly Provenance Laws = new()
    {
        Source = "r = 1.21 p^0.24 cm/s (A. A. Shidlovskiy) and 1.72 p^0.164 cm/s (A. F. Belyaev and S. F. Maznev, 1960), p in atm; the laws from memory, "
            + "evaluated outside",
        How = Evidence.FromMemory,
    };

    [Theory]
    [InlineData(0.75, 0.75)]
    [InlineData(1.2375, 1.238)]
    public void A_web_breaks_at_the_stress_of_the_handbook(double k, double printed)
    {
        (double pressure, double radius, double thickness, double strength) = Web(k);
        Verify($"stress over p r^2/t^2 in a breaking web, k {k}", "-", printed, strength / (pressure * radius * radius / (thickness * thickness)),
            Tolerance.Printed(3), DataHandbook);
    }

    [Theory]
    [InlineData(0.75, 0.75)]
    [InlineData(1.2375, 6 * 3.3 / 16)]
    public void A_web_breaks_at_the_stress_of_plate_theory(double k, double factor)
    {
        (double pressure, double radius, double thickness, double strength) = Web(k);
        Verify($"bending stress where a web breaks, k {k}", "Pa", factor * pressure * radius * radius / (thickness * thickness), strength,
            Tolerance.Relative(1e-12, "the same closed form, the other way round"), Formula);
    }

    [Fact]
    public void The_clamped_plate_of_a_textbook_just_breaks()
    {
        // In inches and psi: a web as strong as the stress in the example breaks as thick as its plate.
        var web = new WebRupture(40, 1e9, 6, 7200, 0.75);
        Verify("thickness at which a clamped plate of 40 in under 6 psi reaches 7200 psi", "in", 1, web.Edge, Tolerance.Relative(1e-12, "exact numbers"), Timoshenko);
    }

    [Theory]
    [InlineData(2, 14.2900112033, 19.2706944841)]
    [InlineData(8, 19.9309026179, 24.1899630385)]
    [InlineData(30, 27.3712399205, 30.0452853275)]
    public void Burning_rates_of_the_two_laws(double atmospheres, double shidlovskiy, double belyaev)
    {
        Pressure p = Pressure.FromAtmospheres(atmospheres);
        Tolerance within = Tolerance.Relative(1e-9, "closed form, reference given to ten digits or more");
        Verify($"burning rate at {atmospheres} atm, n 0.24", "mm/s", shidlovskiy, BurnRateLaw.Shidlovskiy.At(p).MillimetersPerSecond, within, Laws);
        Verify($"burning rate at {atmospheres} atm, n 0.164", "mm/s", belyaev, BurnRateLaw.BelyaevMaznev.At(p).MillimetersPerSecond, within, Laws);
    }

    /// <summary>Pressure, radius, thickness at the edge and strength of a broken web, in SI units.</summary>
    private static (double Pressure, double Radius, double Thickness, double Strength) Web(double k)
    {
        BurnThroughEstimate e = new GapSource.EndBurner
        {
            Products = BlackPowderProducts.Nominal,
            FlameTemperature = Temperature.FromKelvins(1890),
            GrainDiameter = Length.FromMillimeters(12),
            BurntLength = Length.FromMillimeters(60),
            NozzleThroatDiameter = Length.FromMillimeters(3),
            Density = Density.FromKilogramsPerCubicMeter(1700),
            Rate = BurnRateLaw.Shidlovskiy,
            Strength = Pressure.FromMegapascals(5),
            PlateFactor = k,
            FreshFaceDelay = Duration.FromMilliseconds(20),
            OpeningCoefficient = 0.8,
            Provenance = new Provenance { Source = "Given with the check", How = Evidence.Invented },
        }.BurnThrough();
        return (e.ChamberPressure.Pascals - 101325, 0.5 * e.OpeningDiameter.Meters, e.WebThickness.Meters, 5e6);
    }
}
