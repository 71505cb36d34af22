using FsCheck.Xunit;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

public class GasMixtureProperties
{
    private static readonly Provenance Invented = new() { Source = "invented for a test", How = Evidence.Invented };

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 200)]
    public void A_mixture_lies_between_its_gases_and_does_not_care_for_their_order(FlowCase c)
    {
        PerfectGas a = Gas(4 + 40 * c.Subsonic, c.Gamma);
        PerfectGas b = PerfectGas.DryAir;
        double y = c.Subsonic;
        PerfectGas ab = Mixed(a, b, y).Equivalent();
        PerfectGas ba = Mixed(b, a, 1 - y).Equivalent();
        Assert.Equal(ab.HeatCapacityRatio, ba.HeatCapacityRatio, 1e-12);
        Between(a.HeatCapacityRatio, b.HeatCapacityRatio, ab.HeatCapacityRatio);
        Between(a.GasConstant.JoulesPerKilogramKelvin, b.GasConstant.JoulesPerKilogramKelvin, ab.GasConstant.JoulesPerKilogramKelvin);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 200)]
    public void More_particles_mean_less_gas_constant_less_gamma_and_slower_sound(FlowCase c)
    {
        PerfectGas some = Dusty(0.4 + 0.6 * c.Subsonic, c.Gamma);
        PerfectGas more = Dusty(0.4 + 0.55 * c.Subsonic, c.Gamma);
        Temperature T = BlackPowderProducts.NominalTemperature;
        Assert.True(more.GasConstant < some.GasConstant);
        Assert.True(more.HeatCapacityRatio < some.HeatCapacityRatio);
        Assert.True(more.SoundSpeedAt(T) < some.SoundSpeedAt(T));
    }

    private static void Between(double one, double other, double value) =>
        Assert.InRange(value, Math.Min(one, other) * (1 - 1e-12), Math.Max(one, other) * (1 + 1e-12));

    private static PerfectGas Gas(double grams, double gamma) => PerfectGas.FromMolarMass("gas", MolarMass.FromGramsPerMole(grams), gamma, Invented);

    private static GasMixture Mixed(PerfectGas first, PerfectGas second, double y) => new()
    {
        Name = "mixture",
        Shares = [(first, y), (second, 1 - y)],
    };

    private static PerfectGas Dusty(double f, double gamma) => new DustyGas
    {
        Name = "dusty",
        Gas = Gas(35, gamma),
        GasMassFraction = f,
        ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1000),
        Provenance = Invented,
    }.Equivalent();
}
