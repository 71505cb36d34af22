namespace Staging.Core.Solving;

/// <summary>The steps that one run may still take, accepted or not: shared by all methods that take them.</summary>
/// <param name="steps">How many.</param>
/// <param name="whole">The budget of which this is a share; null where there is none.</param>
internal sealed class StepBudget(int steps, StepBudget? whole = null)
{
    private int left = steps;

    /// <summary>Whether none is left.</summary>
    public bool IsSpent => left <= 0 || whole?.IsSpent is true;

    /// <summary>Takes one, of the whole too.</summary>
    public void Take()
    {
        left--;
        whole?.Take();
    }

    /// <summary>Grants so many anew; what has been taken of the whole is gone.</summary>
    public void Renew(int granted) => left = granted;
}
