using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gases;

public class MixtureTests
{
    private static readonly Provenance Invented = new() { Source = "invented for a test", How = Evidence.Invented };

    private static readonly PerfectGas Light = PerfectGas.FromMolarMass("light", MolarMass.FromGramsPerMole(4), 5.0 / 3, Invented);
    private static readonly PerfectGas Heavy = PerfectGas.FromMolarMass("heavy", MolarMass.FromGramsPerMole(44), 1.3, Invented);

    [Theory]
    [InlineData(1.66)]
    [InlineData(831)]
    public void A_molar_mass_outside_its_range_is_refused_by_its_own_name(double grams) =>
        Assert.Equal("molarMass", Assert.Throws<ArgumentOutOfRangeException>(() => PerfectGas.FromMolarMass("gas", MolarMass.FromGramsPerMole(grams), 1.4, Invented)).ParamName);

    [Theory]
    [InlineData(1.671)]
    [InlineData(830)]
    public void A_molar_mass_within_its_range_makes_a_gas(double grams) =>
        Assert.InRange(PerfectGas.FromMolarMass("gas", MolarMass.FromGramsPerMole(grams), 1.4, Invented).GasConstant.JoulesPerKilogramKelvin, 10, 5000);

    [Fact]
    public void One_gas_alone_stays_itself()
    {
        PerfectGas one = Mixed((Light, 1)).Equivalent();
        Assert.Equal(Light.GasConstant.JoulesPerKilogramKelvin, one.GasConstant.JoulesPerKilogramKelvin, 1e-12);
        Assert.Equal(5.0 / 3, one.HeatCapacityRatio, 1e-12);
    }

