using FsCheck.Xunit;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Properties;

public class GasRiemannProperties
{
    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 1000)]
    public void Both_sides_meet_at_one_pressure_and_one_velocity(RiemannCase c)
    {
        RiemannSolution s = RiemannProblem.Solve(c.Left, c.Right);
        if (s.VacuumOpens)
        {
            Assert.True(c.Right.Velocity - c.Left.Velocity >= Reach(c.Left) + Reach(c.Right));
            Assert.Equal(0, s.StarPressure);
            Assert.True(s.LeftHead < s.LeftTail && s.LeftTail <= s.RightTail && s.RightTail < s.RightHead);
            return;
        }

        Assert.True(s.StarPressure > 0 && double.IsFinite(s.StarPressure));
        Assert.True(s.LeftStarDensity > 0 && s.RightStarDensity > 0);
        double scale = Scale(c);
        Assert.Equal(s.ContactSpeed, c.Left.Velocity - Change(c.Left, s.StarPressure), 1e-11 * scale);
        Assert.Equal(s.ContactSpeed, c.Right.Velocity + Change(c.Right, s.StarPressure), 1e-11 * scale);
        double slack = 1e-12 * scale;
        Assert.True(s.LeftHead <= s.LeftTail + slack && s.LeftTail <= s.ContactSpeed + slack);
        Assert.True(s.ContactSpeed <= s.RightTail + slack && s.RightTail <= s.RightHead + slack);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 500)]
    public void Star_pressure_lies_where_the_signs_say(RiemannCase c)
    {
        RiemannSolution s = RiemannProblem.Solve(c.Left, c.Right);
        double min = Math.Min(c.Left.Pressure, c.Right.Pressure);
        double most = Math.Max(c.Left.Pressure, c.Right.Pressure);
        double du = c.Right.Velocity - c.Left.Velocity;
        double atLeast = Change(c.Left, min) + Change(c.Right, min) + du;
        double atMost = Change(c.Left, most) + Change(c.Right, most) + du;
        double noise = 1e-12 * Scale(c);
        if (atLeast > noise)
            Assert.True(s.StarPressure <= min);
        else if (atMost < -noise)
            Assert.True(s.StarPressure >= most);
        else
            Assert.InRange(s.StarPressure, min * (1 - 1e-6), most * (1 + 1e-6));
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 500)]
    public void A_mirror_swaps_the_sides_and_nothing_else(RiemannCase c)
    {
        RiemannSolution s = RiemannProblem.Solve(c.Left, c.Right);
        RiemannSolution m = RiemannProblem.Solve(Mirrored(c.Right), Mirrored(c.Left));
        double scale = Scale(c);
        Assert.Equal(s.VacuumOpens, m.VacuumOpens);
        Assert.Equal(s.StarPressure, m.StarPressure, PressureSlack(c, s));
        Assert.Equal(s.ContactSpeed, -m.ContactSpeed, 1e-11 * scale);
        Assert.Equal(s.LeftHead, -m.RightHead, 1e-11 * scale);
        Assert.Equal(s.RightHead, -m.LeftHead, 1e-11 * scale);
        foreach (double x in Rays(s))
        {
            FlowState a = s.Sample(x);
            FlowState b = m.Sample(-x);
            Assert.Equal(a.Velocity, -b.Velocity, 1e-8 * scale);
            Assert.Equal(a.Pressure, b.Pressure, 1e-7 * Math.Max(a.Pressure, s.StarPressure));
        }
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 500)]
    public void A_Galilean_shift_moves_every_wave_and_changes_no_pressure(RiemannCase c)
    {
        double shift = 0.7 * Scale(c);
        RiemannSolution s = RiemannProblem.Solve(c.Left, c.Right);
        RiemannSolution g = RiemannProblem.Solve(
            c.Left with { Velocity = c.Left.Velocity + shift }, c.Right with { Velocity = c.Right.Velocity + shift });
        if (s.VacuumOpens != g.VacuumOpens)
            return;
        double scale = Scale(c);
        Assert.Equal(s.StarPressure, g.StarPressure, PressureSlack(c, s));
        Assert.Equal(s.ContactSpeed + shift, g.ContactSpeed, 1e-10 * scale);
        Assert.Equal(s.LeftHead + shift, g.LeftHead, 1e-10 * scale);
        Assert.Equal(s.RightHead + shift, g.RightHead, 1e-10 * scale);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Units_do_not_matter(RiemannCase c)
    {
        const double Pressure = 101325, Density = 1.2;
        double speed = Math.Sqrt(Pressure / Density);
        RiemannSolution s = RiemannProblem.Solve(c.Left, c.Right);
        RiemannSolution si = RiemannProblem.Solve(Scaled(c.Left), Scaled(c.Right));
        if (s.VacuumOpens != si.VacuumOpens)
            return;
        Assert.Equal(s.StarPressure, si.StarPressure / Pressure, PressureSlack(c, s));
        Assert.Equal(s.ContactSpeed, si.ContactSpeed / speed, 1e-10 * Scale(c));

        FlowState Scaled(FlowState k) => new(k.Density * Density, k.Velocity * speed, k.Pressure * Pressure, k.Gamma);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Samples_are_continuous_through_fans_and_keep_the_entropy_of_their_side(RiemannCase c)
    {
        RiemannSolution s = RiemannProblem.Solve(c.Left, c.Right);
        foreach (double x in Rays(s))
        {
            FlowState q = s.Sample(x);
            Assert.True(q.Density >= 0 && q.Pressure >= 0 && double.IsFinite(q.Velocity));
        }

        if (s.LeftIsShock || s.VacuumOpens)
            return;
        double middle = 0.5 * (s.LeftHead + s.LeftTail);
        FlowState fan = s.Sample(middle);
        Assert.Equal(0, Math.Log(fan.Pressure / c.Left.Pressure) - c.Left.Gamma * Math.Log(fan.Density / c.Left.Density), 1e-9);
        Assert.Equal(middle, fan.Velocity - fan.SoundSpeed, 1e-11 * Scale(c));
        FlowState tail = s.Sample(s.LeftTail - 1e-12 * Scale(c));
        Assert.Equal(s.ContactSpeed, tail.Velocity, 1e-9 * Scale(c));
    }

    /// <summary>Toro (2009) equations 4.6 and 4.7, written once more and independently of the solver.</summary>
    private static double Change(FlowState k, double p)
    {
        double g = k.Gamma;
        if (p > k.Pressure)
        {
            double M = Math.Sqrt(1 + (g + 1) / (2 * g) * (p / k.Pressure - 1));
            return 2 * k.SoundSpeed / (g + 1) * (M - 1 / M);
        }

        return Reach(k) * (Math.Pow(p / k.Pressure, (g - 1) / (2 * g)) - 1);
    }

    private static double Reach(FlowState k) => 2 * k.SoundSpeed / (k.Gamma - 1);

    private static double Scale(RiemannCase c) =>
        Math.Max(Math.Max(Reach(c.Left), Reach(c.Right)), Math.Max(Math.Abs(c.Left.Velocity), Math.Abs(c.Right.Velocity)));

    /// <summary>Round-off of the velocities, carried to the star pressure through the slope of the side that gives more.</summary>
    private static double PressureSlack(RiemannCase c, RiemannSolution s)
    {
        if (s.VacuumOpens)
            return 0;
        double p = s.StarPressure;
        double h = 1e-4 * p;
        double slope = (Change(c.Left, p + h) - Change(c.Left, p - h) + Change(c.Right, p + h) - Change(c.Right, p - h)) / (2 * h);
        return 1e-11 * p + 1e-14 * Scale(c) / slope;
    }

    private static FlowState Mirrored(FlowState k) => k with { Velocity = -k.Velocity };

    private static IEnumerable<double> Rays(RiemannSolution s)
    {
        double span = s.RightHead - s.LeftHead;
        for (int i = -2; i <= 22; i++)
            yield return s.LeftHead + span * (i + 0.01234) / 20;
    }
}
