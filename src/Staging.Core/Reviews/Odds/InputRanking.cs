using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>The inputs of a plan by how closely its margin follows them.</summary>
public sealed class InputRanking
{
    internal InputRanking(CaseColumns cases)
    {
        NumberColumn margin = cases.Measures.First(m => m.Name.Name == OddsStudy.Margin);
        int[] with = [.. Enumerable.Range(0, cases.Index.Length).Where(i => margin.Present.Span[i])];
        double[] ranks = RankCorrelation.Ranks([.. with.Select(i => margin.Values.Span[i])]);
        Cases = with.Length;
        Inputs = [.. cases.Inputs.Select(input => Of(input, with, ranks)).OrderByDescending(r => Math.Abs(r.Correlation))];
    }

    /// <summary>Cases that came to a gap and solved it: others have no margin.</summary>
    public int Cases { get; }

    /// <summary>The inputs, the strongest first.</summary>
    public ImmutableArray<RankedInput> Inputs { get; }

    /// <summary>One line for each input.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => OddsText.Of(this);

    private static RankedInput Of(NumberColumn input, int[] rows, double[] ranks)
    {
        double r = RankCorrelation.Of(RankCorrelation.Ranks([.. rows.Select(i => input.Values.Span[i])]), ranks);
        return new RankedInput(input.Name, r, RankCorrelation.At95(r, rows.Length));
    }
}
