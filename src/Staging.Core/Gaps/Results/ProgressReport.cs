using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// Reports to a listener, at every hundredth of the longest possible run and at its end, how far a run has come.
/// </summary>
internal sealed class ProgressReport(IProgress<SolveProgress> listener, double horizon)
{
    private const int Parts = 100;
    private int reported;

    /// <summary>The run has come to a time [s].</summary>
    public void Reached(double time)
    {
        int part = Math.Min((int)(Parts * time / horizon), Parts - 1);
        if (part <= reported)
            return;
        reported = part;
        listener.Report(GapFromSi.Progress(time, (double)part / Parts));
    }

    /// <summary>The run is over.</summary>
    public void Done(double time) => listener.Report(GapFromSi.Progress(time, 1));
}
