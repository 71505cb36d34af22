using System.Globalization;
using Staging.Core;
using Staging.Core.Studies;

namespace PracticeEvidence;

/// <summary>The tables of the page.</summary>
internal static class Tables
{
    /// <summary>Chance that a fact is wrong, so that it says nothing.</summary>
    private static readonly double[] Doubts = [0.1, 0.3, 0.6];

    private static readonly Evidence Facts = new();

    /// <summary>Each fact, and how many cases keep it.</summary>
    public static IEnumerable<string> Kept()
    {
        bool[][] cases = [.. Facts.Kept];
        yield return $"| fact | practice says | kept in, of {cases.Length} cases |";
        yield return "|---|---|---|";
        for (int j = 0; j < Fact.All.Length; j++)
            yield return $"| {Fact.All[j].Name} | {Fact.All[j].Says} | {cases.Count(c => c[j])} |";
    }

    /// <summary>How many cases keep how many facts.</summary>
    public static IEnumerable<string> Together()
    {
        bool[][] cases = [.. Facts.Kept];
        yield return $"| facts kept, of {Fact.All.Length} | {string.Join(" | ", Counts().Select(n => $"{n}"))} |";
        yield return $"|---|{string.Concat(Counts().Select(_ => "---|"))}";
        yield return $"| cases, of {cases.Length} | {string.Join(" | ", Counts().Select(n => cases.Count(c => c.Count(k => k) == n)))} |";

        static IEnumerable<int> Counts() => Enumerable.Range(3, Fact.All.Length - 2);
    }

    /// <summary>The unknowns that the facts move, by the doubt given to each fact.</summary>
    public static IEnumerable<string> Asked()
    {
        Posterior<EquatableArray<double>>[] learned = [.. Doubts.Select(Facts.Learn)];
        yield return $"| unknown | before | {string.Join(" | ", Doubts.Select(d => Text($"doubt {d}")))} |";
        yield return $"|---|---|{string.Concat(Doubts.Select(_ => "---|"))}";
        yield return $"| effective cases, power of the likelihoods | {Evidence.Cases} | "
            + string.Join(" | ", learned.Select(l => Text($"{l.EffectiveSampleSize:F0}, {l.Exponent:F2}"))) + " |";
        yield return $"| learned in all [bit] | 0 | {string.Join(" | ", learned.Select(l => Text($"{l.Bits:F1}")))} |";
        foreach (int i in Enumerable.Range(0, learned[0].Inputs.Length).OrderByDescending(i => learned[0].Inputs[i].Bits).Take(6))
        {
            LearnedInput first = learned[0].Inputs[i];
            yield return $"| {first.Input} | {Range(first.Before)} | {string.Join(" | ", learned.Select(l => Range(l.Inputs[i].After)))} |";
        }
    }

    private static string Range(Interval range) => Text($"{range.Low:G3} to {range.High:G3}");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
