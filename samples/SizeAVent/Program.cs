using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using UnitsNet;

#region size-a-vent
GapProblem start = StartingGaps.Bore18mm; // invented, with a reason for every number
GapDesign design = start.Design with
{
    Tube = new GuideTube { Bore = Length.FromMillimeters(18), Length = Length.FromMillimeters(120) },
    Joint = start.Design.Joint.Coupler with { BreakawayForce = Force.FromNewtons(40), SlidingForce = Force.FromNewtons(32) },
};
var layout = new VentLayout
{
    HoleCount = 4,
    WallThickness = Length.FromMillimeters(0.5),
    Land = Length.FromMillimeters(1),
    Drills = DrillSeries.MetricHalves
};
VentAdvice advice = (start with { Design = design }).SizeVents(layout);
Console.WriteLine(advice.Reason);
Console.WriteLine(advice.Holes is { } holes
    ? $"{layout.HoleCount} holes, drill {holes.Below?.Drill.Label} or {holes.Above?.Drill.Label}"
    : "nothing to drill");
#endregion
