using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>The cases of a learning study that were run so far, where not all are.</summary>
internal sealed class FoundCases<T>(LearningStudy<T> study)
{
    private readonly Dictionary<int, ImmutableArray<double>> rows = [];
    private readonly SampleDesign design = study.Design;

    /// <summary>How many were run.</summary>
    public int Count => rows.Count;

    /// <summary>Runs those of some cases that were not run before.</summary>
    /// <param name="cases">Their numbers.</param>
    /// <param name="options">Threads.</param>
    /// <param name="tell">Gets how many were run, in order.</param>
    /// <param name="cancel">Stops it.</param>
    public void Run(IEnumerable<int> cases, StudyOptions? options, Action<long> tell, CancellationToken cancel)
    {
        int[] missing = [.. cases.Where(i => !rows.ContainsKey(i))];
        OrderedBlocks.Run(
            0,
            missing.Length,
            size: 1,
            options?.Threads,
            (k, _, stop) => LikelihoodRows.Row(study, design, missing[k], stop),
            (row, past) =>
            {
                rows.Add(missing[past - 1], row);
                tell(past);
                return true;
            },
            cancel);
    }

    /// <summary>Log-likelihoods of all observations together [-], by case.</summary>
    public Dictionary<int, double> Together()
    {
        WeighedCases all = Weighed(CaseShares.All(study.Cases));
        double[] together = all.Together();
        return rows.Keys.ToDictionary(i => i, i => together[i]);
    }

    /// <summary>The cases with what they stand for.</summary>
    public WeighedCases Weighed(CaseShares shares)
    {
        ImmutableArray<double> notRun = [0, .. study.Observations.Select(_ => double.NaN)];
        ImmutableArray<ImmutableArray<double>> all = [.. Enumerable.Range(0, study.Cases).Select(i => rows.GetValueOrDefault(i, notRun))];
        return LikelihoodRows.CasesOf(design, shares, all, study.Observations.Length);
    }
}
