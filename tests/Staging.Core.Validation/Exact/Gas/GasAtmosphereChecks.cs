using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Validation.Exact.Gas;

public class GasAtmosphereChecks
{
    private static readonly Provenance Us1976 = new()
    {
        Source = "US Standard Atmosphere 1976, defining equations, evaluated in 30-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance Cipm2007 = new()
    {
        Source = "Picard, Davis, Glaeser & Fujii, Metrologia 45 (2008) 149-155 (CIPM-2007), evaluated independently",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Tolerance TenDigits = Tolerance.Relative(6e-10, "closed form, reference given to ten digits");

    [Theory]
    [InlineData(500, 284.9002556, 95461.2895, 1.167272512, 338.3697549)]
    [InlineData(1000, 281.6510224, 89876.28519, 1.111658985, 336.4347005)]
    [InlineData(3000, 268.6591985, 70121.16224, 0.9092539408, 328.583669)]
    [InlineData(5000, 255.6755432, 54048.28615, 0.7364284208, 320.5455197)]
    [InlineData(9000, 229.732708, 30800.69526, 0.4670630262, 303.8481058)]
    public void Lowest_layer_by_geometric_altitude(double z, double T, double p, double rho, double a)
    {
        AirSample air = StandardAtmosphere.Us1976.At(z);
        Check($"US1976 T at {z} m, ten digits", "K", T, air.Temperature_K, TenDigits, Us1976);
        Check($"US1976 p at {z} m, ten digits", "Pa", p, air.Pressure_Pa, TenDigits, Us1976);
        Check($"US1976 density at {z} m, ten digits", "kg/m3", rho, air.Density_kg_per_m3, TenDigits, Us1976);
        Check($"US1976 speed of sound at {z} m, ten digits", "m/s", a, air.SoundSpeed_m_per_s, TenDigits, Us1976);
    }

    [Theory]
    [InlineData(11000, 22632.06397346293, 216.65)]
    [InlineData(20000, 5474.88866967778, 216.65)]
    [InlineData(32000, 868.0186847552273, 228.65)]
    public void Base_pressures_to_round_off(double H, double p, double T)
    {
        double z = HydrostaticProfile.EarthRadius * H / (HydrostaticProfile.EarthRadius - H);
        AirSample air = StandardAtmosphere.Us1976.At(z);
        Check($"US1976 p at {H} m geopotential, sixteen digits", "Pa", p, air.Pressure_Pa, Tolerance.Relative(2e-14, "round-off of two powers"), Us1976);
        Check($"US1976 T at {H} m geopotential, sixteen digits", "K", T, air.Temperature_K, Tolerance.Relative(2e-14, "round-off"), Us1976);
    }

    [Theory]
    [InlineData(0, 101325, 0, 1.293048698)]
    [InlineData(15, 101325, 0.5, 1.221631222)]
    [InlineData(20, 101325, 0, 1.204557342)]
    [InlineData(20, 101325, 0.5, 1.199313895)]
    [InlineData(20, 101325, 1, 1.194087244)]
    [InlineData(25, 101325, 1, 1.17035738)]
    [InlineData(30, 101325, 1, 1.146352764)]
    [InlineData(35, 101325, 0.5, 1.133772072)]
    [InlineData(20, 90000, 0.5, 1.064638381)]
    [InlineData(20, 100000, 1, 1.178329853)]
    public void Moist_air(double t, double p, double h, double rho)
    {
        Pressure pressure = Pressure.FromPascals(p);
        Temperature temperature = Temperature.FromKelvins(273.15 + t);
        string where = $"{t} C, {p} Pa, humidity {h}";
        Check($"moist air density, {where}", "kg/m3", rho, MoistAir.DensityAt(pressure, temperature, h).KilogramsPerCubicMeter, TenDigits, Cipm2007);

        AirSample ground = new SiteAtmosphere(new SiteConditions
        {
            Elevation = Length.Zero,
            Pressure = pressure,
            Temperature = temperature,
            RelativeHumidity = h,
        }).At(0);
        Check($"site air density at the ground, {where}", "kg/m3", rho, ground.Density_kg_per_m3, Tolerance.Relative(7e-4, "an ideal mixture leaves out the compressibility factor, 0.9994 and nearer to 1, and takes 28.9644 for 28.96546 g/mol"), Cipm2007);
    }

    private static void Check(string quantity, string unit, double expected, double ours, Tolerance within, Provenance source) =>
        OutsideCheck.Verify("Gases", quantity, unit, expected, ours, within, source);
}
