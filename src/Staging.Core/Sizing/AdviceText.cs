using System.Collections.Immutable;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Vent advice in words.</summary>
internal static class AdviceText
{
    /// <summary>Longest line [characters].</summary>
    private const int Width = 100;

    /// <summary>The whole advice, in lines.</summary>
    public static string Of(VentAdvice advice, string? joint)
    {
        List<string> parts = [advice.Reason, .. advice.Walls.Select(w => w.ToString())];
        if (advice.Run is { } run)
        {
            GapDesign design = run.Problem.Design;
            string below = Invariant.Text($"{(design.Tube.Length - design.Vents[0].Station).Millimeters:F1} mm below the nozzle plane");
            parts.Add(design.Vents[0].Spread > 0
                ? Invariant.Text($"Holes of the tube in rings over {1e3 * design.Vents[0].Spread:F1} mm, their middle {below}: not one "
                    + $"ring to drill.")
                : $"Hole centres of the tube {below}.");
            if (joint is not null)
                parts.Add(joint);
            parts.Add(run.Outcome.Lights() switch
            {
                true => $"With these holes: {run.Outcome.Cause}",
                false => $"With these holes it does not light: {run.Outcome.Cause} Another drill series or number of holes comes nearer "
                    + $"to the area.",
                null => $"With these holes the run was not solved: {run.Outcome.Cause}",
            });
        }

        return string.Join('\n', parts.SelectMany(Lines));
    }

    /// <summary>Why an area is asked for.</summary>
    public static string Why(VentScan scan, VentWindow w, Area asked)
    {
        string window = Invariant.Text($"{w.Min.SquareMillimeters:F1} to {w.Max.SquareMillimeters:F1} mm2 light{Ends(scan, w)}");
        string factor = asked < w.Middle
            ? Invariant.Text($"{window}; {asked.SquareMillimeters:F1} mm2 is {VentAdvice.Margin:F1} times the lower edge, below which "
                + $"{Below(scan, w)}.")
            : Invariant.Text($"{window}; {asked.SquareMillimeters:F1} mm2 is a factor of {asked / w.Min:F2} from either edge: below, "
                + $"{Below(scan, w)}.");
        return factor + Above(scan, w) + NotSolved(scan);
    }

    /// <summary>What goes wrong with less area.</summary>
    private static string Below(VentScan scan, VentWindow w) =>
        scan.Trials.LastOrDefault(t => t.TotalArea < w.Min) is { } dark ? Fails(dark) : "nothing was tried";

    /// <summary>What goes wrong with more area, where something does.</summary>
    private static string Above(VentScan scan, VentWindow w) =>
        scan.Trials.FirstOrDefault(t => t.TotalArea > w.Max) is { } dark
            ? Invariant.Text($" Above {w.Max.SquareMillimeters:F0} mm2 {Fails(dark)}.")
            : "";

    private static string Fails(VentTrial dark) => dark.Outcome.Match(
        _ => "the joint opens before the grain is lit",
        _ => "the joint opens before the grain is lit",
        _ => "the products leave before they fill the gas at the nozzle",
        _ => "the grain stays too cool",
        _ => "the front does not reach the last vent",
        _ => "the run was not solved");

    /// <summary>Why no area is asked for.</summary>
    public static string WhyNone(VentScan scan)
    {
        if (scan.Trials.Where(t => t.Lights is not null).MaxBy(t => t.PeakGrainSurface.Kelvins) is not { } best)
            return "No vent area can be judged: no run was solved. " + scan.Trials[0].Outcome.Cause;
        return Invariant.Text($"No vent area lights this gap. {best.TotalArea.SquareMillimeters:F1} mm2 comes nearest: "
            + $"{best.Outcome.Cause} No area cures it: a shorter gap, a joint that holds more, or a booster with more burn-through gas.")
            + NotSolved(scan);
    }

    /// <summary>Why nothing was tried.</summary>
    public static string WhyNothing(ImmutableArray<ModelFinding> findings) => string.Join(' ', findings.Select(f => f.Message));

    /// <summary>What bounds an interval where the scan ended before the light did.</summary>
    private static string Ends(VentScan scan, VentWindow w)
    {
        bool fromStart = w.Min <= scan.Trials[0].TotalArea;
        return (fromStart, w.ReachesScanEnd) switch
        {
            (false, false) => "",
            (true, false) => $" (the smaller is the least tried{Least(scan)})",
            (false, true) => $" (the larger is {scan.Range.Largest.Reason})",
            (true, true) => $" (the smaller is the least tried{Least(scan)}, the larger is {scan.Range.Largest.Reason})",
        };
    }

    private static string Least(VentScan scan) =>
        scan.Range.Holds(scan.Trials[0].TotalArea.SquareMeters / 1.01) ? "" : $": {scan.Range.Smallest.Reason}";

    private static string NotSolved(VentScan scan) => scan.NotSolved.Count == 0 ? "" : Invariant.Text(
        $" Not solved, and so neither lit nor unlit: {scan.NotSolved.Count} of the areas tried, from "
        + $"{1e6 * scan.NotSolved.Min():F1} to {1e6 * scan.NotSolved.Max():F1} mm2.");

    /// <summary>A text broken between words into lines.</summary>
    public static IEnumerable<string> Lines(string text)
    {
        string line = "";
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > Width)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        yield return line;
    }
}
