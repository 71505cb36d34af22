using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>How often one stage lights.</summary>
public sealed class StageOdds
{
    internal StageOdds(string stage, Proportion lights, MeasureSummary? margin) => (Stage, Lights, Margin) = (stage, lights, margin);

    /// <summary>Name of the stage.</summary>
    public string Stage { get; }

    /// <summary>
    /// In how many of all cases it lit; one whose turn never came, since a stage below stayed cold, did not, and one
    /// whose gap was not solved counts against it.
    /// </summary>
    public Proportion Lights { get; }

    /// <summary>
    /// How far the grain surface got above its ignition temperature [K], in the cases that came to its gap and solved
    /// it; null where it is not lit through a gap of this library.
    /// </summary>
    public MeasureSummary? Margin { get; }

    /// <summary>The share of the cases and where the true one lies, on one line.</summary>
    /// <returns>For example <c>sustainer lights in 69.8 % (279 of 400; 65.1 to 74.0 % at 95 %)</c>.</returns>
    public override string ToString() => $"{Stage} lights in {OddsText.Share(Lights)}";
}
