using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Joints;

/// <summary>
/// Behind an opening far wider than the bore the gas comes in, and goes out at once through the annulus of the open joint: what lies between
/// is a thousandth of a bore of gas, flushed within nanoseconds. An implicit step has to pass over that.
/// </summary>
public class FlushedParcelTests
{
    [Fact]
    public void A_parcel_flushed_within_nanoseconds_does_not_set_the_step()
    {
        var source = (GapSource.EndBurner)StartingGaps.Bore18mm.Design.Source;
        GapProblem gap = (StartingGaps.Bore18mm with { AfterOpening = Duration.FromMilliseconds(1.8) }).With(d => d with
        {
            Tube = new GuideTube { Bore = Length.FromMillimeters(10), Length = Length.FromMillimeters(40) },
            Vents = [],
            Source = source with { GrainDiameter = Length.FromMillimeters(50), NozzleThroatDiameter = Length.FromMillimeters(11.4) },
            Joint = d.Joint.Coupler with
            {
                PressureDiameter = Length.FromMillimeters(37),
                BreakawayForce = Force.FromNewtons(22),
                SlidingForce = Force.FromNewtons(18),
                Engagement = Length.FromMillimeters(11),
            },
        });
        GapRun loose = gap.Solve(options: SolverOptions.ForGaps), tight = gap.Solve(options: SolverOptions.Default);
        Assert.NotNull(loose.TimeOf(GapEventKind.JointOpens));
        Assert.True(loose.Statistics.JacobianCalls > 0);

        // A method of order four or five takes two to three times the steps for a hundredth of the error; bound by a noise of the derivatives it took fifty.
        Assert.InRange((double)tight.Statistics.AcceptedSteps / loose.Statistics.AcceptedSteps, 1, 8);
        Assert.Equal(1, tight.TimeOf(GapEventKind.JointOpens)!.Value / loose.TimeOf(GapEventKind.JointOpens)!.Value, 1e-4);
    }
}
