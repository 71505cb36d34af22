namespace Staging.Core.Solving;

/// <summary>The steps that one run may still take, accepted or not: shared by all methods that take them.</summary>
/// <param name="steps">How many.</param>
internal sealed class StepBudget(int steps)
{
    private int left = steps;

    /// <summary>Whether none is left.</summary>
    public bool IsSpent => left <= 0;

    /// <summary>Takes one.</summary>
    public void Take() => left--;
}
