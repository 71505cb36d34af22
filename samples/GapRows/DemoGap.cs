using Staging.Core.Discharge;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using UnitsNet;

namespace GapRows;

/// <summary>
/// The gap of the demo plan at the moment of burn-through in flight, and the same with another tube and other vents.
/// </summary>
internal static class DemoGap
{
    /// <summary>Material left between the upper edge of the holes and the nozzle plane.</summary>
    private static readonly Length Land = Length.FromMillimeters(1);

    public static GapProblem AsBuilt { get; } = AtBurnThrough();

    /// <summary>Another length and other vents; motors, grain, joint, bodies and air stay.</summary>
    public static GapProblem With(double length_mm, Func<GuideTube, IEnumerable<Vent>> vents) => AsBuilt.With(design =>
    {
        GuideTube tube = design.Tube with { Length = Length.FromMillimeters(length_mm) };
        return design with { Tube = tube, Vents = [.. vents(tube)] };
    });

    public static GapProblem With(this GapProblem problem, Func<GapDesign, GapDesign> change) =>
        problem with { Design = change(problem.Design) };

    public static GapProblem WithJoint(this GapProblem problem, double newtons) => problem.With(d => d with
    {
        Joint = d.Joint.Coupler with { BreakawayForce = Force.FromNewtons(newtons), SlidingForce = Force.FromNewtons(0.8 * newtons) },
    });

    /// <summary>Holes directly below the nozzle.</summary>
    public static Vent Below(GuideTube tube, double diameter_mm, int count) => Vent.BelowNozzle(tube, Holes(diameter_mm, count), Land);

    /// <summary>
    /// An open side: rings of four 10 mm holes, 23 mm apart, from the nozzle down to the middle of the tube.
    /// </summary>
    public static IEnumerable<Vent> OpenSide(GuideTube tube)
    {
        Vent top = Below(tube, 10, 4);
        for (Length station = top.Station; station > 0.5 * tube.Length; station -= Length.FromMillimeters(23))
            yield return top with { Station = station };
    }

    /// <summary>A window 25 mm long right below the nozzle, as large as two holes of 17 mm.</summary>
    public static IEnumerable<Vent> Window(GuideTube tube) =>
        [Below(tube, 17, 2) with { Station = tube.Length - Length.FromMillimeters(13.5), AxialLength = Length.FromMillimeters(25) }];

    public static VentHoles Holes(double diameter_mm, int count) => new()
    {
        Diameter = Length.FromMillimeters(diameter_mm),
        WallThickness = Length.FromMillimeters(0.5),
        Count = count,
    };

    private static GapProblem AtBurnThrough()
    {
        StagingPlan plan = StagingPlan.Read(Path.Combine(AppContext.BaseDirectory, "demo", "plan.json"));
        StagingReport staging = plan.Flight.Fly().Stagings[0];
        var lights = (StageIgnition.ByGap)plan.Flight.Stages[1].Ignition;
        return ((GapIgnition)lights.Gap).ProblemAt(staging.State);
    }
}