    [Theory]
    [InlineData(5.0 / 3)]
    [InlineData(1.01)]
    public void A_gas_at_an_end_of_the_range_of_gamma_is_not_refused_by_round_off(double gamma)
    {
        for (double grams = 4; grams < 200; grams += 0.7)
        {
            var gas = PerfectGas.FromMolarMass("gas", MolarMass.FromGramsPerMole(grams), gamma, Invented);
            var other = PerfectGas.FromMolarMass("other", MolarMass.FromGramsPerMole(1.3 * grams), gamma, Invented);
            var alone = new DustyGas
            {
                Name = "without particles",
                Gas = gas,
                GasMassFraction = 1,
                ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1000),
                Provenance = Invented,
            };
            Assert.Equal(gamma, alone.Equivalent().HeatCapacityRatio);
            Assert.Equal(gamma, Mixed((gas, 0.3), (other, 0.7)).Equivalent().HeatCapacityRatio);
        }
    }

    [Fact]
    public void Molar_mass_and_gamma_follow_from_mole_fractions_too()
    {
        // By mole: M = sum x M, gamma = 1 + 1/sum(x/(gamma - 1)).
        const double y = 0.2;
        double n = y / 4 + (1 - y) / 44;
        double x = y / 4 / n;
        PerfectGas mixture = Mixed((Light, y), (Heavy, 1 - y)).Equivalent();
        Assert.Equal(PerfectGas.UniversalGasConstant * n * 1000, mixture.GasConstant.JoulesPerKilogramKelvin, 1e-9);
        Assert.Equal(1 + 1 / (x * 1.5 + (1 - x) / 0.3), mixture.HeatCapacityRatio, 1e-12);
    }

    [Fact]
    public void Fractions_that_do_not_add_up_are_a_finding_and_refused()
    {
        GasMixture short90 = Mixed((Light, 0.2), (Heavy, 0.7));
        Assert.Equal("GAS002", Assert.Single(short90.Check()).Code);
        var refusal = Assert.Throws<InvalidModelException>(() => short90.Equivalent());
        Assert.Contains("add up to 0.9", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gas_without_particles_stays_itself()
    {
        PerfectGas clean = Dusty(1, 1000).Equivalent();
        Assert.Equal(Heavy.GasConstant.JoulesPerKilogramKelvin, clean.GasConstant.JoulesPerKilogramKelvin, 1e-12);
        Assert.Equal(1.3, clean.HeatCapacityRatio, 1e-12);
    }

    [Fact]
    public void Particles_bring_heat_capacity_but_no_pressure()
    {
        const double f = 0.6, c_s = 1000;
        PerfectGas dusty = Dusty(f, c_s).Equivalent();
        double R = f * Heavy.GasConstant.JoulesPerKilogramKelvin;
        Assert.Equal(R, dusty.GasConstant.JoulesPerKilogramKelvin, 1e-10);
        double cv = f * Heavy.HeatCapacityAtConstantVolume.JoulesPerKilogramKelvin + (1 - f) * c_s;
        Assert.Equal(cv, dusty.HeatCapacityAtConstantVolume.JoulesPerKilogramKelvin, 1e-9);
    }

    [Fact]
    public void A_load_too_heavy_for_a_perfect_gas_is_a_finding()
    {
        DustyGas heavy = Dusty(0.2, 5000);
        Assert.Equal("GAS003", Assert.Single(heavy.Check()).Code);
        Assert.Throws<InvalidModelException>(() => heavy.Equivalent());
    }

    [Fact]
    public void Nominal_black_powder_products_lie_inside_every_published_range()
    {
        DustyGas products = BlackPowderProducts.Nominal;
        PerfectGas gas = products.Equivalent();
        Assert.True(BlackPowderProducts.GasMassFraction.Holds(products.GasMassFraction));
        Assert.True(BlackPowderProducts.GasHeatCapacityRatio.Holds(products.Gas.HeatCapacityRatio));
        Assert.True(BlackPowderProducts.FlameTemperature.Holds(BlackPowderProducts.NominalTemperature.Kelvins));
        Assert.True(BlackPowderProducts.GasMolarMass.Holds(1000 * PerfectGas.UniversalGasConstant / products.Gas.GasConstant.JoulesPerKilogramKelvin));
        Assert.True(BlackPowderProducts.ParticleHeatCapacity.Holds(products.ParticleHeatCapacity.JoulesPerKilogramKelvin));
        Assert.InRange(gas.HeatCapacityRatio, 1.12, 1.16);
        Assert.InRange(products.ImpetusAt(BlackPowderProducts.NominalTemperature).MegajoulesPerKilogram, 0.27, 0.32);
        Assert.Equal(BlackPowderProducts.MixtureHeatCapacityRatio.Nominal, gas.HeatCapacityRatio, 0.005);
        Assert.Equal(BlackPowderProducts.Impetus.Nominal, products.ImpetusAt(BlackPowderProducts.NominalTemperature).MegajoulesPerKilogram, 0.0005);
    }

    [Fact]
    public void The_gas_fraction_of_cooled_products_does_not_fit_the_flame()
    {
        DustyGas cooled = BlackPowderProducts.Nominal with { GasMassFraction = 0.43 };
        Assert.InRange(cooled.Equivalent().HeatCapacityRatio, 1.08, 1.10);
        Assert.True(cooled.ImpetusAt(Temperature.FromKelvins(BlackPowderProducts.FlameTemperature.Max)).MegajoulesPerKilogram < 0.24);
    }

    [Fact]
    public void Every_starting_value_lies_in_its_range_and_says_where_it_comes_from()
    {
        foreach (SourcedRange range in new[]
        {
            BlackPowderProducts.GasMassFraction, BlackPowderProducts.FlameTemperature, BlackPowderProducts.GasMolarMass,
            BlackPowderProducts.GasHeatCapacityRatio, BlackPowderProducts.ParticleHeatCapacity,
            BlackPowderProducts.MixtureHeatCapacityRatio, BlackPowderProducts.Impetus,
        })
        {
            Assert.True(range.Holds(range.Nominal), range.ToString());
            Assert.NotEmpty(range.NominalSource.Source);
            Assert.NotEmpty(range.RangeSource.Source);
        }
    }

    [Fact]
    public void Density_sound_speed_and_impetus_refuse_what_is_no_state()
    {
        Pressure bar = Pressure.FromBars(1);
        Temperature warm = Temperature.FromKelvins(300), none = Temperature.FromKelvins(-1);
        Assert.Equal("pressure", Assert.Throws<ArgumentOutOfRangeException>(() => PerfectGas.DryAir.DensityAt(-bar, warm)).ParamName);
        Assert.Equal("temperature", Assert.Throws<ArgumentOutOfRangeException>(() => PerfectGas.DryAir.DensityAt(bar, Temperature.FromKelvins(0))).ParamName);
        Assert.Equal("temperature", Assert.Throws<ArgumentOutOfRangeException>(() => PerfectGas.DryAir.SoundSpeedAt(none)).ParamName);
        Assert.Equal("temperature", Assert.Throws<ArgumentOutOfRangeException>(() => BlackPowderProducts.Nominal.ImpetusAt(none)).ParamName);
        Assert.Equal(0, PerfectGas.DryAir.DensityAt(Pressure.Zero, warm).KilogramsPerCubicMeter);
    }

    private static GasMixture Mixed(params (PerfectGas Gas, double Share)[] parts) => new()
    {
        Name = "mixture",
        Shares = [.. parts],
    };

    private static DustyGas Dusty(double f, double c_s) => new()
    {
        Name = "dusty",
        Gas = Heavy,
        GasMassFraction = f,
        ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(c_s),
        Provenance = Invented,
    };
}
