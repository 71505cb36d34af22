using Staging.Core.Solving;

namespace Staging.Core.Plans.Forms;

/// <summary>How closely a gap is solved. Every key may be left out, as in the library.</summary>
internal static class SolverForms
{
    public static RecordForm<SolverOptions> Options { get; } = new("solver options", k =>
    {
        SolverOptions usual = SolverOptions.Default;
        var relative = k.Or("relativeTolerance", NumberForm.Ratio, x => x.RelativeTolerance, usual.RelativeTolerance);
        var absolute = k.Or("scaledAbsoluteTolerance", NumberForm.Ratio, x => x.ScaledAbsoluteTolerance, usual.ScaledAbsoluteTolerance);
        var parts = k.Or("eventScanParts", CountForm.Whole, x => x.EventScanParts, usual.EventScanParts);
        var eventTime = k.Or("eventTimeTolerance", Quantities.Duration, x => x.EventTimeTolerance, usual.EventTimeTolerance);
        var longest = k.Or("longestStep", Quantities.Duration, x => x.LongestStep, usual.LongestStep);
        var most = k.Or("mostSteps", CountForm.Whole, x => x.MostSteps, usual.MostSteps);
        return v => new SolverOptions
        {
            RelativeTolerance = relative(v), ScaledAbsoluteTolerance = absolute(v), EventScanParts = parts(v),
            EventTimeTolerance = eventTime(v), LongestStep = longest(v), MostSteps = most(v),
        };
    });
}
