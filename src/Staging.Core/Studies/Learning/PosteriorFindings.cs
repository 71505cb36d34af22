using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>What there is to say of a posterior, and the refusals where there is none.</summary>
internal static class PosteriorFindings
{
    /// <summary>
    /// Rank correlation from which two inputs count as not told apart [-]: an engineering judgement.
    /// </summary>
    private const double CorrelationLimit = 0.5;

    /// <summary>Standard errors that a correlation has to be off 0, so that chance does not look like one.</summary>
    private const double Sure = 3;

    public static IEnumerable<ModelFinding> All(ImmutableArray<LearnedInput> inputs, ImmutableArray<double> correlation, CaseWeights after,
        WeighedCases cases)
    {
        if (after.Exponent < 1)
            yield return new ModelFinding(FindingSeverity.Warning, "STU019", "Observations", Invariant.Text($"The observations leave too "
                + $"few cases, so all likelihoods were raised to the power {after.Exponent:F3}, which leaves an effective number of "
                + $"{after.EffectiveSampleSize:F0}: the ranges are wider than they need be. {More(cases)} would help."));
        if (cases.Refused > 0)
            yield return new ModelFinding(FindingSeverity.Warning, "STU021", "Cases",
                $"The model refused {cases.Refused} of {cases.Shares.Runs} cases that were run; they have no weight, before or after.");
        double least = Math.Max(CorrelationLimit, Sure / Math.Sqrt(after.EffectiveSampleSize));
        for (int i = 0; i < inputs.Length; i++)
        {
            for (int j = i + 1; j < inputs.Length; j++)
            {
                if (Math.Abs(correlation[i * inputs.Length + j]) >= least)
                    yield return new ModelFinding(FindingSeverity.Note, "STU020", $"{inputs[i].Input.Name}, {inputs[j].Input.Name}",
                        Invariant.Text($"The observations cannot tell these two apart: correlated by ")
                        + Invariant.Text($"{correlation[i * inputs.Length + j]:F2}, one may stand for the other. An observation that ")
                        + "depends on one of them alone would help.");
            }
        }
    }

    public static InvalidModelException AllRefused<T>(LearningStudy<T> study)
    {
        string reason = "";
        try
        {
            study.LogLikelihoods(study.Inputs.At(study.Inputs.Values(study.Design, 0)), CancellationToken.None);
        }
        catch (ArgumentException refusal)
        {
            reason = " The first: " + refusal.Message.ReplaceLineEndings(" ");
        }

        return Refusal("STU017", $"The model refuses every case.{reason}");
    }

    public static InvalidModelException NothingFits(ImmutableArray<string> names, WeighedCases cases)
    {
        string[] impossible = [.. names.Where((_, j) => cases.Allowing(j) == 0).Select(Quoted)];
        if (impossible.Length > 0)
            return Refusal("STU017", $"No case fits: the model calls {string.Join(", ", impossible)} impossible in each of "
                + $"{cases.Shares.Runs} cases. The observation, the range of an input or the model is wrong; a likelihood with a chance of "
                + "being wrong would tell how far the others go.");
        IEnumerable<string> each = names.Select((name, j) => (name, cases.Allowing(j))).OrderBy(n => n.Item2)
            .Select(n => $"{Quoted(n.name)} in {n.Item2}");
        return Refusal("STU017", $"No case fits all observations, though each is possible somewhere: of {cases.Shares.Runs} cases, "
            + $"{string.Join(", ", each)}. They contradict each other under this model, or the cases are too few.");
    }

    public static InvalidModelException TooSharp(ImmutableArray<string> names, WeighedCases cases, CaseWeights whole)
    {
        IEnumerable<string> worst = names.Select((name, j) => (name, CaseWeights.Of(cases.Shares, cases.Of(j), 1)!.EffectiveSampleSize))
            .OrderBy(n => n.Item2).Take(3).Select(n => Invariant.Text($"{Quoted(n.name)} {n.Item2:F1}"));
        return Refusal("STU018", Invariant.Text($"Of {cases.Shares.Runs} cases next to nothing fits: an effective number of ")
            + Invariant.Text($"{whole.EffectiveSampleSize:F1}, and still too few with all likelihoods raised to the power ")
            + Invariant.Text($"{CaseWeights.LeastExponent}. Alone they leave: {string.Join(", ", worst)}. {More(cases)}, a ")
            + "wider spread of the model, or a fit of a dense trace by least squares (InputSet.Fit) may help.");
    }

    private static string More(WeighedCases cases) => cases.Shares.Runs < cases.Count ? "More runs" : "More cases";

    private static InvalidModelException Refusal(string code, string message) =>
        new([new ModelFinding(FindingSeverity.Error, code, "Observations", message)]);

    private static string Quoted(string name) => $"\"{Excerpt.Of(name)}\"";
}
