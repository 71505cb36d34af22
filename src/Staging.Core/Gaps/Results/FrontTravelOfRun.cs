using Staging.Core.Fronts;

namespace Staging.Core.Gaps;

/// <summary>Front travel from the course of a gap run.</summary>
public static class FrontTravelOfRun
{
    /// <summary>How the front travelled in a run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="mixing">What lets the front grow thick.</param>
    /// <returns>The travel.</returns>
    public static FrontTravel FrontTravel(this GapRun run, FrontMixing mixing)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(mixing);
        return new FrontTravel(run, mixing);
    }
}
