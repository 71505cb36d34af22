using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gases;

public class GasTransportTests
{
    [Fact]
    public void Prandtl_number_of_air_at_15_C_is_near_seven_tenths() =>
        Assert.Equal(0.71, GasTransport.AirPrandtl(Temperature.FromKelvins(288.15)), 0.005);

    [Fact]
    public void Product_viscosity_is_within_its_stated_error_of_nitrogen_and_carbon_dioxide()
    {
        // White (2006): nitrogen 1.663e-5, S 107; carbon dioxide 1.370e-5, S 222 (both at 273 K).
        foreach (double T in new[] { 300.0, 800, 1300, 1900, 2400 })
        {
            double ours = GasTransport.ProductViscosity(Temperature.FromKelvins(T)).PascalSeconds;
            Assert.Equal(1, Sutherland(1.663e-5, 107, T) / ours, 0.15);
            Assert.Equal(1, Sutherland(1.370e-5, 222, T) / ours, 0.15);
        }

        static double Sutherland(double mu0, double S, double T) => mu0 * Math.Pow(T / 273, 1.5) * (273 + S) / (T + S);
    }

    [Fact]
    public void Eucken_relation_is_two_thirds_for_a_monatomic_gas() =>
        Assert.Equal(2.0 / 3, GasTransport.EuckenPrandtl(5.0 / 3), 0.003);

    [Fact]
    public void Product_conductivity_follows_from_viscosity_heat_capacity_and_Prandtl_number()
    {
        PerfectGas gas = BlackPowderProducts.Nominal.Gas;
        Temperature T = BlackPowderProducts.NominalTemperature;
        double k = GasTransport.ProductConductivity(gas, T).WattsPerMeterKelvin;
        double Pr = GasTransport.ProductViscosity(T).PascalSeconds * gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin / k;
        Assert.Equal(GasTransport.EuckenPrandtl(1.21), Pr, 1e-12);
        Assert.InRange(k, 0.08, 0.15);
    }

    [Theory]
    [InlineData(300, 0)]
    [InlineData(600, -0.04)]
    [InlineData(1000, -0.12)]
    [InlineData(2000, -0.20)]
    public void The_constant_heat_capacity_makes_the_Prandtl_number_of_air_low_by_what_it_says(double T, double stated)
    {
        // Ideal-gas cp of air in J/(kg K), E. W. Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, evaluated from its equation.
        double cp = T switch { 300 => 1004.776, 600 => 1050.884, 1000 => 1140.905, _ => 1250.135 };
        Temperature at = Temperature.FromKelvins(T);
        double varying = GasTransport.AirViscosity(at).PascalSeconds * cp / GasTransport.AirConductivity(at).WattsPerMeterKelvin;
        Assert.Equal(stated, GasTransport.AirPrandtl(at) / varying - 1, 0.005);
    }

    [Fact]
    public void Temperatures_outside_the_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => GasTransport.AirViscosity(Temperature.FromKelvins(50)));
        Assert.Throws<ArgumentOutOfRangeException>(() => GasTransport.ProductViscosity(Temperature.FromKelvins(200)));
    }
}
