using Staging.Core.Gases;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Tests.Reference;

/// <summary>The lines a user writes with gases: shown in the reference, run here.</summary>
public class GasSnippets
{
    [Fact]
    public void Air_of_a_site_and_of_a_stand()
    {
        #region air-above-a-site
        var today = new SiteConditions
        {
            Elevation = Length.FromMeters(1200),
            Temperature = Temperature.FromDegreesCelsius(31),
            Pressure = Pressure.FromHectopascals(885),
            RelativeHumidity = 0.2,
        };
        IAtmosphere[] airs = [new SiteAtmosphere(today), StandardAtmosphere.Us1976];
        foreach (IAtmosphere air in airs)
            Console.WriteLine($"{air.At(geometricAltitude_m: 1200).Density_kg_per_m3:F3} kg/m3");
        AirSample here = airs[0].At(today.Elevation.Meters);
        var stand = new UniformAtmosphere // the same at every height
        {
            Pressure = today.Pressure,
            Temperature = today.Temperature,
            Density = Density.FromKilogramsPerCubicMeter(here.Density_kg_per_m3),
            SoundSpeed = Speed.FromMetersPerSecond(here.SoundSpeed_m_per_s),
        };
        #endregion
        Assert.Equal(885e2, here.Pressure_Pa, 1e-6);
        Assert.InRange(here.Density_kg_per_m3, 0.9, airs[1].At(1200).Density_kg_per_m3);
        Assert.Equal(stand.At(0), stand.At(3000));
    }

    [Fact]
    public void Products_of_a_mixture()
    {
        #region gas-mixture
        var measured = new Provenance { Source = "Invented for this example", Locator = "line 4", How = Evidence.Invented };
        var mixture = new GasMixture
        {
            Name = "gas of a powder",
            Shares =
            [
                (PerfectGas.FromMolarMass("carbon dioxide", MolarMass.FromGramsPerMole(44.01), 1.20, measured), 0.6),
                (PerfectGas.FromMolarMass("nitrogen", MolarMass.FromGramsPerMole(28.01), 1.30, measured), 0.4),
            ],
        };
        var products = new DustyGas
        {
            Name = "products of a powder",
            Gas = mixture.Equivalent(),
            GasMassFraction = 0.45, // the rest is melt and solids
            ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1200),
            Provenance = measured,
        };
        PerfectGas one = products.Equivalent(); // what a front or an orifice needs
        Console.WriteLine($"{one.Name}: heat capacity ratio {one.HeatCapacityRatio:F3}");
        #endregion
        Assert.Empty(products.Check());
        Assert.InRange(one.HeatCapacityRatio, 1.01, mixture.Equivalent().HeatCapacityRatio);
    }

    [Fact]
    public void A_published_range()
    {
        #region sourced-range
        SourcedRange flame = BlackPowderProducts.FlameTemperature;
        Console.WriteLine($"{flame.Nominal:F0} {flame.Unit}, {flame.Min:F0} to {flame.Max:F0}; {flame.RangeSource.Source}");
        Distribution spread = Distribution.Of(flame); // for a study
        #endregion
        Assert.InRange(spread.Quantile(0.01), flame.Min, flame.Nominal);
        Assert.True(flame.Holds(spread.Median));
    }

    [Fact]
    public void Ducts_and_vessels()
    {
        #region gas-ducts
        const double gamma = 1.4;
        double choked = IsentropicFlow.CriticalPressureRatio(gamma);    // p/p0 below which a nozzle chokes
        double behind = NormalShock.PressureRatio(2, gamma);            // p2/p1 of a shock at Mach 2
        double friction = FannoFlow.FrictionToSonic(0.3, gamma);        // 4fL/D that brings Mach 0.3 to 1
        Duration unit = Vessel.TimeUnit(
            Volume.FromCubicCentimeters(30), Area.FromSquareMillimeters(10), PerfectGas.DryAir, Temperature.FromKelvins(288.15));
        double ratio = Vessel.ChokedPressureRatio(time: 1, gamma, isothermal: false); // p/p(0) after one such unit of time
        #endregion
        Assert.Equal(0.5283, choked, 1e-4);
        Assert.Equal(4.5, behind, 1e-12);
        Assert.InRange(friction, 5, 6);
        Assert.InRange(unit.Milliseconds, 1, 100);
        Assert.Equal(Math.Pow(1 + 0.2 * 0.68473, -7), ratio, 1e-4); // (1 + (g - 1)/2 C t)^(-2g/(g - 1)), C the choked flow function
    }

    [Fact]
    public void Riemann_problem()
    {
        #region riemann-problem
        FlowState left = new(density: 1, velocity: 0, pressure: 1, gamma: 1.4), right = new(0.125, 0, 0.1, 1.4);
        RiemannSolution solution = RiemannSolution.Of(left, right);
        FlowState at = solution.Sample(speed: 0.5); // the state that travels at x/t = 0.5
        Console.WriteLine($"contact at {solution.ContactSpeed:F4}, pressure {solution.StarPressure:F4}, density {at.Density:F4}");
        #endregion
        Assert.Equal(0.30313, solution.StarPressure, 1e-5); // Toro, table 4.3, test 1: computed again from its formula
        Assert.True(solution.RightIsShock);
    }
}
