using Staging.Core.Fronts;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Fronts;

public class ShockTubeFrontTests
{
    private static readonly ShockTubeFront Front = ShockTubeFront.Between(Hot(3), TestFronts.Air);

    [Fact]
    public void Front_and_shock_are_those_of_the_shock_tube_equation()
    {
        // Twin routes: the exact Riemann problem inside, the textbook equation of the shock tube here.
        double a1 = TestFronts.Air.SoundSpeed.MetersPerSecond, a4 = Hot(3).SoundSpeed.MetersPerSecond;
        double p41 = NormalShock.DriverPressureRatio(Front.ShockMach, 1.4, Hot(3).Gas.HeatCapacityRatio, a1 / a4);
        Assert.Equal(3, p41, 1e-10);
        Assert.Equal(NormalShock.GasSpeed(Front.ShockMach, 1.4) * a1, Front.ContactSpeed.MetersPerSecond, 1e-9);
        Assert.Equal(Front.ShockMach * a1, Front.ShockSpeed.MetersPerSecond, 1e-9);
        double p4 = Hot(3).Pressure.Pascals, g4 = Hot(3).Gas.HeatCapacityRatio;
        Assert.Equal(1900 * Math.Pow(Front.Pressure.Pascals / p4, (g4 - 1) / g4), Front.HotTemperature.Kelvins, 1e-8);
        Assert.Equal(288.15 * NormalShock.TemperatureRatio(Front.ShockMach, 1.4), Front.AirTemperature.Kelvins, 1e-8);
    }

    [Fact]
    public void A_closed_end_stops_the_front_short_of_it()
    {
        // Three straight lines in the x-t plane: shock out, shock back, front.
        const double L = 0.25;
        double x = Front.StoppedBefore(Length.FromMeters(L)).Meters;
        double W = Front.ShockSpeed.MetersPerSecond, w = NormalShock.Reflected(Front.ShockMach, 1.4).ReflectedSpeed * TestFronts.Air.SoundSpeed.MetersPerSecond;
        double meets = Front.ArrivalAt(Length.FromMeters(x))!.Value.Seconds;
        Assert.Equal(L - w * (meets - L / W), x, 1e-12);
        Assert.InRange(x, 0.2 * L, 0.9 * L);
    }

    [Fact]
    public void At_equal_pressures_nothing_moves()
    {
        ShockTubeFront still = ShockTubeFront.Between(Hot(1), TestFronts.Air);
        Assert.Equal(0, still.ContactSpeed.MetersPerSecond, 1e-12);
        Assert.Equal(1, still.ShockMach, 1e-12);
        Assert.Equal(101325, still.Pressure.Pascals, 1e-8);
    }

    [Fact]
    public void A_driver_below_the_air_is_refused() =>
        Assert.Contains("driver", Assert.Throws<ArgumentOutOfRangeException>(() => ShockTubeFront.Between(Hot(0.9), TestFronts.Air)).Message, StringComparison.Ordinal);

    private static GasState Hot(double atmospheres) => new()
    {
        Gas = TestFronts.Steady(1, 0).Products,
        Pressure = Pressure.FromPascals(atmospheres * 101325),
        Temperature = Temperature.FromKelvins(1900),
    };
}
