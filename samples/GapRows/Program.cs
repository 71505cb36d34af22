using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;
foreach (double len in new[]{100.0,120,250})
foreach (double f in new[]{10.0,20,30,40,60,100})
foreach (double eng in new[]{20.0,30}) {
 var s = StartingGaps.Bore18mm;
 var d = s.Design with { Tube = s.Design.Tube with { Length = Length.FromMillimeters(len)}, Joint = s.Design.Joint with { Engagement=Length.FromMillimeters(eng), BreakawayForce=Force.FromNewtons(f), SlidingForce=Force.FromNewtons(0.8*f)}};
 var a = (s with { Design = d }).SizeVents(new VentLayout{HoleCount=4,WallThickness=Length.FromMillimeters(0.5),Land=Length.FromMillimeters(1),Drills=DrillSeries.MetricHalves});
 Console.WriteLine($"{len} mm {f} N {eng} mm: {a.Reason}");
 if (a.Widest is {} w) { var r=(s with { Design = d with { Vents=[a.Layout.VentOf(d.Tube,w.Middle)]}}).Solve(); Console.WriteLine($"    {r.Outcome.Cause} margin {(r.Outcome as GapOutcome.Lit)?.MarginToSeparation?.Milliseconds} peak {r.PeakGrainSurface.Kelvins:F0}"); }
}
