using Staging.Core.Plans.Codecs;
using Staging.Core.Solving;

namespace Staging.Core.Plans.Records;

/// <summary>
/// How something is integrated. Every key may be left out: the defaults are documented numbers, not physics.
/// </summary>
internal static class SolverCodec
{
    private static readonly SolverOptions Standard = SolverOptions.ForGaps;

    public static readonly RecordCodec<SolverOptions> Codec = new("solver", "How the gap is integrated.", f =>
    {
        var relative = f.Optional("relativeTolerance", NumberCodec.Ratio, x => x.RelativeTolerance, Standard.RelativeTolerance,
            "Local error per step relative to the state; 1e-6 when left out.");
        var absolute = f.Optional("scaledAbsoluteTolerance", NumberCodec.Ratio, x => x.ScaledAbsoluteTolerance,
            Standard.ScaledAbsoluteTolerance, "Local error per step as a fraction of the natural scale; 1e-8 when left out.");
        var parts = f.Optional("eventScanParts", CountCodec.Whole, x => x.EventScanParts, Standard.EventScanParts,
            "Parts into which each step is cut in the search for events; 4 when left out.");
        var width = f.Optional("eventTimeTolerance", Quantities.Duration, x => x.EventTimeTolerance, Standard.EventTimeTolerance,
            "Bracket at which an event counts as located; 1 ns when left out.");
        var longest = f.Optional("longestStep", Quantities.Duration, x => x.LongestStep, Standard.LongestStep,
            "Longest step; 1 s when left out.");
        var most = f.Optional("maxSteps", CountCodec.Whole, x => x.MaxSteps, Standard.MaxSteps,
            "Steps allowed in one run; 1 million when left out.");
        return v => new SolverOptions
        {
            RelativeTolerance = relative[v],
            ScaledAbsoluteTolerance = absolute[v],
            EventScanParts = parts[v],
            EventTimeTolerance = width[v],
            LongestStep = longest[v],
            MaxSteps = most[v],
        };
    });
}
