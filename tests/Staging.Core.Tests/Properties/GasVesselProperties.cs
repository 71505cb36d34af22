using FsCheck.Xunit;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Properties;

public class GasVesselProperties
{
    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Pressure_comes_back_from_vent_time(VesselCase c)
    {
        foreach (bool isothermal in (bool[])[false, true])
        {
            double end = Math.Pow(c.Start, c.Fraction);
            double t = Vessel.VentTime(c.Start, end, c.Gamma, isothermal);
            Assert.Equal(end, Vessel.PressureAfterVenting(t, c.Start, c.Gamma, isothermal), 1e-11 * c.Start);
        }
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Venting_in_two_legs_takes_as_long_as_in_one_when_isothermal(VesselCase c)
    {
        double middle = Math.Pow(c.Start, c.Fraction);
        double whole = Vessel.VentTime(c.Start, 1, c.Gamma, isothermal: true);
        double legs = Vessel.VentTime(c.Start, middle, c.Gamma, isothermal: true)
            + Vessel.VentTime(middle, 1, c.Gamma, isothermal: true);
        Assert.Equal(whole, legs, 1e-12 * whole);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Pressure_in_an_adiabatic_vessel_starts_to_fall_gamma_times_faster(VesselCase c)
    {
        double end = 1 + (c.Start - 1) * (1 - 1e-6);
        double ratio = Vessel.VentTime(c.Start, end, c.Gamma, isothermal: true)
            / Vessel.VentTime(c.Start, end, c.Gamma, isothermal: false);
        Assert.Equal(c.Gamma, ratio, 1e-5);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Pressure_comes_back_from_filling_time(VesselCase c)
    {
        double start = 1 / c.Start;
        double end = start + (1 - start) * c.Fraction;
        foreach (bool isothermal in (bool[])[false, true])
        {
            double t = Vessel.FillTime(start, end, c.Gamma, isothermal);
            Assert.Equal(end, Vessel.PressureAfterFilling(t, start, c.Gamma, isothermal), 1e-12);
        }
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Inflow_comes_back_from_steady_vented_pressure(VesselCase c) =>
        Assert.Equal(c.Start, Vessel.SteadyPressureRatio(Vessel.SteadyFlow(c.Start, c.Gamma), c.Gamma), 1e-12 * c.Start);

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Friction_never_passes_more_than_a_nozzle_and_more_friction_passes_less(VesselCase c)
    {
        double r = 1 / c.Start;
        double flow = FannoFlow.TubeMassFlowFunction(r, c.Friction, c.Gamma);
        Assert.True(flow >= 0);
        Assert.True(flow <= IsentropicFlow.ThroatMassFlow(r, c.Gamma) * (1 + 1e-9));
        Assert.True(FannoFlow.TubeMassFlowFunction(r, 1.1 * c.Friction, c.Gamma) < flow);
        Assert.True(FannoFlow.TubeMassFlowFunction(0.99 * r, c.Friction, c.Gamma) >= flow * (1 - 1e-12));
    }
}
