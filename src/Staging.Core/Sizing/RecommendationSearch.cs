using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Says what to build, in one call.</summary>
public static class RecommendationSearch
{
    /// <summary>
    /// Margin to separation that is asked, over the time to ignition [-]: a judgement; source and retention move either
    /// time by tens of per cent.
    /// </summary>
    private const double MarginShare = 0.5;

    /// <summary>Longest engagement tried [m].</summary>
    private const double LongestEngagement = 0.5;

    /// <summary>Step to which an engagement is given [m].</summary>
    private const double EngagementStep = 5e-4;

    /// <summary>
    /// Sizes the vents as <see cref="VentSizing.SizeVents"/> does, takes the nearest drills for every wall, and finds
    /// how far the joint must engage for the drilled holes to light the motor with time to spare.
    /// </summary>
    /// <param name="problem">The gap; the sizes of its own holes and the engagement of its joint are not used.</param>
    /// <param name="layout">How the holes of the tube are drilled; those of jackets keep their number and
    /// walls.</param>
    /// <param name="model">How the gas is modelled; null for the displacement model.</param>
    /// <param name="options">How to integrate; null for the defaults.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The recommendation; it says so when nothing lights.</returns>
    /// <exception cref="InvalidModelException">The problem is in error with every area.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static GapRecommendation Recommend(
        this GapProblem problem, VentLayout layout, GapModel? model = null, SolverOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(layout);
        double longest = Math.Min(LongestEngagement, JointChecks.MaxEngagement(problem.Design));
        GapProblem lengthened = Engaged(problem, longest);
        VentAdvice advice = lengthened.SizeVents(layout, model, options, cancellationToken);
        if (advice.Recommended is not { } area)
            return Nothing(advice);

