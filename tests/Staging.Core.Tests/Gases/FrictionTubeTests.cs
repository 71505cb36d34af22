using Staging.Core.Gases;

namespace Staging.Core.Tests.Gases;

public class FrictionTubeTests
{
    [Theory]
    [InlineData(0.99, 1.4)]
    [InlineData(0.7, 1.25)]
    [InlineData(0.3, 1.4)]
    public void Without_friction_it_is_an_ideal_nozzle(double r, double gamma) =>
        Assert.Equal(1, FannoFlow.TubeMassFlowFunction(r, 0, gamma) / IsentropicFlow.ThroatMassFlow(r, gamma), 1e-12);

    [Theory]
    [InlineData(0.5)]
    [InlineData(5)]
    [InlineData(50)]
    public void A_small_difference_gives_the_incompressible_flow(double N)
    {
        const double r = 1 - 1e-6;
        double incompressible = Math.Sqrt(2 * (1 - r) / (1 + N));
        Assert.Equal(1, FannoFlow.TubeMassFlowFunction(r, N, 1.4) / incompressible, 1e-5);
    }

    [Theory]
    [InlineData(1.4, 2)]
    [InlineData(1.14, 0.3)]
    public void Flow_is_continuous_where_the_tube_chokes_and_constant_below(double gamma, double N)
    {
        double r = FannoFlow.ChokedPressureRatio(N, gamma);
        double choked = FannoFlow.TubeMassFlowFunction(r, N, gamma);
        Assert.Equal(1, FannoFlow.TubeMassFlowFunction(r + 1e-9, N, gamma) / choked, 1e-8);
        Assert.Equal(choked, FannoFlow.TubeMassFlowFunction(0, N, gamma));
        Assert.Equal(FannoFlow.ChokedFlowReduction(N, gamma) * IsentropicFlow.CriticalFlowFactor(gamma), choked, 1e-13);
    }

    [Theory]
    [InlineData(1.4, 2, 0.8)]
    [InlineData(1.14, 0.7, 0.65)]
    public void Stepping_the_differential_equation_along_the_tube_gives_the_same_exit_pressure(double gamma, double N, double r)
    {
        // Shapiro's influence coefficient: dM^2/dN = gamma M^4 (1 + (gamma - 1)/2 M^2)/(1 - M^2), by classical Runge-Kutta.
        double flow = FannoFlow.TubeMassFlowFunction(r, N, gamma);
        double M1 = IsentropicFlow.SubsonicMach(IsentropicFlow.CriticalFlowFactor(gamma) / flow, gamma);
        double m = M1 * M1;
        const int steps = 4000;
        double h = N / steps;
        for (int i = 0; i < steps; i++)
        {
            double k1 = Slope(m);
            double k2 = Slope(m + h / 2 * k1);
            double k3 = Slope(m + h / 2 * k2);
            double k4 = Slope(m + h * k3);
            m += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }

        // Mass flow and stagnation temperature are kept: p = (flow/M) sqrt(T/T0)/sqrt(gamma).
        double exit = flow / Math.Sqrt(gamma * m * (1 + (gamma - 1) / 2 * m));
        Assert.Equal(r, exit, 1e-9);

        double Slope(double q) => gamma * q * q * (1 + (gamma - 1) / 2 * q) / (1 - q);
    }

    [Fact]
    public void A_sonic_flow_needs_no_friction_and_ratios_to_it_are_one()
    {
        Assert.Equal(0, FannoFlow.FrictionToSonic(1, 1.4));
        Assert.Equal(1, FannoFlow.SubsonicMach(0, 1.4));
        Assert.Equal(1, FannoFlow.SupersonicMach(0, 1.4));
        Assert.Equal(1, FannoFlow.TemperatureRatio(1, 1.4), 1e-15);
        Assert.Equal(1, FannoFlow.PressureRatio(1, 1.4), 1e-15);
        Assert.Equal(1, FannoFlow.DensityRatio(1, 1.4), 1e-15);
        Assert.Equal(1, FannoFlow.StagnationPressureRatio(1, 1.4), 1e-15);
    }

    [Fact]
    public void More_friction_than_a_supersonic_flow_can_take_is_refused()
    {
        // Limit for M to infinity: (gamma + 1)/(2 gamma) ln((gamma + 1)/(gamma - 1)) - 1/gamma = 0.8215 for gamma 1.4.
        Assert.Equal(0.8215, FannoFlow.FrictionToSonic(1000, 1.4), 1e-4);
        Assert.Throws<ArgumentOutOfRangeException>(() => FannoFlow.SupersonicMach(0.83, 1.4));
    }
}
