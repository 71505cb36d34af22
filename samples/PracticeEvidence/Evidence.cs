using System.Collections.Concurrent;
using Staging.Core;
using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Solving;
using Staging.Core.Studies;

namespace PracticeEvidence;

/// <summary>
/// The facts as observations of doubtful weight: every gap is run once for each case, and weighed as often as one likes.
/// </summary>
internal sealed class Evidence
{
    public const int Cases = 512;

    private readonly ConcurrentDictionary<EquatableArray<double>, bool[]> kept = new();
    private readonly StudyInput<GapProblem>[] inputs;
    private readonly Func<EquatableArray<double>, GapProblem>[] gaps;

    public Evidence()
    {
        inputs = [.. GroundTestInputs.JudgedFor(Fact.All[0].Gap.Design)];
        gaps = [.. Fact.All.Select(f => new InputSet<GapProblem>(f.Gap, [.. inputs])).Select(set =>
            (Func<EquatableArray<double>, GapProblem>)(values => set.At(values.AsSpan())))];
    }

    /// <summary>Which facts each case keeps.</summary>
    public IEnumerable<bool[]> Kept
    {
        get
        {
            Learn(0.5);
            return kept.Values;
        }
    }

    /// <summary>
    /// What the facts say if each is wrong with a probability, so that it says nothing: two ways to end then.
    /// </summary>
    public Posterior<EquatableArray<double>> Learn(double doubt) => new LearningStudy<EquatableArray<double>>
    {
        Inputs = new([.. inputs.Select(i => i.Spread.Median)], [.. inputs.Select((input, d) => new StudyInput<EquatableArray<double>>(
            input.Path, input.Unit, input.Spread, (values, v) => values.Items.SetItem(d, v)))]),
        Observations = [.. Fact.All.Select(f => f.Name.Replace(",", "", StringComparison.Ordinal))],
        LogLikelihoods = (values, stop) => [.. KeptBy(values, stop).Select(k => Math.Log((k ? 1 - doubt : 0) + doubt / 2))],
        Cases = Cases,
        EffectiveSample = 20,
    }.Learn();

    private bool[] KeptBy(EquatableArray<double> values, CancellationToken stop) =>
        kept.GetOrAdd(values, v => [.. Fact.All.Select((f, i) => f.IsKept(gaps[i](v).Solve(options: SolverOptions.ForStudies, cancellationToken: stop)))]);
}
