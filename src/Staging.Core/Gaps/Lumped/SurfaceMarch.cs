using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// Marches the grain surface along the steps of a lumped run. Its marks come at even times, however long the steps are:
/// within a step the gas is looked at only as often as its course needs, and the heat transfer is linear in between.
/// </summary>
/// <param name="p">The gap.</param>
/// <param name="ignition">The surface.</param>
/// <param name="tolerance">
/// What the heat transfer may differ by, half-way between two looks, from what lies between them linearly [-]; what is
/// marched with is closer by a factor of four.
/// </param>
/// <param name="untilLit">Whether all is known once the grain is lit.</param>
internal sealed class SurfaceMarch(GapParameters p, IgnitionTracker ignition, double tolerance, bool untilLit)
{
    /// <summary>Marks of a step up to which each is looked at: halving takes five looks at least.</summary>
    private const int Few = 5;

    private readonly double[] y = new double[p.StateCount];

    /// <summary>Whether all is known.</summary>
    public bool IsDone => untilLit && ignition.IsLit;

    /// <summary>Marches through a step, which holds as far as an end [s].</summary>
    public void Along(in DenseStep step, double end)
    {
        int last = LastBy(end);
        while (ignition.NextMark <= last && (ignition.FollowsCore || last - ignition.NextMark < Few) && !IsDone)
            ignition.Mark(StateAt(step, ignition.NextMark));
        int first = ignition.NextMark;
        if (first > last || IsDone)
            return;

        int middle = (first + last) / 2;
        GrainHeating atFirst = HeatingAt(step, first), atMiddle = HeatingAt(step, middle);
        ignition.March(atFirst);
        Between(step, first, atFirst, middle, atMiddle);
        Between(step, middle, atMiddle, last, HeatingAt(step, last));
    }

    /// <summary>
    /// Marches from the mark behind one look to another one. Half-way it looks again, and halves both parts further
    /// unless the look in the middle told nothing new.
    /// </summary>
    private void Between(in DenseStep step, int from, in GrainHeating atFrom, int to, in GrainHeating atTo)
    {
        int middle = (from + to) / 2;
        if (middle == from)
        {
            Fill(from, atFrom, to, atTo);
            return;
        }

        GrainHeating atMiddle = HeatingAt(step, middle);
        if (atMiddle.IsNear(atFrom.Towards(atTo, (middle - from) / (double)(to - from)), tolerance))
        {
            Fill(from, atFrom, middle, atMiddle);
            Fill(middle, atMiddle, to, atTo);
            return;
        }

        Between(step, from, atFrom, middle, atMiddle);
        Between(step, middle, atMiddle, to, atTo);
    }

    private void Fill(int from, in GrainHeating atFrom, int to, in GrainHeating atTo)
    {
        for (int mark = from + 1; mark <= to && !IsDone; mark++)
            ignition.March(atFrom.Towards(atTo, (mark - from) / (double)(to - from)));
    }

    private GrainHeating HeatingAt(in DenseStep step, int mark) => StateAt(step, mark).HeatingAt(IgnitionTracker.TimeOf(mark));

    private LumpedView StateAt(in DenseStep step, int mark)
    {
        step.At(Math.Max(IgnitionTracker.TimeOf(mark), step.Start), y);
        return new LumpedView(p, y);
    }

    private static int LastBy(double end)
    {
        int mark = (int)(end / IgnitionTracker.Interval);
        return IgnitionTracker.TimeOf(mark) > end ? mark - 1 : IgnitionTracker.TimeOf(mark + 1) > end ? mark : mark + 1;
    }
}
