using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Validation.GasCheck;

namespace Staging.Core.Validation.Exact.Gas;

public class GasMixtureChecks
{
    private static readonly Provenance Dusty = new()
    {
        Source = "F. E. Marble, Annu. Rev. Fluid Mech. 2 (1970) 397-446, from memory: gas with particles at its own speed and temperature, "
            + "ratio g (1 + k d)/(1 + g k d) with k the mass of particles a mass of gas and d the heat capacity of particles over cp",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance EqualMoles = new()
    {
        Source = "Kinetic theory, exercise of any textbook of physics: as many moles of a monatomic and a diatomic gas, Cv = (3/2 + 5/2) R/2 = 2 R",
        How = Evidence.ComputedFromFormula,
    };

    [Theory]
    [InlineData(0.56, 1.25, 1200, 1700, 1.14764267990074)]
    [InlineData(0.3, 1.4, 800, 1004.685045, 1.11107572598487)]
    public void Gas_with_particles(double share, double gamma, double particles, double cp, double expected)
    {
        PerfectGas gas = new()
        {
            Name = "gas",
            GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(cp * (gamma - 1) / gamma),
            HeatCapacityRatio = gamma,
            Provenance = Dusty,
        };
        PerfectGas dusty = new DustyGas
        {
            Name = "gas with particles",
            Gas = gas,
            GasMassFraction = share,
            ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(particles),
            Provenance = Dusty,
        }.Equivalent();
        Verify($"ratio of heat capacities of {1 - share:0.##} particles in gas of {gamma}", "-", expected, dusty.HeatCapacityRatio, TenDigits, Dusty);
        Verify($"gas constant over that of the gas, {1 - share:0.##} particles", "-", share, dusty.Constants.R / gas.Constants.R, TenDigits, Dusty);
    }

    [Theory]
    [InlineData("helium and nitrogen", 4.0026, 28.0134)]
    [InlineData("argon and hydrogen", 39.948, 2.01588)]
    public void Equal_moles(string name, double monatomic, double diatomic)
    {
        double sum = monatomic + diatomic;
        PerfectGas mixture = new GasMixture
        {
            Name = name,
            Shares =
            [
                (PerfectGas.FromMolarMass("one", MolarMass.FromGramsPerMole(monatomic), 5.0 / 3, EqualMoles), monatomic / sum),
                (PerfectGas.FromMolarMass("two", MolarMass.FromGramsPerMole(diatomic), 1.4, EqualMoles), diatomic / sum),
            ],
        }.Equivalent();
        Verify($"ratio of heat capacities of equal moles of {name}", "-", 1.5, mixture.HeatCapacityRatio, TenDigits, EqualMoles);
    }
}
