using Staging.Core.Fronts;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Tests.Fronts.TestFronts;

namespace Staging.Core.Tests.Fronts;

public class DisplacementFrontTests
{
    [Fact]
    public void A_parcel_cools_to_a_temperature_in_the_time_that_gives_it_back()
    {
        FrontPath path = Under(MassFlowHistory.FromColumns([0, 0.01], [5e-3, 5e-3]), 400).Path;
        Temperature start = Temperature.FromKelvins(1800), end = Temperature.FromKelvins(1100);
        Duration age = path.TimeToCool(PerfectGas.DryAir, start, end)!.Value;
        Assert.Equal(1100, path.ParcelTemperature(PerfectGas.DryAir, start, age).Kelvins, 1e-9);
        Assert.Equal(PerfectGas.DryAir.Constants.Cp * 700, path.ParcelHeatLoss(PerfectGas.DryAir, start, age).JoulesPerKilogram, 1e-5);
        Assert.Null((path with { WallHeatTransfer = HeatTransferCoefficient.Zero }).TimeToCool(PerfectGas.DryAir, start, end));
    }

    [Fact]
    public void Without_heat_loss_the_front_runs_at_the_volume_flow_of_the_gas()
    {
        DisplacementFront front = Steady(5, 0);
        double R = front.Products.GasConstant.JoulesPerKilogramKelvin, A = front.Path.CrossSection.SquareMeters;
        double speed = 5e-3 * R * 1900 / (101325 * A);
        foreach (double t in (double[])[0, 1e-3, 0.02, 3])
        {
            Assert.Equal(speed, front.SpeedAt(Duration.FromSeconds(t)).MetersPerSecond, 1e-12 * speed);
            Assert.Equal(speed * t, front.TravelAt(Duration.FromSeconds(t)).Meters, 1e-12 * speed);
            Assert.Equal(0, front.HeatLostBy(Duration.FromSeconds(t)).Joules, 1e-12);
        }
    }

    [Fact]
    public void A_parcel_that_ages_cools_as_the_textbook_exponential_over_distance()
    {
        // Two closed forms of one balance: over age (logistic) and over distance (number of transfer units).
        DisplacementFront front = Steady(5, 400);
        foreach (double x in (double[])[0.01, 0.1, 0.4, 2])
        {
            Duration arrival = front.ArrivalAt(Length.FromMeters(x));
            double byAge = front.FrontTemperatureAt(arrival).Kelvins, byWay = front.ArrivalTemperatureAt(Length.FromMeters(x)).Kelvins;
            Assert.Equal(byWay, byAge, 1e-10 * byWay);
        }
    }

    [Fact]
    public void The_equation_of_the_front_holds_by_differences()
    {
        // dx/dt = mdot R T/(p A) and dT/dt = -kappa T (T - Tw), by fourth-order differences over 1e-5 s: 1e-9 or better.
        DisplacementFront front = Steady(5, 400);
        double kappa = 4 * 400 * front.Products.GasConstant.JoulesPerKilogramKelvin
            / (0.018 * front.Products.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin * 101325);
        foreach (double t in (double[])[1e-3, 5e-3, 0.03])
        {
            double T = front.FrontTemperatureAt(Duration.FromSeconds(t)).Kelvins;
            double slope = Slope(s => front.FrontTemperatureAt(Duration.FromSeconds(s)).Kelvins, t);
            Assert.Equal(-kappa * T * (T - 288.15), slope, 1e-7 * Math.Abs(slope));
            double speed = Slope(s => front.TravelAt(Duration.FromSeconds(s)).Meters, t);
            Assert.Equal(front.SpeedAt(Duration.FromSeconds(t)).MetersPerSecond, speed, 1e-7 * speed);
        }
    }

    [Fact]
    public void A_history_of_constant_flow_is_the_steady_front()
    {
        DisplacementFront steady = Steady(5, 400);
        HistoryFront history = Under(MassFlowHistory.FromColumns([0, 0.003, 0.08], [5e-3, 5e-3, 5e-3]), 400);
        foreach (double t in (double[])[1e-3, 3e-3, 0.04, 0.08])
        {
            Duration at = Duration.FromSeconds(t);
            Near(steady.TravelAt(at).Meters, history.TravelAt(at).Meters, 1e-13);
            Near(steady.SpeedAt(at).MetersPerSecond, history.SpeedAt(at).MetersPerSecond, 1e-12);
            Near(steady.HeatLostBy(at).Joules, history.HeatLostBy(at).Joules, 1e-11);
        }

        Length station = Length.FromMillimeters(250);
        Near(steady.ArrivalAt(station).Seconds, history.ArrivalAt(station)!.Value.Seconds, 1e-9);
    }

