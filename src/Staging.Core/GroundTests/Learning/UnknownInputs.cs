using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Studies;

namespace Staging.Core.GroundTests;

/// <summary>What is not known of all gaps of a series together, and how a case of it is put into one of them.</summary>
internal sealed class UnknownInputs
{
    private readonly bool judged;

    /// <summary>The unknowns of a series: its own, or all that is judged of its gaps.</summary>
    public UnknownInputs(EquatableArray<StudyInput<GapProblem>> own, IEnumerable<GapProblem> gaps)
    {
        judged = own.IsEmpty;
        All = judged
            ? [.. gaps.SelectMany(g => GroundTestInputs.JudgedFor(g.Design)).GroupBy(i => i.Path).Select(g => g.First())]
            : own.Items;
    }

    /// <summary>The unknowns.</summary>
    public ImmutableArray<StudyInput<GapProblem>> All { get; }

    /// <summary>The values of a case as a model of their own.</summary>
    public InputSet<EquatableArray<double>> Values => new(
        [.. All.Select(i => i.Spread.Median)],
        [.. All.Select((input, d) => new StudyInput<EquatableArray<double>>(input.Path, input.Unit, input.Spread,
            (values, v) => values.Items.SetItem(d, v)))]);

    /// <summary>A gap for any case: checked when it is made, like every set of inputs.</summary>
    /// <returns>
    /// What puts the values of a case into the gap. Of judged inputs each gap takes those that it has.
    /// </returns>
    /// <exception cref="InvalidModelException">The gap refuses a value that an input can take.</exception>
    public Func<EquatableArray<double>, GapProblem> In(GapProblem gap)
    {
        HashSet<string> has = judged ? [.. GroundTestInputs.JudgedFor(gap.Design).Select(i => i.Path)] : [.. All.Select(i => i.Path)];
        int[] taken = [.. Enumerable.Range(0, All.Length).Where(d => has.Contains(All[d].Path))];
        if (taken.Length == 0)
            return _ => gap;
        var set = new InputSet<GapProblem>(gap, [.. taken.Select(d => All[d])]);
        return values => set.At([.. taken.Select(d => values[d])]);
    }
}
