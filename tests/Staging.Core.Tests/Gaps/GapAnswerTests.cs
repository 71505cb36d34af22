using System.Globalization;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Results print as answers, in the invariant culture, and nobody can make or alter one.</summary>
public class GapAnswerTests
{
    private static readonly GapRun Lit = Bench.Gap.With(d => d with { Vents = [Bench.Hole(d.Tube, 5, 4)], Joint = Bench.Joint(60) }).Solve();

    [Fact]
    public void A_run_prints_its_outcome_its_events_and_its_peaks()
    {
        string said = Said(Lit);
        Assert.StartsWith($"Lit at {Text(Lit.Outcome.Time.Milliseconds, "F2")} ms.\n{Lit.Outcome.Cause}\n{Lit.Outcome.Remedy}\n", said, StringComparison.Ordinal);
        Assert.Contains($"Lit at {Text(Lit.TimeOf(GapEventKind.Lit)!.Value.Milliseconds, "F2")} ms, ", said, StringComparison.Ordinal);
        Assert.Contains($"Peaks: {Text(Lit.PeakGaugePressure.Kilopascals, "F1")} kPa gauge", said, StringComparison.Ordinal);
        Assert.StartsWith("Pushed apart at ", Said(Bench.Gap.With(d => d with { Joint = Bench.Joint(5) }).Solve().Outcome), StringComparison.Ordinal);
    }

    [Fact]
    public void So_do_its_parts()
    {
        GapSnapshot now = Lit.At(Duration.FromMilliseconds(5));
        Assert.StartsWith("5.00 ms: gap " + Text(now.GapPressure.Kilopascals, "F1") + " kPa, ", Said(now), StringComparison.Ordinal);
        Assert.Contains($"{Text(Lit.Ledger.Left.Grams, "F3")} g left", Said(Lit.Ledger), StringComparison.Ordinal);
        GrainHeat heat = Lit.HeatAtLighting()!;
        Assert.Contains($" {Text(heat.TotalDose.JoulesPerSquareMeter / 1e3, "F1")} kJ/m2: ", Said(heat), StringComparison.Ordinal);
        Assert.Equal("BurnThrough at 0.00 ms", Said(Lit.Events[0]));
        Assert.StartsWith("11 channels of a gap at ", Said(Lit.Sample(Duration.FromMilliseconds(1))), StringComparison.Ordinal);
    }

    /// <summary>What a result says under a culture that writes numbers otherwise.</summary>
    private static string Said(object result)
    {
        CultureInfo before = CultureInfo.CurrentCulture, other = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        other.NumberFormat.NumberDecimalSeparator = ",";
        CultureInfo.CurrentCulture = other;
        try
        {
            return result.ToString()!;
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
