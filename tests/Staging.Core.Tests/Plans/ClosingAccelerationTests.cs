using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Plans;

/// <summary>
/// Flight forces press the stages together as far as what is ahead is slowed more, or what is behind pushed more, than the other: Newton's
/// second law for both bodies apart.
/// </summary>
public class ClosingAccelerationTests
{
    [Theory]
    [InlineData(0.9, 0, 0, 15)]       // drag ahead: 0.9 N on 60 g
    [InlineData(0, 0.4, 0, -10)]      // drag behind pulls the booster off: 0.4 N on 40 g
    [InlineData(0, 0, 1.2, 30)]       // thrust behind pushes it on: 1.2 N on 40 g
    [InlineData(0.9, 0.4, 1.2, 35)]
    [InlineData(0.6, 0.4, 0, 0)]      // equally slowed, the two neither close nor part
    public void Drag_and_thrust_on_each_body_add_up_with_their_signs(double ahead, double behind, double thrust, double expected)
    {
        BurnThroughState state = State() with
        {
            DragAhead = Force.FromNewtons(ahead),
            DragBehind = Force.FromNewtons(behind),
            ThrustBehind = Force.FromNewtons(thrust),
        };
        Assert.Equal(expected, Gap.ProblemAt(state).Bodies.ClosingAcceleration.MetersPerSecondSquared, 1e-12);
    }

    [Fact]
    public void A_gap_sees_no_more_of_an_absurd_flight_than_it_takes()
    {
        GapProblem gap = Gap.ProblemAt(State() with { ThrustBehind = Force.FromMeganewtons(6), Speed = Speed.FromKilometersPerSecond(50) });
        Assert.Equal(1e5, gap.Bodies.ClosingAcceleration.MetersPerSecondSquared, 1e-9);
        Assert.Equal(1e6, gap.DynamicPressure.Pascals, 1e-6);
        Assert.Equal(-1e5, Gap.ProblemAt(State() with { DragBehind = Force.FromMeganewtons(6) }).Bodies.ClosingAcceleration.MetersPerSecondSquared, 1e-9);
    }

    [Fact]
    public void A_gap_weighs_no_more_and_no_less_of_an_absurd_stack_than_it_takes()
    {
        SeparatingBodies bodies = Gap.ProblemAt(State() with { MassAhead = Mass.FromKilograms(3e6), MassBehind = Mass.FromMilligrams(1) }).Bodies;
        Assert.Equal(200_000, bodies.MassAhead.Kilograms, 1e-9);
        Assert.Equal(0.001, bodies.MassBehind.Kilograms, 1e-15);
    }

    private static GapIgnition Gap => new() { Design = TestPlans.Lighting, Layout = TestPlans.Layout, HolePressureCoefficient = 0 };

    private static BurnThroughState State() => new()
    {
        LowerStage = "booster",
        UpperStage = "sustainer",
        Time = Duration.FromSeconds(1),
        Height = Length.FromMeters(30),
        Speed = Speed.FromMetersPerSecond(40),
        MachNumber = 0.12,
        AirPressure = Pressure.FromKilopascals(100),
        AirTemperature = Temperature.FromKelvins(288),
        AirDensity = Density.FromKilogramsPerCubicMeter(1.2),
        MassAhead = Mass.FromGrams(60),
        MassBehind = Mass.FromGrams(40),
        DragAhead = Force.Zero,
        DragBehind = Force.Zero,
        ThrustBehind = Force.Zero,
    };
}
