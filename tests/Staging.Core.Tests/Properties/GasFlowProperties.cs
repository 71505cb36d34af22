using FsCheck.Xunit;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Properties;

public class GasFlowProperties
{
    private const double RoundOff = 1e-12;

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Mach_comes_back_from_every_isentropic_ratio(FlowCase c)
    {
        double M = c.Supersonic;
        Near(M, IsentropicFlow.MachFromTemperatureRatio(IsentropicFlow.TemperatureRatio(M, c.Gamma), c.Gamma));
        Near(M, IsentropicFlow.MachFromPressureRatio(IsentropicFlow.PressureRatio(M, c.Gamma), c.Gamma));
        Near(M, IsentropicFlow.MachFromDensityRatio(IsentropicFlow.DensityRatio(M, c.Gamma), c.Gamma));
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Ratios_come_back_from_the_Mach_number_at_every_speed(FlowCase c)
    {
        double r = IsentropicFlow.PressureRatio(c.Subsonic, c.Gamma);
        Near(r, IsentropicFlow.PressureRatio(IsentropicFlow.MachFromPressureRatio(r, c.Gamma), c.Gamma));
        double d = IsentropicFlow.DensityRatio(c.Subsonic, c.Gamma);
        Near(d, IsentropicFlow.DensityRatio(IsentropicFlow.MachFromDensityRatio(d, c.Gamma), c.Gamma));
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void State_obeys_the_gas_law_and_the_isentrope(FlowCase c)
    {
        foreach (double M in new[] { c.Subsonic, c.Supersonic })
        {
            double p = IsentropicFlow.PressureRatio(M, c.Gamma);
            double rho = IsentropicFlow.DensityRatio(M, c.Gamma);
            Near(p, rho * IsentropicFlow.TemperatureRatio(M, c.Gamma));
            Near(1, p / Math.Pow(rho, c.Gamma));
        }
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 500)]
    public void Area_ratio_is_one_or_more_and_comes_back_on_both_branches(FlowCase c)
    {
        double below = IsentropicFlow.AreaRatio(c.Subsonic, c.Gamma);
        double above = IsentropicFlow.AreaRatio(c.Supersonic, c.Gamma);
        Assert.True(below >= 1 && above >= 1);
        double M_below = IsentropicFlow.SubsonicMach(below, c.Gamma);
        Assert.True(M_below <= 1);
        Near(below, IsentropicFlow.AreaRatio(M_below, c.Gamma));
        if (above > 1e12)
            return;
        double M_above = IsentropicFlow.SupersonicMach(above, c.Gamma);
        Assert.True(M_above >= 1);
        Assert.Equal(1, IsentropicFlow.AreaRatio(M_above, c.Gamma) / above, 1e-11);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Mass_flow_by_area_and_by_pressure_agree(FlowCase c)
    {
        double flow = IsentropicFlow.MassFlowFunction(c.Subsonic, c.Gamma);
        Near(IsentropicFlow.CriticalFlowFactor(c.Gamma), flow * IsentropicFlow.AreaRatio(c.Subsonic, c.Gamma));
        double pressureError = 1e-15 / (c.Subsonic * c.Subsonic);
        double byPressure = IsentropicFlow.ThroatMassFlow(IsentropicFlow.PressureRatio(c.Subsonic, c.Gamma), c.Gamma);
        Assert.Equal(1, byPressure / flow, RoundOff + 10 * pressureError);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 500)]
    public void Entropy_never_falls_across_a_shock_and_total_temperature_is_kept(FlowCase c)
    {
        double M1 = c.Supersonic;
        double M2 = NormalShock.DownstreamMach(M1, c.Gamma);
        Assert.True(NormalShock.EntropyRise(M1, c.Gamma) >= 0);
        Assert.True(NormalShock.StagnationPressureRatio(M1, c.Gamma) <= 1);
        Assert.True(M2 <= 1);
        double total = IsentropicFlow.TemperatureRatio(M1, c.Gamma) / IsentropicFlow.TemperatureRatio(M2, c.Gamma);
        Near(1, NormalShock.TemperatureRatio(M1, c.Gamma) * total);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Mass_and_momentum_are_kept_across_a_shock(FlowCase c)
    {
        double M1 = c.Supersonic;
        double M2 = NormalShock.DownstreamMach(M1, c.Gamma);
        double p = NormalShock.PressureRatio(M1, c.Gamma);
        double rho = NormalShock.DensityRatio(M1, c.Gamma);
        Near(M1, M2 * Math.Sqrt(p * rho));
        Near(1 + c.Gamma * M1 * M1, p * (1 + c.Gamma * M2 * M2));
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Shock_strength_comes_back_from_its_pressure_and_piston_speed(FlowCase c)
    {
        double p = NormalShock.PressureRatio(c.Supersonic, c.Gamma);
        Near(c.Supersonic, NormalShock.MachFromPressureRatio(p, c.Gamma));
        Near(c.Supersonic, NormalShock.MachFromPistonSpeed(NormalShock.GasSpeed(c.Supersonic, c.Gamma), c.Gamma));
        Near(NormalShock.DensityRatio(c.Supersonic, c.Gamma), NormalShock.HugoniotDensityRatio(p, c.Gamma));
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void A_reflected_shock_brings_the_gas_to_rest(FlowCase c)
    {
        var r = NormalShock.Reflected(c.Supersonic, c.Gamma);
        double a2 = Math.Sqrt(NormalShock.TemperatureRatio(c.Supersonic, c.Gamma));
        double stopped = a2 * NormalShock.GasSpeed(r.ReflectedMach, c.Gamma);
        Assert.Equal(NormalShock.GasSpeed(c.Supersonic, c.Gamma), stopped, 1e-11 * Math.Max(1, stopped));
        Assert.True(r.ReflectedPressureRatio <= (3 * c.Gamma - 1) / (c.Gamma - 1));
        Assert.True(r.ReflectedPressureRatio <= NormalShock.PressureRatio(c.Supersonic, c.Gamma) * (1 + RoundOff));
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Friction_number_comes_back_on_both_branches(FlowCase c)
    {
        double below = FannoFlow.FrictionToSonic(c.Subsonic, c.Gamma);
        double above = FannoFlow.FrictionToSonic(c.Supersonic, c.Gamma);
        // The Mach number comes back through a sum, a root and a quotient: right to two units in the last place. The friction number answers
        // with its slope, 2 (1 - M2)/(g M3 (1 + (g-1)/2 M2)), large beside the number itself near Mach 1.
        double M = c.Subsonic, m2 = M * M;
        double slope = 2 * (1 - m2) / (c.Gamma * m2 * M * (1 + 0.5 * (c.Gamma - 1) * m2));
        double slack = RoundOff * below + 2 * (Math.BitIncrement(M) - M) * slope;
        Assert.Equal(below, FannoFlow.FrictionToSonic(FannoFlow.SubsonicMach(below, c.Gamma), c.Gamma), slack);
        Assert.Equal(above, FannoFlow.FrictionToSonic(FannoFlow.SupersonicMach(above, c.Gamma), c.Gamma), 1e-11 * above);
        Assert.True(below >= 0 && above >= 0);
    }

    private static void Near(double expected, double ours) =>
        Assert.Equal(expected, ours, RoundOff * Math.Abs(expected));
}
