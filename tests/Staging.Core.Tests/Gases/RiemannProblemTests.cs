using Staging.Core.Gases;

namespace Staging.Core.Tests.Gases;

public class RiemannProblemTests
{
    private static readonly FlowState SodLeft = new(1, 0, 1, 1.4);
    private static readonly FlowState SodRight = new(0.125, 0, 0.1, 1.4);

    [Fact]
    public void Equal_states_stay_as_they_are()
    {
        var state = new FlowState(1.2, 30, 101325, 1.4);
        RiemannSolution s = RiemannProblem.Solve(state, state);
        Assert.Equal(state.Pressure, s.StarPressure);
        Assert.Equal(state.Velocity, s.ContactSpeed);
        Assert.Equal(state.Density, s.LeftStarDensity);
        Assert.Equal(state, s.Sample(0));
    }

    [Fact]
    public void A_contact_between_two_gases_at_one_pressure_just_drifts()
    {
        RiemannSolution s = RiemannProblem.Solve(new FlowState(0.18, 12, 2e5, 1.14), new FlowState(2.4, 12, 2e5, 1.4));
        Assert.Equal(2e5, s.StarPressure, 1e-9);
        Assert.Equal(12, s.ContactSpeed, 1e-12);
        Assert.Equal(0.18, s.Sample(11.9).Density, 1e-15);
        Assert.Equal(2.4, s.Sample(12.1).Density, 1e-14);
        Assert.Equal(1.14, s.Sample(11.9).Gamma);
        Assert.Equal(1.4, s.Sample(12.1).Gamma);
    }

    [Fact]
    public void Gases_that_part_fast_enough_leave_a_vacuum()
    {
        RiemannSolution s = RiemannProblem.Solve(new FlowState(1, -6, 1, 1.4), new FlowState(1, 6, 1, 1.4));
        Assert.True(s.VacuumOpens);
        Assert.Equal(0, s.StarPressure);
        Assert.Equal(-6 + 5 * Math.Sqrt(1.4), s.LeftTail, 1e-14);
        Assert.Equal(6 - 5 * Math.Sqrt(1.4), s.RightTail, 1e-14);
        FlowState empty = s.Sample(0.01);
        Assert.Equal(new FlowState(0, 0.01, 0, 1.4), empty);
        Assert.Equal(0, empty.SoundSpeed);
        Assert.Equal(0, s.Sample(s.LeftTail - 1e-9).Density, 1e-12);
    }

    [Theory]
    [InlineData(1.4, 1.4)]
    [InlineData(1.14, 1.4)]
    [InlineData(1.05, 5.0 / 3)]
    public void Just_short_of_a_vacuum_the_solution_is_still_found(double gL, double gR)
    {
        var left = new FlowState(1, 0, 1, gL);
        var right = new FlowState(0.5, 0, 2, gR);
        double limit = 2 * left.SoundSpeed / (gL - 1) + 2 * right.SoundSpeed / (gR - 1);
        foreach (double share in new[] { 0.9, 0.99, 0.999, 0.999999, 1 - 1e-12 })
        {
            RiemannSolution s = RiemannProblem.Solve(left, right with { Velocity = share * limit });
            Assert.True(share > 0.9999999 || (!s.VacuumOpens && s.StarPressure > 0));
            Assert.True(s.StarPressure >= 0 && double.IsFinite(s.ContactSpeed));
            Assert.True(s.LeftTail <= s.RightTail + 1e-12 * limit);
            Assert.True(double.IsFinite(s.Sample(s.ContactSpeed).Density));
        }

        Assert.True(RiemannProblem.Solve(left, right with { Velocity = 1.0000001 * limit }).VacuumOpens);
    }

    [Fact]
    public void A_violent_collision_and_an_enormous_pressure_ratio_are_solved()
    {
        RiemannSolution collision = RiemannProblem.Solve(new FlowState(1, 1e5, 1e-3, 1.4), new FlowState(1, -1e5, 1e-3, 1.4));
        Assert.Equal(1.2e10, collision.StarPressure, 1e-9 * 1.2e10);
        Assert.Equal(6, collision.LeftStarDensity, 1e-9);
        RiemannSolution burst = RiemannProblem.Solve(new FlowState(1, 0, 1e12, 1.3), new FlowState(1, 0, 1e-12, 1.4));
        Assert.True(burst.RightIsShock && !burst.LeftIsShock);
        Assert.True(double.IsFinite(burst.StarPressure));
    }

    [Fact]
    public void Sampling_knows_every_region_of_Sods_problem()
    {
        RiemannSolution s = RiemannProblem.Solve(SodLeft, SodRight);
        Assert.Equal(SodLeft, s.Sample(-2));
        Assert.Equal(SodRight, s.Sample(2));
        Assert.False(s.LeftIsShock);
        Assert.True(s.RightIsShock);
        Assert.Equal(s.LeftStarDensity, s.Sample(0.5).Density);
        Assert.Equal(s.RightStarDensity, s.Sample(s.ContactSpeed).Density);
        Assert.Equal(s.RightStarDensity, s.Sample(1.5).Density);
        FlowState fan = s.Sample(-0.5);
        Assert.Equal(-0.5, fan.Velocity - fan.SoundSpeed, 1e-14);
        Assert.Equal(SodLeft.SoundSpeed, 0.2 * fan.Velocity + fan.SoundSpeed, 1e-14);
    }

    [Fact]
    public void Solving_and_sampling_allocate_nothing()
    {
        double sum = 0;
        Assert.Equal(0, Allocated.By(() =>
        {
            for (int i = 0; i < 100; i++)
            {
                RiemannSolution s = RiemannProblem.Solve(SodLeft with { Velocity = 0.01 * i }, SodRight);
                sum += s.Sample(0.1).Density;
            }
        }));
        Assert.True(sum > 0);
    }

    [Theory]
    [InlineData(0, 0, 1, 1.4, "Density")]
    [InlineData(1, double.NaN, 1, 1.4, "Velocity")]
    [InlineData(1, 0, -1, 1.4, "Pressure")]
    [InlineData(1, 0, 1, 1, "Gamma")]
    public void Impossible_states_are_refused_by_name(double rho, double u, double p, double gamma, string name)
    {
        var bad = new FlowState(rho, u, p, gamma);
        Assert.Contains(name, Assert.Throws<ArgumentOutOfRangeException>(() => RiemannProblem.Solve(bad, SodRight)).ParamName, StringComparison.Ordinal);
        Assert.Contains(name, Assert.Throws<ArgumentOutOfRangeException>(() => RiemannProblem.Solve(SodLeft, bad)).ParamName, StringComparison.Ordinal);
    }
}
