using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>The course of a run on a lumped model: dense states and surface temperatures.</summary>
internal sealed class LumpedHistory(GapParameters parameters, DenseTrack track, IgnitionTracker ignition) : GapHistory
{
    public GapParameters Parameters => parameters;

    public DenseTrack Track => track;

    public override GapReading At(double time)
    {
        Span<double> y = stackalloc double[parameters.StateCount];
        if (track.Count > 0)
            track.At(time, y);
        else
            GapToSi.FirstState(parameters, y);
        var now = new LumpedView(parameters, y);
        return GapReading.Of(now, now.HeatingAt(time), ignition.SurfaceAt(time));
    }
}
