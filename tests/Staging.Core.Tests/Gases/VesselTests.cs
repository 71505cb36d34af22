using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gases;

public class VesselTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_vessel_at_ambient_pressure_is_vented_at_once_and_stays_so(bool isothermal)
    {
        Assert.Equal(0, Vessel.VentTime(1, 1, 1.4, isothermal));
        Assert.Equal(1, Vessel.PressureAfterVenting(0, 1, 1.4, isothermal));
        double all = Vessel.VentTime(8, 1, 1.4, isothermal);
        Assert.Equal(1, Vessel.PressureAfterVenting(all * 1.0001, 8, 1.4, isothermal));
        Assert.Equal(8, Vessel.PressureAfterVenting(0, 8, 1.4, isothermal));
    }

    [Theory]
    [InlineData(false, 1.4)]
    [InlineData(true, 1.14)]
    [InlineData(false, 1.01)]
    public void Rate_of_venting_is_the_flow_through_the_opening(bool isothermal, double gamma)
    {
        // Either side of the choking point: dp/dt against -p psi (T/T0)^(1/2), times gamma when adiabatic.
        foreach (double p in new[] { 4.0, 2.5, 1.7, 1.2, 1.02 })
        {
            const double start = 5;
            double h = 1e-5 * p;
            double dtdp = (Vessel.VentTime(start, p - h, gamma, isothermal) - Vessel.VentTime(start, p + h, gamma, isothermal)) / (2 * h);
            double rate = p * IsentropicFlow.ThroatMassFlow(1 / p, gamma);
            if (!isothermal)
                rate *= gamma * Math.Pow(p / start, (gamma - 1) / (2 * gamma));
            Assert.Equal(1, dtdp * rate, 1e-6);
        }
    }

    [Fact]
    public void A_full_vessel_stays_full()
    {
        Assert.Equal(1, Vessel.PressureAfterFilling(1e6, 0.3, 1.4, isothermal: false));
        Assert.Equal(1, Vessel.PressureAfterFilling(0, 1, 1.4, isothermal: true), 1e-15);
        Assert.Equal(0, Vessel.FillTime(1, 1, 1.4, isothermal: true));
    }

    [Fact]
    public void An_evacuated_vessel_fills_gamma_times_hotter_than_its_supply() =>
        Assert.Equal(1.4, Vessel.FilledTemperatureRatio(0, 1, 1.4));

    [Fact]
    public void A_charge_of_the_same_gas_follows_the_filling_formula()
    {
        var vessel = new GasState { Gas = PerfectGas.DryAir, Pressure = Pressure.FromBars(1), Temperature = Temperature.FromKelvins(290) };
        GasState full = Vessel.Charged(vessel, Volume.FromLiters(1), PerfectGas.DryAir, Mass.FromGrams(2), Temperature.FromKelvins(300));
        double ratio = Vessel.FilledTemperatureRatio(1e5 / full.Pressure.Pascals, 290.0 / 300, 1.4);
        Assert.Equal(ratio * 300, full.Temperature.Kelvins, 1e-10);
        Assert.Equal(1.4, full.Gas.HeatCapacityRatio, 1e-14);
    }

    [Fact]
    public void No_inflow_leaves_ambient_pressure()
    {
        Assert.Equal(1, Vessel.SteadyPressureRatio(0, 1.4));
        Assert.Equal(0, Vessel.SteadyFlow(1, 1.4));
    }

    [Fact]
    public void Steady_pressure_is_smooth_through_choking()
    {
        double q = IsentropicFlow.CriticalFlowFactor(1.25) / IsentropicFlow.CriticalPressureRatio(1.25);
        double below = Vessel.SteadyPressureRatio(q * (1 - 1e-6), 1.25);
        double at = Vessel.SteadyPressureRatio(q, 1.25);
        double above = Vessel.SteadyPressureRatio(q * (1 + 1e-6), 1.25);
        Assert.Equal(1, (at - below) / (above - at), 1e-4);
    }

    [Fact]
    public void Unit_of_time_grows_with_volume_and_falls_with_area()
    {
        Duration t = Vessel.TimeUnit(Volume.FromCubicCentimeters(64), Area.FromSquareMillimeters(20), PerfectGas.DryAir, Temperature.FromKelvins(288.15));
        Assert.Equal(64e-6 / (20e-6 * Math.Sqrt(8314.32 / 28.9644 * 288.15)), t.Seconds, 1e-15);
    }
}