    [Fact]
    public void Without_heat_loss_a_history_moves_the_front_by_its_trapezoids()
    {
        MassFlowHistory pulse = MassFlowHistory.FromColumns([0.001, 0.006, 0.02], [0, 8e-3, 0]);
        HistoryFront front = Under(pulse, 0);
        double perKilogram = front.Products.GasConstant.JoulesPerKilogramKelvin * 1900 / (101325 * front.Path.CrossSection.SquareMeters);
        Near(perKilogram * 0.5 * 8e-3 * 0.019, front.TravelAt(Duration.FromSeconds(0.5)).Meters, 1e-13);
        Near(perKilogram * pulse.TotalMass.Kilograms, front.TravelAt(Duration.FromSeconds(0.02)).Meters, 1e-13);
        Near(perKilogram * 0.5 * 8e-3 * 0.0025 / 2, front.TravelAt(Duration.FromSeconds(0.0035)).Meters, 1e-13);
        Assert.Equal(0, front.TravelAt(Duration.FromSeconds(0.001)).Meters);
        Assert.Equal(0, front.SpeedAt(Duration.FromSeconds(0.3)).MetersPerSecond, 1e-15);
        Assert.Null(front.ArrivalAt(Length.FromMeters(50)));
    }

    [Fact]
    public void A_column_that_cools_draws_back_once_its_source_has_ended()
    {
        HistoryFront front = Under(MassFlowHistory.FromColumns([0, 0.01], [5e-3, 5e-3]), 200);
        Length atEnd = front.TravelAt(Duration.FromSeconds(0.01));
        Assert.True(front.SpeedAt(Duration.FromSeconds(0.02)).MetersPerSecond < 0);
        Assert.True(front.TravelAt(Duration.FromSeconds(0.05)) < atEnd);
        // At last it has the temperature of the wall: the cold volume of its mass.
        double cold = 5e-5 * front.Products.GasConstant.JoulesPerKilogramKelvin * 288.15 / (101325 * front.Path.CrossSection.SquareMeters);
        Near(cold, front.TravelAt(Duration.FromSeconds(60)).Meters, 1e-9);
    }

    [Fact]
    public void A_fast_front_is_pointed_out()
    {
        Assert.Empty(Steady(1, 0).Check());
        ModelFinding finding = Assert.Single(Steady(50, 0).Check());
        Assert.Equal(("FRO001", FindingSeverity.Warning), (finding.Code, finding.Severity));
        Assert.Equal("FRO001", Assert.Single(Under(MassFlowHistory.FromColumns([0, 1], [0, 0.05]), 0).Check()).Code);
    }

    [Theory]
    [InlineData(0.299)]
    [InlineData(0.301)]
    public void A_front_is_fast_from_three_tenths_of_sound_on(double mach)
    {
        double perGram = Steady(1, 0).InitialSpeed.MetersPerSecond, sound = Air.SoundSpeed.MetersPerSecond;
        Assert.Equal(mach > 0.3, !Steady(mach * sound / perGram, 0).Check().IsEmpty);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_front_that_nothing_feeds_is_refused(double gramsPerSecond) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Steady(gramsPerSecond, 0));

    [Theory]
    [InlineData(new double[] { 0, 0 }, new double[] { 1e-3, 1e-3 })]
    [InlineData(new double[] { 0, 1 }, new double[] { 0, 0 })]
    [InlineData(new double[] { 0, 1 }, new double[] { 1e-3, -1e-3 })]
    [InlineData(new double[] { 0, double.NaN }, new double[] { 1e-3, 1e-3 })]
    [InlineData(new double[] { 0 }, new double[] { 1e-3 })]
    [InlineData(new double[] { 0, 1 }, new double[] { 1e-3 })]
    public void A_broken_history_is_refused(double[] time, double[] flow) =>
        Assert.ThrowsAny<ArgumentException>(() => MassFlowHistory.FromColumns(time, flow));

    private static void Near(double expected, double ours, double relative) => Assert.Equal(expected, ours, relative * Math.Abs(expected));

    private static double Slope(Func<double, double> f, double t)
    {
        const double h = 1e-5;
        return (8 * (f(t + h) - f(t - h)) - (f(t + 2 * h) - f(t - 2 * h))) / (12 * h);
    }
}
