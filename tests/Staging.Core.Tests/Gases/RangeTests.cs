using Staging.Core.Gases;

namespace Staging.Core.Tests.Gases;

/// <summary>At the ends of every stated range the answers are normal numbers, and what one way gives the other way takes.</summary>
public class RangeTests
{
    private const double Slowest = 1e-100;

    public static TheoryData<double> Gammas => [1.01, 1.0115, 1.013, 1.1, 1.4, 5.0 / 3, 3];

    [Theory]
    [MemberData(nameof(Gammas))]
    public void Isentropic_ratios_are_normal_up_to_the_greatest_Mach_number_and_lead_back(double gamma)
    {
        double M = Argument.MaxMachAt(gamma);
        AllNormal(IsentropicFlow.TemperatureRatio(M, gamma), IsentropicFlow.PressureRatio(M, gamma), IsentropicFlow.DensityRatio(M, gamma), IsentropicFlow.MassFlowFunction(M, gamma));
        Assert.Equal(M, IsentropicFlow.MachFromTemperatureRatio(IsentropicFlow.TemperatureRatio(M, gamma), gamma), 1e-9 * M);
        Assert.Equal(M, IsentropicFlow.MachFromPressureRatio(IsentropicFlow.PressureRatio(M, gamma), gamma), 1e-9 * M);
        Assert.Equal(M, IsentropicFlow.MachFromDensityRatio(IsentropicFlow.DensityRatio(M, gamma), gamma), 1e-9 * M);
        Refused("mach", () => IsentropicFlow.PressureRatio(M * 1.0001, gamma));
        Refused("temperatureRatio", () => IsentropicFlow.MachFromTemperatureRatio(0.999 * IsentropicFlow.TemperatureRatio(M, gamma), gamma));
        Refused("pressureRatio", () => IsentropicFlow.MachFromPressureRatio(0.999 * IsentropicFlow.PressureRatio(M, gamma), gamma));
        Refused("densityRatio", () => IsentropicFlow.MachFromDensityRatio(0.999 * IsentropicFlow.DensityRatio(M, gamma), gamma));
    }

    [Theory]
    [MemberData(nameof(Gammas))]
    public void Area_ratios_are_normal_at_both_ends_and_lead_back(double gamma)
    {
        double M = Argument.MaxMachAt(gamma), wide = IsentropicFlow.AreaRatio(M, gamma), still = IsentropicFlow.AreaRatio(Slowest, gamma);
        AllNormal(wide, still);
        Assert.Equal(M, IsentropicFlow.SupersonicMach(wide, gamma), 1e-9 * M);
        Assert.Equal(Slowest, IsentropicFlow.SubsonicMach(still, gamma), 1e-9 * Slowest);
        Refused("mach", () => IsentropicFlow.AreaRatio(M * 1.0001, gamma));
        Refused("mach", () => IsentropicFlow.AreaRatio(0.999 * Slowest, gamma));
        Refused("areaRatio", () => IsentropicFlow.SupersonicMach(1.001 * wide, gamma));
        Refused("areaRatio", () => IsentropicFlow.SubsonicMach(1.001 * still, gamma));
    }

    [Theory]
    [MemberData(nameof(Gammas))]
    public void Shock_ratios_are_normal_up_to_the_greatest_Mach_number_and_lead_back(double gamma)
    {
        double M = Argument.MaxMachAt(gamma), p21 = NormalShock.PressureRatio(M, gamma), u2 = NormalShock.GasSpeed(M, gamma);
        var r = NormalShock.Reflected(M, gamma);
        AllNormal(
            p21, u2, NormalShock.DownstreamMach(M, gamma), NormalShock.DensityRatio(M, gamma), NormalShock.StagnationPressureRatio(M, gamma),
            NormalShock.PitotRatio(M, gamma), NormalShock.EntropyRise(M, gamma), NormalShock.PistonPressureRatio(u2, gamma),
            NormalShock.SimpleWavePressureRatio(u2, gamma), r.TotalPressureRatio, r.TotalTemperatureRatio, r.ReflectedSpeed);
        Assert.Equal(M, NormalShock.MachFromPressureRatio(p21, gamma), 1e-12 * M);
        Assert.Equal(NormalShock.DensityRatio(M, gamma), NormalShock.HugoniotDensityRatio(p21, gamma), 1e-12 * p21);
        Assert.Equal(M, NormalShock.MachFromPistonSpeed(u2, gamma), 1e-12 * M);
        Refused("mach", () => NormalShock.PressureRatio(M * 1.0001, gamma));
        Refused("pressureRatio", () => NormalShock.MachFromPressureRatio(1.001 * p21, gamma));
        Refused("pressureRatio", () => NormalShock.HugoniotDensityRatio(1.001 * p21, gamma));
        Refused("pistonSpeed", () => NormalShock.MachFromPistonSpeed(1.001 * u2, gamma));
        Refused("pistonSpeed", () => NormalShock.PistonPressureRatio(1.001 * u2, gamma));
        Refused("pistonSpeed", () => NormalShock.SimpleWavePressureRatio(1.001 * u2, gamma));
    }

