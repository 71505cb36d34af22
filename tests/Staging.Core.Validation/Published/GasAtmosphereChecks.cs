using Staging.Core.Gases;

namespace Staging.Core.Validation.Published;

public class GasAtmosphereChecks
{
    private static readonly Provenance Table = new()
    {
        Source = "US Standard Atmosphere 1976 by geometric altitude, five-digit table of a public archive",
        How = Evidence.SeenInSource,
    };

    private static readonly Provenance Bases = new()
    {
        Source = "US Standard Atmosphere 1976, base pressures of the layers as quoted in several public archives",
        How = Evidence.SeenInSource,
    };

    [Theory]
    [InlineData(-2000, 301.15, 127780, 1.4782, 347.89)]
    [InlineData(0, 288.15, 101320, 1.225, 340.29)]
    [InlineData(2000, 275.15, 79501, 1.0066, 332.53)]
    [InlineData(4000, 262.17, 61660, 0.81935, 324.59)]
    [InlineData(6000, 249.19, 47218, 0.66011, 316.45)]
    [InlineData(8000, 236.22, 35652, 0.52579, 308.11)]
    [InlineData(10000, 223.25, 26500, 0.41351, 299.53)]
    [InlineData(12000, 216.65, 19399, 0.31194, 295.07)]
    [InlineData(16000, 216.65, 10353, 0.16647, 295.07)]
    [InlineData(20000, 216.65, 5529.3, 0.08891, 295.07)]
    [InlineData(24000, 220.56, 2971.7, 0.046938, 297.72)]
    [InlineData(28000, 224.53, 1616.2, 0.025076, 300.39)]
    [InlineData(32000, 228.49, 889.06, 0.013555, 303.02)]
    public void Printed_table(double z, double T, double p, double rho, double a)
    {
        AirSample air = StandardAtmosphere.Us1976.At(z);
        Check($"T at {z} m", "K", T, air.Temperature_K, Printed(T), Table);
        Check($"p at {z} m", "Pa", p, air.Pressure_Pa, Printed(p), Table);
        Check($"density at {z} m", "kg/m3", rho, air.Density_kg_per_m3, Printed(rho), Table);
        Check($"speed of sound at {z} m", "m/s", a, air.SoundSpeed_m_per_s, Printed(a), Table);
    }

    [Theory]
    [InlineData(47_000, 110.9063, 270.65, 4)]
    [InlineData(51_000, 66.93887, 270.65, 5)]
    [InlineData(71_000, 3.956420, 214.65, 6)]
    public void Base_pressures_of_the_upper_layers(double H, double p, double T, int decimals)
    {
        double z = HydrostaticProfile.EarthRadius * H / (HydrostaticProfile.EarthRadius - H);
        AirSample air = StandardAtmosphere.Us1976.At(z);
        Check($"p at {H} m geopotential", "Pa", p, air.Pressure_Pa, Tolerance.Printed(decimals), Bases);
        Check($"T at {H} m geopotential", "K", T, air.Temperature_K, Tolerance.Printed(2), Bases);
    }

    /// <summary>The table prints five significant digits.</summary>
    private static Tolerance Printed(double value) => Tolerance.Printed(4 - (int)Math.Floor(Math.Log10(value)));

    private static void Check(string quantity, string unit, double expected, double ours, Tolerance within, Provenance source) =>
        OutsideCheck.Verify("Gases", $"US1976 {quantity}", unit, expected, ours, within, source);
}
