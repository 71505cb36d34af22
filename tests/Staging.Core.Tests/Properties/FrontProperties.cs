using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Fronts;
using Staging.Core.Gases;
using Staging.Core.Tests.Fronts;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

/// <summary>A front, a time and a station within the sizes of model rockets and well beyond.</summary>
public sealed record FrontCase(DisplacementFront Front, Duration Time, Length Station);

public class FrontProperties
{
    [Property(Arbitrary = [typeof(FrontGenerators)], MaxTest = 300)]
    public void Arrival_is_the_inverse_of_travel(FrontCase c)
    {
        Duration back = c.Front.ArrivalAt(c.Front.TravelAt(c.Time));
        // Late on, where the column has cooled to the wall, a time is read from the last digits of an exponential.
        Assert.Equal(c.Time.Seconds, back.Seconds, 1e-9 * c.Time.Seconds);
        Length there = c.Front.TravelAt(c.Front.ArrivalAt(c.Station));
        Assert.Equal(c.Station.Meters, there.Meters, 1e-11 * c.Station.Meters);
    }

    [Property(Arbitrary = [typeof(FrontGenerators)], MaxTest = 300)]
    public void Heat_loss_delays_and_cools_but_never_below_the_wall(FrontCase c)
    {
        DisplacementFront ideal = c.Front with { Path = c.Front.Path with { WallHeatTransfer = HeatTransferCoefficient.Zero } };
        Assert.True(c.Front.ArrivalAt(c.Station).Seconds >= ideal.ArrivalAt(c.Station).Seconds * (1 - 1e-12));
        double T = c.Front.FrontTemperatureAt(c.Time).Kelvins;
        Assert.InRange(T, c.Front.Path.WallTemperature.Kelvins * (1 - 1e-14), c.Front.SourceTemperature.Kelvins * (1 + 1e-14));
        Assert.True(c.Front.HeatLostBy(c.Time).Joules >= -1e-12);
    }

    [Property(Arbitrary = [typeof(FrontGenerators)], MaxTest = 300)]
    public void Enthalpy_that_entered_is_in_the_column_or_in_the_wall(FrontCase c)
    {
        // cp mdot T0 t = cp p A x/R + Q: the column at one pressure holds gamma/(gamma - 1) p V whatever its temperature.
        double cp = c.Front.Products.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin, g = c.Front.Products.HeatCapacityRatio;
        double entered = c.Front.MassFlow.KilogramsPerSecond * cp * c.Front.SourceTemperature.Kelvins * c.Time.Seconds;
        double column = g / (g - 1) * c.Front.Path.Air.Pressure.Pascals * c.Front.Path.CrossSection.SquareMeters * c.Front.TravelAt(c.Time).Meters;
        Assert.Equal(entered, column + c.Front.HeatLostBy(c.Time).Joules, 1e-11 * entered);
    }

    [Property(Arbitrary = [typeof(FrontGenerators)], MaxTest = 300)]
    public void Twice_the_flow_in_the_same_duct_moves_twice_as_far(FrontCase c)
    {
        DisplacementFront twice = c.Front with { MassFlow = 2 * c.Front.MassFlow };
        double x = c.Front.TravelAt(c.Time).Meters;
        Assert.Equal(2 * x, twice.TravelAt(c.Time).Meters, 1e-12 * x);
    }

    [Property(Arbitrary = [typeof(FrontGenerators)], MaxTest = 100)]
    public void A_history_lies_between_its_least_and_its_greatest_flow(FrontCase c)
    {
        double m = c.Front.MassFlow.KilogramsPerSecond, end = c.Time.Seconds;
        var history = new HistoryFront
        {
            Path = c.Front.Path,
            Products = c.Front.Products,
            SourceTemperature = c.Front.SourceTemperature,
            History = MassFlowHistory.FromColumns([0, 0.3 * end, end], [0.5 * m, m, 0.7 * m]),
        };
        double x = c.Front.TravelAt(c.Time).Meters;
        Assert.InRange(history.TravelAt(c.Time).Meters, 0.5 * x, x);
    }

    [Property(Arbitrary = [typeof(FrontGenerators)], MaxTest = 200)]
    public void The_front_of_a_shock_tube_follows_its_shock(FrontCase c)
    {
        var driver = new GasState
        {
            Gas = c.Front.Products,
            Pressure = (1 + 100 * c.Station.Meters) * c.Front.Path.Air.Pressure,
            Temperature = c.Front.SourceTemperature,
        };
        ShockTubeFront tube = ShockTubeFront.Between(driver, c.Front.Path.Air);
        Assert.InRange(tube.ContactSpeed.MetersPerSecond, 0, tube.ShockSpeed.MetersPerSecond);
        Assert.InRange(tube.Pressure.Pascals, c.Front.Path.Air.Pressure.Pascals * (1 - 1e-12), driver.Pressure.Pascals * (1 + 1e-12));
        Assert.InRange(tube.StoppedBefore(c.Station).Meters, 0, c.Station.Meters);
    }
}

public static class FrontGenerators
{
    public static Arbitrary<FrontCase> FrontCases() => (
        from bore in Log(3e-3, 0.1)
        from h in Even(0, 2000)
        from wall in Even(250, 400)
        from hot in Even(500, 2500)
        from speed in Log(1, 100)
        from time in Log(1e-4, 0.2)
        from station in Log(1e-3, 2)
        select Make(bore, h, wall, hot, speed, time, station)).ToArbitrary();

    /// <summary>Given by its first speed, so that stations are reached in times that matter.</summary>
    private static FrontCase Make(double bore, double h, double wall, double hot, double speed, double time, double station)
    {
        DisplacementFront start = TestFronts.Steady(1, h);
        FrontPath path = start.Path with { Bore = Length.FromMeters(bore), WallTemperature = Temperature.FromKelvins(wall) };
        double R = start.Products.GasConstant.JoulesPerKilogramKelvin;
        double flow = speed * path.Air.Pressure.Pascals * path.CrossSection.SquareMeters / (R * hot);
        DisplacementFront front = start with { Path = path, SourceTemperature = Temperature.FromKelvins(hot), MassFlow = MassFlow.FromKilogramsPerSecond(flow) };
        return new FrontCase(front, Duration.FromSeconds(time), Length.FromMeters(station));
    }

    private static Gen<double> Even(double low, double high) =>
        Gen.Choose(0, int.MaxValue).Select(n => low + (high - low) * n / int.MaxValue);

    private static Gen<double> Log(double low, double high) => Even(Math.Log(low), Math.Log(high)).Select(Math.Exp);
}
