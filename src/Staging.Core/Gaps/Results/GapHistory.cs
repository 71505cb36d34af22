using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>What a run keeps of its course, whatever model made it.</summary>
internal abstract class GapHistory
{
    /// <summary>The state at a time within the run [s].</summary>
    public abstract GapReading At(double time);

    /// <summary>
    /// The gas along the tube at the requested times; empty for a model that resolves nothing along the tube.
    /// </summary>
    public virtual ImmutableArray<GapProfile> Profiles => [];
}
