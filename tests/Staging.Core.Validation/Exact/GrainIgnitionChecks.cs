using Staging.Core.Gaps;
using UnitsNet;
using static Staging.Core.Validation.GapCheck;

namespace Staging.Core.Validation.Exact;

/// <summary>The closed forms of ignition against their equations evaluated outside.</summary>
public class GrainIgnitionChecks
{
    private static readonly Provenance CarslawJaeger = new()
    {
        Source = "Carslaw & Jaeger, Conduction of Heat in Solids (1959), sections 2.7 and 2.9, evaluated in 15-digit arithmetic or better",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Tolerance Given = Tolerance.Relative(1e-12, "closed form, reference given to twelve digits or more");

    [Theory]
    [InlineData(0.01, 0.0111845389536575)]
    [InlineData(0.05, 0.0540099564450385)]
    [InlineData(0.1, 0.103543020030873)]
    [InlineData(0.5, 0.384309655807074)]
    [InlineData(1, 0.572416423844193)]
    [InlineData(2, 0.744604323689494)]
    [InlineData(5, 0.889295362266931)]
    [InlineData(10, 0.943859007256177)]
    public void Surface_under_convection(double H, double theta)
    {
        // k = 0.3, rho = 1700, c = 1000 from 300 K; gas at 1300 K, so that the rise is 1000 theta; 1 s.
        double h = H * Math.Sqrt(0.3 * 1700 * 1000);
        Temperature surface = Grain(630).SurfaceUnderConvection(
            HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(h), Temperature.FromKelvins(1300), Duration.FromSeconds(1));
        Verify($"surface share of the gas's excess, h sqrt(t)/e = {H}", "-", theta, (surface.Kelvins - 300) / 1000, Given, CarslawJaeger);
    }

    [Theory]
    [InlineData(0.1, 0.0962786477677496)]
    [InlineData(0.2, 0.211309755990898)]
    [InlineData(0.3, 0.352351951877539)]
    [InlineData(0.5, 0.769079771061314)]
    [InlineData(0.6, 1.10710273738841)]
    public void Time_to_light_under_convection(double theta, double H)
    {
        const double h = 1000;
        double expected = H * H * 0.3 * 1700 * 1000 / (h * h);
        Duration? ours = Grain(600).TimeUnderConvection(
            HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(h), Temperature.FromKelvins(300 + 300 / theta));
        Verify($"time to light at a share {theta} of the gas's excess, h = 1000", "s", expected, ours!.Value.Seconds, Given, CarslawJaeger);
    }

    [Fact]
    public void Worked_times()
    {
        Verify("time to light under 1 MW/m2, rise 330 K", "s", 0.0436202285969, Grain(630).TimeUnderFlux(HeatFlux.FromKilowattsPerSquareMeter(1000)).Seconds, Given, CarslawJaeger);
        Duration? lit = Grain(630).TimeUnderConvection(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1000), Temperature.FromKelvins(2000));
        Verify("time to light under h = 1000 W/(m2 K), gas 1700 K above, rise 330 K", "s", 0.0212055388264, lit!.Value.Seconds, Given, CarslawJaeger);
    }

    private static UpperGrain Grain(double ignition) => new()
    {
        NozzleThroatDiameter = Length.FromMillimeters(3.5),
        RecessVolume = Volume.FromCubicCentimeters(0.3),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.3),
        Density = Density.FromKilogramsPerCubicMeter(1700),
        HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1000),
        IgnitionTemperature = Temperature.FromKelvins(ignition),
        InitialTemperature = Temperature.FromKelvins(300),
        Provenance = new Provenance { Source = "Given with the check", How = Evidence.ComputedFromFormula },
    };
}
