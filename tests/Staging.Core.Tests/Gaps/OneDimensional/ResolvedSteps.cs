using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Steps of a resolved gap, one by one.</summary>
internal static class ResolvedSteps
{
    /// <summary>Bytes that 200 steps allocate after 200 others.</summary>
    public static long Allocated(GapProblem gap, GapModel.OneDimensional model, JointPhase phase, double acceleration) => Tests.Allocated.By(() =>
    {
        var run = new OneDimensionalGap(GapToSi.ToSi(gap), model, 0.25, 0.027);
        Take();
        return Take;

        void Take()
        {
            for (int s = 0; s < 200; s++)
                run.Step(1, phase, acceleration);
        }
    });
}
