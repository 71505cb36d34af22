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
Console.WriteLine((start with { Design = design }).SizeVents(holes: 4));
#endregion
