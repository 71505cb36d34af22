namespace Staging.Core.Sizing;

/// <summary>One point of a search: a gap length, a total vent area and, where it is searched, a joint.</summary>
internal readonly record struct GapPoint(double Gap_mm, double Total_mm2, double? Breakaway_N = null)
{
    /// <summary>The answer of a function; a refusal is told with the point at which it happened.</summary>
    public T Told<T>(Func<GapPoint, T> function)
    {
        try
        {
            return function(this);
        }
        catch (InvalidModelException refusal)
        {
            string here = ToString();
            throw new InvalidModelException([.. refusal.Findings.Select(f => f.Saying($"{here}: {f.Message}"))]);
        }
    }

    /// <summary>The point in words, as a sentence begins.</summary>
    public override string ToString() => Invariant.Text($"At a gap of {Gap_mm:G6} mm with {Total_mm2:G6} mm2 of vents")
        + (Breakaway_N is { } newtons ? Invariant.Text($" and a joint of {newtons:G6} N") : "");
}
