using Samples;
using ScottPlot;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using UnitsNet;

namespace GapStagedFlight;

/// <summary>
/// The race: both runners start at the bottom and finish at one line, the grain surface at its ignition temperature and
/// the joint at its engaged length. Solid for the vents as built, dotted for the least that light.
/// </summary>
internal static class RaceFigure
{
    private const double Below = -0.07;
    private const double PastOutcome = 2;

    public static Plot Draw(GapReview gap)
    {
        GapRun built = gap.Run;
        GapDesign design = built.Problem.Design;
        double cold = design.Grain.InitialTemperature.Kelvins, rise = design.Grain.IgnitionTemperature.Kelvins - cold;
        double engagement = design.Joint.Coupler.Engagement.Millimeters;
        Plot plot = TwoAxes.New(Verdict(built), "time since burn-through [ms]", "grain surface [K]", "joint travel [mm]");

        double end = Course(plot, built, asBuilt: true);
        if (gap.Advice is { Widest: { } window } advice && !IsLeast(design, window))
        {
            GapRun closest = built.Problem.WithVents(advice.Layout, window.Min).Solve(built.Model, built.Options);
            end = Math.Max(end, Course(plot, closest, asBuilt: false));
            plot.Beside($"dotted: with {window.Min.SquareMillimeters:F0} mm\u00b2 of vents, the least that light", 0, cold + 1.1 * rise,
                Figure.Grey, Alignment.LowerLeft);
        }

        plot.Level(cold + rise, $"finish: grain lit at {cold + rise:F0} K, joint open at {engagement:F0} mm", 0, Alignment.LowerLeft,
            Figure.Grey);
        double high = Math.Max(1.25, 1.1 * (built.PeakGrainSurface.Kelvins - cold) / rise);
        plot.Frame(end, (cold + Below * rise, cold + high * rise), (Below * engagement, high * engagement));
        plot.Axes.Right.TicksWhere(x => x >= 0 && x <= engagement);
        return plot;
    }

    private static bool IsLeast(GapDesign design, VentWindow window) => design.TotalVentArea / window.Min is > 0.95 and < 1.05;

    private static string Verdict(GapRun run) => run.Outcome.Match(
        lit => lit.MarginToSeparation is { } margin
            ? $"The ignition race: the grain wins by {margin.Milliseconds:F1} ms"
            : "The ignition race: the grain lights, the joint stays shut",
        _ => "The ignition race: the joint opens first",
        _ => "The ignition race: the products leave through the vents",
        _ => "The ignition race: the grain stays too cool",
        _ => "The ignition race: the front does not arrive",
        _ => "The ignition race: not solved");

    private static double Course(Plot plot, GapRun run, bool asBuilt)
    {
        GapColumns c = run.Sample(Duration.FromMicroseconds(50));
        double[] t = [.. c.Time_s.ToArray().Select(s => s * 1e3)], grain = c[GapChannel.GrainSurface].ToArray();
        double[] joint = [.. c[GapChannel.JointTravel].ToArray().Select(x => x * 1e3)];
        plot.Curve(t, grain, dotted: !asBuilt);
        plot.Curve(t, joint, onRight: true, dotted: !asBuilt);
        double end = Math.Min(t[^1], PastOutcome * run.Outcome.Time.Milliseconds);
        if (asBuilt)
        {
            int steep = Array.FindIndex(grain, k => k > 0.5 * (grain[0] + grain.Max()));
            plot.Beside("grain surface", t[steep], grain[steep], Figure.Blue, Alignment.LowerRight);
            int far = Array.FindIndex(joint, x => x > 0.5 * joint[^1]);
            if (far < 0)
                plot.Beside("joint as built", end, 0, Figure.Red, Alignment.LowerRight, onRight: true);
            else
                plot.Beside("joint as built", t[far], joint[far], Figure.Red, Alignment.LowerRight, onRight: true);
        }

        return end;
    }
}