    [Theory]
    [MemberData(nameof(Gammas))]
    public void Friction_numbers_are_normal_at_both_ends_and_lead_back(double gamma)
    {
        double M = Argument.MaxMachAt(gamma), slow = FannoFlow.FrictionToSonic(Slowest, gamma), fast = FannoFlow.FrictionToSonic(M, gamma);
        AllNormal(
            slow, fast, FannoFlow.PressureRatio(Slowest, gamma), FannoFlow.DensityRatio(Slowest, gamma), FannoFlow.StagnationPressureRatio(Slowest, gamma),
            FannoFlow.PressureRatio(M, gamma), FannoFlow.StagnationPressureRatio(M, gamma), FannoFlow.ChokedFlowReduction(slow, gamma), FannoFlow.ChokedPressureRatio(slow, gamma));
        Assert.Equal(Slowest, FannoFlow.SubsonicMach(slow, gamma), 1e-9 * Slowest);
        // The friction number hardly moves at such a speed: dN/dM = 2/(gamma M^3) to a factor, so round-off of N costs M about gamma M^3 1e-16.
        Assert.Equal(M, FannoFlow.SupersonicMach(fast, gamma), 1e-14 * gamma * M * M * M + 1e-9 * M);
        Refused("friction", () => FannoFlow.SubsonicMach(1.001 * slow, gamma));
        Refused("friction", () => FannoFlow.SupersonicMach(1.001 * fast, gamma));
    }

    [Theory]
    [MemberData(nameof(Gammas))]
    public void A_shock_tube_answers_both_ways_up_to_the_same_ends(double gamma)
    {
        foreach (double soundSpeedRatio in (double[])[0.01, 0.5, 1, 100])
        {
            foreach (double driver in (double[])[1.01, 1.4, 3])
            {
                double Ms = StrongestAnswered(gamma, driver, soundSpeedRatio);
                double p41 = NormalShock.DriverPressureRatio(Ms, gamma, driver, soundSpeedRatio);
                AllNormal(Ms, p41);
                Assert.InRange(p41, 1, 1e12);
                Assert.Equal(p41, NormalShock.DriverPressureRatio(NormalShock.MachFromDriverPressureRatio(p41, gamma, driver, soundSpeedRatio), gamma, driver, soundSpeedRatio), 1e-6 * p41);
                Refused("driverPressureRatio", () => NormalShock.MachFromDriverPressureRatio(1.001e12, gamma, driver, soundSpeedRatio));
            }
        }
    }

    [Fact]
    public void A_steady_vent_takes_back_every_pressure_that_it_gives()
    {
        double p = Vessel.SteadyPressureRatio(1e6, 1.4);
        Assert.Equal(1e6, Vessel.SteadyFlow(p, 1.4), 1e-6);
        Refused("pressureRatio", () => Vessel.SteadyFlow(1.001 * p, 1.4));
    }

    [Fact]
    public void Riemann_problems_at_the_ends_of_their_range_are_finite()
    {
        double[] ends = [1e-75, 1, 1e75], speeds = [-1e75, 0, 1e75];
        foreach (double gamma in (double[])[1.01, 3])
        {
            FlowState[] states = [.. from rho in ends from u in speeds from p in ends select new FlowState(rho, u, p, gamma)];
            foreach (FlowState left in states)
            {
                foreach (FlowState right in states)
                {
                    RiemannSolution s = RiemannProblem.Solve(left, right with { Gamma = 1.4 });
                    Assert.True(
                        double.IsFinite(s.StarPressure) && double.IsFinite(s.ContactSpeed) && double.IsFinite(s.LeftStarDensity) && double.IsFinite(s.RightStarDensity)
                        && double.IsFinite(s.LeftHead) && double.IsFinite(s.LeftTail) && double.IsFinite(s.RightTail) && double.IsFinite(s.RightHead),
                        $"{left} {right} {s}");
                }
            }
        }
    }

    /// <summary>The greatest shock that is not refused: halved in on from 1.</summary>
    private static double StrongestAnswered(double gamma, double driver, double soundSpeedRatio)
    {
        double low = 1, high = Argument.MaxMachAt(gamma) * 1.01;
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            try
            {
                NormalShock.DriverPressureRatio(middle, gamma, driver, soundSpeedRatio);
                low = middle;
            }
            catch (ArgumentOutOfRangeException)
            {
                high = middle;
            }
        }

        return low;
    }

    private static void AllNormal(params double[] numbers) => Assert.All(numbers, x => Assert.True(double.IsNormal(x), $"{x} is not a normal number"));

    private static void Refused(string name, Func<double> call) => Assert.Equal(name, Assert.Throws<ArgumentOutOfRangeException>(() => call()).ParamName);
}
