namespace Staging.Core.Plans.Forms;

/// <summary>One reading of one text: the problems found so far, and how the files it names are opened.</summary>
internal sealed class PlanReading(Func<string, TextReader> openThrustCurve)
{
    /// <summary>All problems, in the order in which they were found.</summary>
    public List<PlanProblem> Problems { get; } = [];

    /// <summary>Opens a thrust curve by the name the plan gives.</summary>
    public Func<string, TextReader> OpenThrustCurve { get; } = openThrustCurve;
}