        GapProblem exact = lengthened.WithVents(layout, area);
        ImmutableArray<WallHoles> walls = Walls(exact.Design, layout, advice.Holes!);
        GapProblem drilled = Drilled(exact, layout, walls);
        GapRun run = drilled.Solve(model, options, cancellationToken: cancellationToken);
        double? engagement = run.Outcome is GapOutcome.Lit lit ? Min(drilled, run, (1 + MarginShare) * lit.Time.Seconds) : null;
        if (engagement is { } length)
            run = Engaged(drilled, length).Solve(model, options, cancellationToken: cancellationToken);
        Duration? margin = run.Outcome is GapOutcome.Lit ? MarginShare * run.Outcome.Time : null;
        Length station = drilled.Design.Vents[0].Station;
        return new GapRecommendation
        {
            Advice = advice,
            Walls = walls,
            Station = station,
            Engagement = engagement is { } x ? Length.FromMeters(x) : null,
            Margin = margin,
            Run = run,
            Text = Say(advice, walls, problem.Design.Tube, station, engagement, run),
        };
    }

    private static GapRecommendation Nothing(VentAdvice advice) => new()
    {
        Advice = advice,
        Walls = [],
        Station = null,
        Engagement = null,
        Margin = null,
        Run = null,
        Text = advice.Reason,
    };

    private static GapProblem Engaged(GapProblem problem, double length) => problem with
    {
        Design = problem.Design with
        {
            Joint = problem.Design.Joint with { Coupler = problem.Design.Joint.Coupler with { Engagement = Length.FromMeters(length) } },
        },
    };

    private static ImmutableArray<WallHoles> Walls(GapDesign design, VentLayout layout, HolePattern tube)
    {
        IEnumerable<WallHoles> jackets = VentPath.Jackets(design).Select(j =>
        {
            VentHoles first = j.Openings[0].Holes;
            Area total = Area.FromSquareMeters(j.Openings.Sum(o => o.Holes.TotalArea.SquareMeters));
            HolePattern pattern = HolePattern.ForArea(total, j.Openings.Sum(o => o.Holes.Count), first.WallThickness, layout.Drills);
            return new WallHoles(j.Name, pattern, Nearer(pattern));
        });
        return [new WallHoles("guide tube", tube, Nearer(tube)), .. jackets];
    }

    private static DrilledHoles? Nearer(HolePattern pattern) => (pattern.Below, pattern.Above) switch
    {
        (null, { } above) => above,
        ({ } below, null) => below,
        ({ } below, { } above) => -below.AreaError <= above.AreaError ? below : above,
        _ => null,
    };

    /// <summary>The gap with the drills that were chosen, the holes of a jacket in proportion.</summary>
    private static GapProblem Drilled(GapProblem exact, VentLayout layout, ImmutableArray<WallHoles> walls)
    {
        GapDesign design = exact.Design;
        Vent vent = design.Vents[0];
        if (walls[0].Drilled is { } tube)
            vent = layout.VentOf(design.Tube, tube.Holes.TotalArea) with { To = vent.To };
        Jacket Of(Jacket jacket)
        {
            if (walls.Skip(1).FirstOrDefault(w => w.Wall == jacket.Name)?.Drilled is not { } holes)
                return jacket;
            double factor = Math.Sqrt(1 + holes.AreaError);
            return jacket with
            {
                Openings = [.. jacket.Openings.Select(o => o with { Holes = o.Holes with { Diameter = factor * o.Holes.Diameter } })],
            };
        }

        return exact with { Design = design with { Vents = [vent], Jackets = [.. design.Jackets.Select(Of)] } };
    }

    /// <summary>
    /// Shortest engagement that keeps the joint closed until a time [m]; null where even the longest does not. A
    /// shorter joint rubs less and less long, so it opens earlier: the engagements that hold are those above one
    /// length, which is bisected.
    /// </summary>
    private static double? Min(GapProblem drilled, GapRun longest, double until)
    {
        bool Holds(double engagement) => Engaged(drilled, engagement).Solve(longest.Model, longest.Options)
            .TimeOf(GapEventKind.JointOpens) is not { } opens || opens.Seconds >= until;
        if (longest.TimeOf(GapEventKind.JointOpens) is { } early && early.Seconds < until)
            return null;
        int low = 0, high = (int)(drilled.Design.Joint.Coupler.Engagement.Meters / EngagementStep);
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            if (Holds(middle * EngagementStep))
                high = middle;
            else
                low = middle;
        }

        return high * EngagementStep;
    }

    private static string Say(VentAdvice advice, ImmutableArray<WallHoles> walls, GuideTube tube, Length station, double? engagement,
        GapRun run)
    {
        string holes = string.Join("; ", walls.Select(w => w.Drilled is { } drilled
            ? Invariant.Text(
                $"{w.Wall}: {drilled.Holes.Count} holes, drill {drilled.Drill.Label} (exact {w.Pattern.Exact.Diameter.Millimeters:F2} mm)")
            : Invariant.Text($"{w.Wall}: {w.Pattern.Exact.Count} holes of {w.Pattern.Exact.Diameter.Millimeters:F2} mm")));
        string place = Invariant.Text($"Hole centres of the tube {(tube.Length - station).Millimeters:F1} mm below the nozzle plane.");
        string joint = run.TimeOf(GapEventKind.JointMoves) is null && engagement is not null
            ? Invariant.Text($"The joint does not move before the motor is lit: any engagement from {engagement.Value * 1e3:F1} mm "
                + $"holds, and a coupler engages by about its diameter to stay straight.")
            : engagement is { } length
                ? Invariant.Text(
                    $"The joint should engage {length * 1e3:F1} mm or more, to stay closed for half as long again as the grain needs.")
                : Invariant.Text($"No engagement up to {run.Problem.Design.Joint.Coupler.Engagement.Millimeters:F0} mm keeps the joint "
                    + $"closed for half as long again as the grain needs: it must hold more force.");
        return $"{advice.Reason} {holes}. {place} {joint} {run.Outcome.Cause}";
    }
}
