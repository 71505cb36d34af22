using System.Collections.Immutable;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// The course of a one-dimensional run: readings at a fixed interval and at the end, straight lines between them.
/// </summary>
internal sealed class OneDimensionalHistory(IReadOnlyList<double> times, IReadOnlyList<GapReading> readings,
    ImmutableArray<GapProfile> profiles) : GapHistory
{
    public override ImmutableArray<GapProfile> Profiles => profiles;

    public override GapReading At(double time)
    {
        int low = 0, high = times.Count - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = times[middle] <= time ? (middle, high) : (low, middle);
        }

        double span = times[high] - times[low], s = span > 0 ? Math.Clamp((time - times[low]) / span, 0, 1) : 0;
        return GapReading.Between(readings[low], readings[high], s);
    }
}
