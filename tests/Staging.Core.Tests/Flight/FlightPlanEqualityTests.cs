using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

/// <summary>Plans and airframes are equal by value, down to the last point of a curve.</summary>
public class FlightPlanEqualityTests
{
    private static readonly double[] Time = [0, 0.1, 0.9], Thrust = [0, 12, 3];

    /// <summary>One changed leaf each, from the top of a plan to the points of its curves.</summary>
    public static TheoryData<string> Leaves => [.. Changes.Keys];

    private static Dictionary<string, Func<FlightPlan, FlightPlan>> Changes { get; } = new()
    {
        ["payload"] = p => p with { Payload = Mass.FromGrams(1) },
        ["guide"] = p => p with { Guide = p.Guide with { FrictionCoefficient = 0.1 } },
        ["wind"] = p => p with { Site = p.Site with { Wind = Speed.FromMetersPerSecond(5) } },
        ["gravity"] = p => p with { Site = p.Site with { Gravity = p.Site.Gravity with { Radius = null } } },
        ["humidity"] = p => p with { Site = p.Site with { Atmosphere = Air(0.4) } },
        ["count of stages"] = p => p with { Stages = [p.Stages[0]] },
        ["order of stages"] = p => p with { Stages = [p.Stages[1], p.Stages[0]] },
        ["name"] = p => Upper(p, s => s with { Name = "other" }),
        ["recovery"] = p => Upper(p, s => s with { Recovery = Recovery.Ballistic }),
        ["ignition"] = p => Upper(p, s => s with { Ignition = Timer(0.6) }),
        ["guards"] = p => Upper(p, s => s with { Ignition = Timer(0.5, new ElectronicsGuards { MinHeight = Length.FromMeters(1) }) }),
        ["drag"] = p => Upper(p, s => s with { Drag = DragTable.FromColumns(Area.FromSquareMeters(5e-4), [0, 1, 2], [0.5, 0.8, 0.61]) }),
        ["drag area"] = p => Upper(p, s => s with { Drag = DragTable.FromColumns(Area.FromSquareMeters(6e-4), [0, 1, 2], [0.5, 0.8, 0.6]) }),
        ["forward end"] = p => Upper(p, s => s with { Motor = s.Motor with { ForwardEnd = new MotorForwardEnd.Plugged() } }),
        ["provenance"] = p => Upper(p, s => s with { Motor = s.Motor with { Provenance = s.Motor.Provenance with { Locator = "page 2" } } }),
        ["a thrust"] = p => Upper(p, s => s with { Motor = s.Motor with { Thrust = ThrustHistory.FromColumns(Time, [0, 12, 3.1]) } }),
        ["a time"] = p => Upper(p, s => s with { Motor = s.Motor with { Thrust = ThrustHistory.FromColumns([0, 0.1, 0.91], Thrust) } }),
        ["motors beside"] = p => Upper(p, s => s with { ParallelMotors = [s.ParallelMotors[0] with { Count = 3 }] }),
    };

    [Fact]
    public void Two_plans_built_alike_are_equal()
    {
        FlightPlan one = Build(), other = Build();
        Assert.NotSame(one, other);
        Assert.Equal(one, other);
        Assert.Equal(one.GetHashCode(), other.GetHashCode());
    }

    [Theory]
    [MemberData(nameof(Leaves))]
    public void One_changed_leaf_makes_a_plan_another(string leaf)
    {
        FlightPlan changed = Changes[leaf](Build());
        Assert.NotEqual(Build(), changed);
        Assert.Equal(Changes[leaf](Build()), changed);
        Assert.NotEqual(Build().GetHashCode(), changed.GetHashCode());
    }

    [Fact]
    public void Airframes_are_equal_by_their_parts()
    {
        Airframe again = TestAirframes.Upper with { Body = [.. TestAirframes.Upper.Body], Fins = [TestAirframes.Upper.Fins[0] with { }] };
        Assert.Equal(TestAirframes.Upper, again);
        Assert.Equal(TestAirframes.Upper.GetHashCode(), again.GetHashCode());
        Assert.NotEqual(TestAirframes.Upper, again with { Fins = [again.Fins[0] with { Count = 4 }] });
        Assert.NotEqual(TestAirframes.Upper, again with { Body = [again.Body[0], again.Body[0]] });
        Assert.Equal(TestAirframes.Stack, TestAirframes.Stack with { Airframes = [.. TestAirframes.Stack.Airframes] });
        Assert.NotEqual(TestAirframes.Stack, TestAirframes.Stack with { Balance = [.. TestAirframes.Stack.Balance.Reverse()] });
    }

    private static FlightPlan Upper(FlightPlan plan, Func<Stage, Stage> change) => plan with { Stages = [plan.Stages[0], change(plan.Stages[1])] };

    private static SiteAtmosphere Air(double humidity) => new(new SiteConditions
    {
        Elevation = Length.FromMeters(200),
        Pressure = Pressure.FromHectopascals(990),
        Temperature = Temperature.FromKelvins(290),
        RelativeHumidity = humidity,
    });

    /// <summary>Everything made anew, so that nothing is equal for being the same object.</summary>
    private static FlightPlan Build()
    {
        Motor Fresh(MotorForwardEnd end) => Motor(end, ThrustHistory.FromColumns(Time, Thrust)) with { Provenance = Invented with { } };
        DragTable Table() => DragTable.FromColumns(Area.FromSquareMeters(5e-4), [0, 1, 2], [0.5, 0.8, 0.6]);
        FlightPlan plan = Plan(
            Booster() with { Motor = Fresh(new MotorForwardEnd.BurnsThrough()), Drag = Table(), DragWhileBurning = Table() },
            Sustainer(Timer(0.5, new ElectronicsGuards { MinHeight = Length.FromMeters(20) })) with
            {
                Motor = Fresh(new MotorForwardEnd.Ejects { Delay = Seconds(4) }),
                ParallelMotors = [new MotorGroup { Motor = Fresh(new MotorForwardEnd.Plugged()), Count = 2 }],
                Drag = Table(),
            });
        return plan with { Site = plan.Site with { Atmosphere = Air(0.5) } };
    }
}
