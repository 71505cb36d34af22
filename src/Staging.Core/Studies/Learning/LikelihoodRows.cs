using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// The rows of a learning study as parts exchange them: whether the model refused the case, then the log-likelihood of
/// each observation, absent where it is negative infinity.
/// </summary>
internal static class LikelihoodRows
{
    private const string RefusedName = "refused";

    /// <summary>The study in parts; what is believed after is handed on to what makes the answer of it.</summary>
    public static PartitionedStudy<TAnswer> Study<T, TAnswer>(LearningStudy<T> study, Func<Posterior<T>, TAnswer> answer)
    {
        InvalidModelException.ThrowOnError(study.Check());
        SampleDesign design = study.Design;
        var heading = new StudyHeading(
            study.Cases,
            study.Seed,
            Invariant.Text($"learning from {study.Observations.Length} observations{study.Remark}"),
            study.Inputs.Names,
            study.Inputs.Spreads,
            [new ColumnName(RefusedName, "-"), .. study.Observations.Select(name => new ColumnName(name, "-"))]);
        return new PartitionedStudy<TAnswer>(
            heading,
            (i, cancel) => Row(study, design, i, cancel),
            rows => answer(new Posterior<T>(study, CasesOf(design, CaseShares.All(study.Cases), rows, study.Observations.Length))),
            someMayBeAbsent: true);
    }

    /// <summary>The row of one case.</summary>
    public static ImmutableArray<double> Row<T>(LearningStudy<T> study, SampleDesign design, long index, CancellationToken cancel)
    {
        if (study.Observations.IsEmpty)
            return [0];
        ImmutableArray<double> logs;
        try
        {
            logs = study.LogLikelihoods(study.Inputs.At(study.Inputs.Values(design, index)), cancel);
        }
        catch (ArgumentException)
        {
            return [1, .. study.Observations.Select(_ => double.NaN)];
        }

        if (logs.IsDefault || logs.Length != study.Observations.Length)
            throw new ArithmeticException($"The model has to give {study.Observations.Length} log-likelihoods, one for each observation.");
        for (int j = 0; j < logs.Length; j++)
        {
            if (double.IsNaN(logs[j]) || double.IsPositiveInfinity(logs[j]))
                throw new ArithmeticException(
                    $"The log-likelihood of \"{Excerpt.Of(study.Observations[j])}\" in case {index} is neither finite nor "
                    + "negative infinity.");
        }

        return [0, .. logs.Select(l => double.IsNegativeInfinity(l) ? double.NaN : l)];
    }

    /// <summary>The cases of the rows of all.</summary>
    public static WeighedCases CasesOf(
        SampleDesign design, CaseShares shares, ImmutableArray<ImmutableArray<double>> rows, int observations) => new(
        design,
        shares,
        [.. rows.Select(row => row[0] != 0)],
        [.. Enumerable.Range(1, observations)
            .Select(j => rows.Select(row => double.IsNaN(row[j]) ? double.NegativeInfinity : row[j]).ToArray())]);
}
