using Samples;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using Staging.Core.Sizing;

namespace GapStagedFlight.Figures;

/// <summary>
/// The race: both runners start at the bottom and finish at one line, the grain surface at its ignition temperature and
/// the joint at its engaged length. Solid for the vents as built, dotted for the least that light.
/// </summary>
internal static class RaceFigure
{
    private const double Below = -0.07;
    private const double PastOutcome = 2;

    public static DrawnFigure Draw(GapReview gap)
    {
        GapRun built = gap.Run;
        GapDesign design = built.Problem.Design;
        double cold = design.Grain.InitialTemperature.Kelvins, rise = design.Grain.IgnitionTemperature.Kelvins - cold;
        double engagement = design.Joint.Coupler.Engagement.Millimeters;
        var figure = new TwoAxes(Titles.Race(gap), "time since burn-through [ms]", "grain surface [K]", "joint travel [mm]");

        figure.Level(cold + rise, FormattableString.Invariant($"finish: grain lit at {cold + rise:F0} K, joint open at {engagement:0.#} mm"), Figure.Grey);
        double end = Run(figure, built, asBuilt: true);
        if (gap.Advice is { Widest: { } window } advice && !IsLeast(design, window))
        {
            GapRun closest = built.Problem.WithVents(advice.Layout, window.Min).Solve(built.Model, built.Options);
            end = Math.Max(end, Run(figure, closest, asBuilt: false));
            figure.Remark(FormattableString.Invariant($"dotted: with {window.Min.SquareMillimeters:F0} mm\u00b2 of vents, the least that light"));
        }

        double high = Math.Max(1.3, 1.15 * (built.PeakGrainSurface.Kelvins - cold) / rise);
        figure.RightTicks(x => x >= 0 && x <= engagement);
        return figure.Finish(end, (cold + Below * rise, cold + high * rise), (Below * engagement, high * engagement));
    }

    private static bool IsLeast(GapDesign design, VentWindow window) => design.TotalVentArea / window.Min is > 0.95 and < 1.05;

    private static double Run(TwoAxes figure, GapRun run, bool asBuilt)
    {
        double end = Math.Min(run.End.Milliseconds, PastOutcome * run.Outcome.Time.Milliseconds);
        Course course = Course.Of(run, end);
        figure.Curve(course.Milliseconds, course.Of(GapChannel.GrainSurface, k => k), name: asBuilt ? "grain surface" : null, near: 0.9, dotted: !asBuilt);
        figure.Curve(course.Milliseconds, course.Of(GapChannel.JointTravel, x => x * 1e3), onRight: true,
            name: asBuilt ? "joint as built" : null, near: 0.9, dotted: !asBuilt);
        return end;
    }
}
