using Staging.Core.Discharge;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Reviews;

/// <summary>Invented plans: the test stacks with the bench gap between their stages. They stand for nothing real.</summary>
internal static class TestPlans
{
    public static VentLayout Layout { get; } = new()
    {
        HoleCount = 4,
        WallThickness = Length.FromMillimeters(0.5),
        Land = Length.FromMillimeters(1),
        Drills = DrillSeries.MetricHalves,
    };

    /// <summary>A gap that lights: four 5 mm holes and a joint that holds.</summary>
    public static GapDesign Lighting { get; } = Bench.Design with { Vents = [Bench.Hole(Bench.Design.Tube, 5, 4)], Joint = Bench.Joint(60) };

    /// <summary>Two walls whose drawn holes are not those advised.</summary>
    public static GapDesign TwoWalls { get; } = Lighting with
    {
        Vents = [Lighting.Vents[0] with { To = VentTarget.IntoJacket("outer tube") }],
        Jackets =
        [
            Jacket.Between("outer tube", Length.FromMillimeters(19), Length.FromMillimeters(24), Length.FromMillimeters(100), new JacketOpening
            {
                Holes = new VentHoles { Diameter = Length.FromMillimeters(8), WallThickness = Length.FromMillimeters(0.5), Count = 4 },
                To = VentTarget.Air,
                Station = Length.FromMillimeters(200),
            }),
        ],
    };

    public static StagingPlan Through(GapDesign design, double coefficient = 0) =>
        Through(new GapIgnition { Design = design, Layout = Layout, HolePressureCoefficient = coefficient });

    public static StagingPlan Through(GapIgnition gap) => Of(TestFlights.TwoStages(new StageIgnition.ByGap { Gap = gap }));

    public static StagingPlan Of(FlightPlan flight) => new() { Name = "invented test plan", Flight = flight, SiteSize = Length.FromMeters(300) };
}
