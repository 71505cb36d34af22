using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>How far a joint must engage for drilled holes to light the motor with time to spare.</summary>
internal static class EngagementSearch
{
    /// <summary>
    /// Margin to separation that is asked, over the time to ignition [-]: a judgement; source and retention move either
    /// time by tens of per cent.
    /// </summary>
    private const double MarginShare = 0.5;

    /// <summary>Longest engagement tried [m].</summary>
    private const double LongestTried = 0.5;

    /// <summary>Step to which an engagement is given [m]: the shortest that a joint may have.</summary>
    private const double Step = 5e-4;

    /// <summary>The gap with the longest engagement that is tried.</summary>
    public static GapProblem Longest(GapProblem problem) =>
        Engaged(problem, Math.Max(Step, Math.Min(LongestTried, JointChecks.MaxEngagement(problem.Design))));

    /// <summary>The advice for the longest engagement, with the shortest that leaves the margin.</summary>
    public static VentAdvice Add(VentAdvice advice, GapRun longest, CancellationToken stop)
    {
        if (longest.Outcome is not GapOutcome.Lit || longest.Outcome.Lights() is not true)
            return advice;
        if (Min(longest, stop) is not { } length)
            return advice.WithJoint(longest, null, Invariant.Text($"No engagement up to "
                + $"{longest.Problem.Design.Joint.Coupler.Engagement.Millimeters:F0} mm keeps the joint closed for half as long again as "
                + $"the grain needs: it must hold more force."));
        GapRun run = Engaged(longest.Problem, length).Solve(longest.Model, longest.Options, cancellationToken: stop);
        string joint = run.TimeOf(GapEventKind.JointMoves) is null
            ? Invariant.Text($"The joint does not move before the motor is lit: any engagement from {length * 1e3:F1} mm holds, and a "
                + $"coupler engages by about its diameter to stay straight.")
            : Invariant.Text($"The joint should engage {length * 1e3:F1} mm or more, to stay closed for half as long again as the grain "
                + $"needs.");
        return advice.WithJoint(run, Length.FromMeters(length), joint);
    }

    private static GapProblem Engaged(GapProblem problem, double length) => problem with
    {
        Design = problem.Design with
        {
            Joint = problem.Design.Joint with { Coupler = problem.Design.Joint.Coupler with { Engagement = Length.FromMeters(length) } },
        },
    };

    /// <summary>
    /// Shortest engagement that keeps the joint closed until the margin has passed [m]; null where even the longest
    /// does not. A shorter joint rubs less and less long, so it opens earlier: the engagements that hold are those
    /// above one length, which is bisected.
    /// </summary>
    private static double? Min(GapRun longest, CancellationToken stop)
    {
        if (!Holds(longest))
            return null;
        int low = 0, high = Math.Max(1, (int)(longest.Problem.Design.Joint.Coupler.Engagement.Meters / Step));
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            if (Holds(Engaged(longest.Problem, middle * Step).Solve(longest.Model, longest.Options.OfCases, cancellationToken: stop)))
                high = middle;
            else
                low = middle;
        }

        return high * Step;

        // The light of the same run counts: a joint that moves before it makes room, and delays it.
        static bool Holds(GapRun run) => run.Outcome is GapOutcome.Lit lit
            && (run.TimeOf(GapEventKind.JointOpens) is not { } opens || opens.Seconds >= (1 + MarginShare) * lit.Time.Seconds);
    }
}
