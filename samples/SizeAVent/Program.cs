#region size-a-vent
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using UnitsNet;

GapProblem start = StartingGaps.Bore18mm; // invented, with a reason for every number
Console.WriteLine(start.With(length: Length.FromMillimeters(120), breakaway: Force.FromNewtons(40)).SizeVents(holes: 4));
#endregion
