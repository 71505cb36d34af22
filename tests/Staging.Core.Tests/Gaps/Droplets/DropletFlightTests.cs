using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Gaps;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Gaps.Droplets;

/// <summary>Droplets in limits whose answer is known.</summary>
public class DropletFlightTests
{
    private const double Air = 1000;

    /// <summary>In air so thin that Reynolds numbers vanish drag is that of Stokes and heat that of conduction; neither knows the density.</summary>
    private static readonly DropletGas Thin = new(1e-9, Air, 0, Air);

    /// <summary>A droplet as warm as the gas, so that viscosity stays what it is.</summary>
    private static readonly Droplet Warm = new(1e-4, 2000, 1300, 0, Air, 100);

    private static double Relaxation(in Droplet d) => d.Density * d.Diameter * d.Diameter / (18 * AirTransport.Viscosity(Air));

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Under_Stokes_drag_speed_falls_with_the_way_and_time_is_a_logarithm(double share)
    {
        double tau = Relaxation(Warm);
        DropletArrival there = Fly(Warm, Thin, share * Warm.Speed * tau);
        Assert.Equal((1 - share) * Warm.Speed, there.Speed, 1e-5 * Warm.Speed);
        Assert.Equal(-Math.Log(1 - share) * tau, there.Time, 1e-6 * tau);
        Assert.Equal(Air, there.Temperature, 1e-9);
    }

    [Fact]
    public void It_stops_after_speed_times_relaxation_time()
    {
        double stop = Warm.Speed * Relaxation(Warm);
        Assert.NotNull(DropletFlight.To(Warm, Thin, 0.9999 * stop));
        Assert.Null(DropletFlight.To(Warm, Thin, 1.0001 * stop));
    }

    [Fact]
    public void A_stream_carries_a_droplet_along()
    {
        // Seen from the stream it is at rest in still gas: x = u t + (v - u) tau (1 - exp(-t/tau)).
        double tau = Relaxation(Warm), u = 60, t = 1.5 * tau;
        Droplet slow = Warm with { Speed = 20 };
        double x = u * t + (20 - u) * tau * (1 - Math.Exp(-1.5));
        DropletArrival there = Fly(slow, Thin with { Speed = u }, x);
        Assert.Equal(t, there.Time, 1e-6 * tau);
        Assert.Equal(u + (20 - u) * Math.Exp(-1.5), there.Speed, 1e-5 * u);
    }

    [Fact]
    public void At_no_Reynolds_number_it_cools_by_conduction_alone()
    {
        // m c dT/dt = pi d^2 (2 k/d)(Tg - T): the excess falls by e in rho c d^2/(12 k). One kelvin of excess, so that k stays what it is.
        Droplet warmer = Warm with { Temperature = Air + 1, Density = 2e6 };
        double tau = warmer.Density * warmer.HeatCapacity * warmer.Diameter * warmer.Diameter / (12 * AirTransport.Conductivity(Air));
        DropletArrival there = Fly(warmer, Thin, 0.5);
        Assert.InRange(there.Time / tau, 1e-4, 0.1);
        Assert.Equal(Math.Exp(-there.Time / tau), there.Temperature - Air, 1e-3 * there.Time / tau);
    }

    [Fact]
    public void A_wide_one_cools_by_radiation_alone()
    {
        // T^-3 grows by 18 eps sigma t/(rho c d) towards walls of 1 K; conduction is 1e-6 of it for a ball of 100 m.
        Droplet ball = new(100, 2, 20, 0.8, 1900, 100);
        DropletGas cold = new(1e-9, 300, 0, 1);
        DropletArrival there = Fly(ball, cold, 20);
        double expected = Math.Pow(Math.Pow(1900, -3) + 18 * 0.8 * 5.670374419e-8 * there.Time / (2 * 20 * 100), -1 / 3.0);
        Assert.True(expected < 1850);
        Assert.Equal(expected, there.Temperature, 1e-5 * expected);
    }

    [Fact]
    public void One_too_heavy_to_be_slowed_flies_as_thrown_and_stays_as_hot()
    {
        DropletArrival there = Fly(new Droplet(1e-4, 1e12, 1300, 0.9, 1900, 80), new DropletGas(101325, 288, 0, 288), 0.46);
        Assert.Equal(0.46 / 80, there.Time, 1e-9);
        Assert.Equal(80, there.Speed, 1e-5);
        Assert.Equal(1900, there.Temperature, 1e-3);
    }

    [Fact]
    public void No_way_takes_no_time_and_one_at_rest_in_still_gas_arrives_nowhere()
    {
        Assert.Equal(new DropletArrival(0, Air, 100), Fly(Warm, Thin, 0));
        Assert.Null(DropletFlight.To(Warm with { Speed = 0 }, Thin, 0.1));
        Assert.Null(DropletFlight.To(Warm with { Speed = -1 }, Thin, 0.1));
    }

    /// <summary>
    /// Invented droplets of 100 micrometres, 2000 K, at 150 m/s in cold still air, against the same equations by the midpoint rule in steps of one microsecond,
    /// programmed apart from the library.
    /// </summary>
    [Theory]
    [InlineData(0.25, 1.96, 1690)]
    [InlineData(0.46, 4.25, 1436)]
    [InlineData(0.90, 13.52, 915)]
    public void Droplets_of_a_tenth_of_a_millimetre(double distance, double milliseconds, double kelvins)
    {
        DropletArrival there = Fly(new Droplet(1e-4, 2100, 1500, 0.9, 2000, 150), new DropletGas(101325, 288, 0, 288), distance);
        Assert.Equal(milliseconds, 1e3 * there.Time, 0.005);
        Assert.Equal(kelvins, there.Temperature, 0.6);
    }

    [Property(Arbitrary = [typeof(AnyDroplet)], MaxTest = 100)]
    public void A_larger_one_arrives_sooner_and_hotter_and_nothing_leaves_its_bounds(DropletCase any)
    {
        var droplet = new Droplet(any.Diameter, any.Density, any.HeatCapacity, any.Emissivity, any.Temperature, any.Speed);
        var still = new DropletGas(101325, 288, 0, 288);
        Droplet larger = droplet with { Diameter = 1.3 * droplet.Diameter };
        if (DropletFlight.To(droplet, still, 0.3) is not { } there)
            return;
        DropletArrival first = Fly(larger, still, 0.3);
        Assert.True(first.Time < there.Time && first.Temperature > there.Temperature && first.Speed > there.Speed);
        Assert.InRange(there.Temperature, 288, droplet.Temperature);
        Assert.InRange(there.Speed, 0, droplet.Speed);
        Assert.True(there.Time >= 0.3 / droplet.Speed);
    }

    private static DropletArrival Fly(in Droplet droplet, in DropletGas gas, double distance) =>
        Assert.NotNull(DropletFlight.To(droplet, gas, distance));
}

/// <summary>A droplet in plain SI numbers.</summary>
public sealed record DropletCase(double Diameter, double Density, double HeatCapacity, double Emissivity, double Temperature, double Speed);

/// <summary>Droplets as products may make them.</summary>
public static class AnyDroplet
{
    public static Arbitrary<DropletCase> Droplets() => Arb.From(
        from d in Between(20, 1000)
        from density in Between(1500, 2500)
        from capacity in Between(800, 1800)
        from emissivity in Between(0, 1000)
        from temperature in Between(1200, 2400)
        from speed in Between(20, 300)
        select new DropletCase(d * 1e-6, density, capacity, 1e-3 * emissivity, temperature, speed));

    private static Gen<double> Between(int low, int high) => Gen.Choose(low, high).Select(x => (double)x);
}
