using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Droplets;

/// <summary>The bound of a burning piece that lodges before the grain.</summary>
public class ContactIgnitionTests
{
    private static readonly UpperGrain Grain = Bench.Design.Grain;
    private const double HeatPerVolume = 1700 * 1000, Diffusivity = 0.3 / HeatPerVolume;

    [Theory]
    [InlineData(0.0121)]
    [InlineData(0.0172)]
    [InlineData(0.05)]
    public void A_face_under_the_flux_of_steady_burning_reaches_its_temperature_at_quarter_pi_of_the_delay(double rate)
    {
        double rise = Grain.IgnitionTemperature.Kelvins - Grain.InitialTemperature.Kelvins;
        double flux = HeatPerVolume * rate * rise;
        double lit = Grain.TimeUnderFlux(HeatFlux.FromWattsPerSquareMeter(flux)).Seconds;
        Assert.Equal(Math.PI / 4 * ContactIgnition.Delay(Diffusivity, rate), lit, 1e-12 * lit);
    }

    /// <summary>The flux over the delay is what the steady profile holds, summed here by Simpson's rule over 40 of its lengths.</summary>
    [Fact]
    public void The_delay_gathers_the_heat_of_the_steady_profile()
    {
        const double rate = 0.015, rise = 485;
        const int n = 4000;
        double length = Diffusivity / rate, sum = 0;
        for (int i = 0; i <= n; i++)
            sum += (i is 0 or n ? 1 : 2 + 2 * (i & 1)) * Math.Exp(-40.0 * i / n);
        double held = HeatPerVolume * rise * length * sum * (40.0 / n) / 3;
        Assert.Equal(held, HeatPerVolume * rate * rise * ContactIgnition.Delay(Diffusivity, rate), 1e-8 * held);
    }

    [Fact]
    public void Twice_the_rate_is_a_quarter_of_the_delay_and_published_rates_give_about_a_millisecond()
    {
        Assert.Equal(0.25 * ContactIgnition.Delay(Diffusivity, 0.012), ContactIgnition.Delay(Diffusivity, 0.024), 1e-18);
        Assert.Equal(1.205e-3, ContactIgnition.Delay(Diffusivity, 0.0121), 1e-6);
        Assert.Equal(0.597e-3, ContactIgnition.Delay(Diffusivity, 0.0172), 1e-6);
    }
}
