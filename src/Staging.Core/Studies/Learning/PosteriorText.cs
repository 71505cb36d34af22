using System.Collections.Immutable;
using System.Text;

namespace Staging.Core.Studies;

/// <summary>A posterior in some lines.</summary>
internal static class PosteriorText
{
    public static string Of<T>(Posterior<T> posterior)
    {
        var text = new StringBuilder();
        text.Append($"{posterior.Observations.Length} observations over {Number(posterior.Cases, posterior.Runs)}: ");
        text.Append(Sample(posterior.EffectiveSampleSize, posterior.Exponent, posterior.Bits));
        Inputs(text, posterior.Inputs);
        foreach (LearnedObservation observation in posterior.Observations)
            text.Append("\n  ").Append(observation);
        foreach (ModelFinding finding in posterior.Findings)
            text.Append("\n  ").Append(finding);
        return text.ToString();
    }

    /// <summary>How many cases, and how many of them were run.</summary>
    public static string Number(int cases, int runs) => runs < cases ? $"{cases} cases, {runs} of them run" : $"{cases} cases";

    /// <summary>Effective number of cases and what was learned.</summary>
    public static string Sample(double effective, double exponent, double bits)
    {
        string power = exponent < 1 ? Invariant.Text($" with likelihoods to the power {exponent:F3}") : "";
        return Invariant.Text($"effective number {effective:F0}{power}, learned {bits:F2} bit");
    }

    /// <summary>A line for each input, those that were learned most of first.</summary>
    public static void Inputs(StringBuilder text, ImmutableArray<LearnedInput> inputs)
    {
        int width = inputs.Max(i => i.Input.ToString().Length);
        Line("input", "5 to 95 % before", "after", "width", "bit");
        foreach (LearnedInput i in inputs.OrderByDescending(i => i.Bits).ThenBy(i => i.Narrowing))
            Line(i.Input.ToString(), Range(i.Before), Range(i.After), Invariant.Text($"{i.Narrowing:F2}"), Invariant.Text($"{i.Bits:F2}"));

        void Line(string name, string before, string after, string narrowing, string bits) =>
            text.Append(Invariant.Text($"\n  {name.PadRight(width)}  {before,20}  {after,20}  {narrowing,6}  {bits,5}"));
    }

    private static string Range(Interval range) => Invariant.Text($"{range.Low:G3} to {range.High:G3}");
}
