namespace Staging.Core.Gaps.OneDimensional;

/// <summary>An end of the tube.</summary>
internal abstract class TubeEnd
{
    /// <summary>Whether gradients next to it are those of a mirror image: a wall.</summary>
    public abstract bool Mirrors { get; }

    /// <summary>
    /// Speed at which the end moves inwards; negative when it recedes. Only a left end may move, and only recede.
    /// </summary>
    public virtual double Speed => 0;

    /// <summary>Flow through the end, for the gas just inside.</summary>
    public abstract EndFlux Flow(in EndState inside);
}
