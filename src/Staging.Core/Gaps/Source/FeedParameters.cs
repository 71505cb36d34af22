using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>A known flow into the tube at station 0: straight lines between points, nothing outside them.</summary>
internal sealed class FeedParameters(double[] time, double[] massFlow, double[] temperature)
{
    /// <summary>Times of the points [s].</summary>
    public ReadOnlySpan<double> Times => time;

    /// <summary>Index of the piece in which a phase that starts at a time lies; -1 outside the table.</summary>
    public int PieceFrom(double start)
    {
        if (!(start >= time[0] && start < time[^1]))
            return -1;
        int i = Array.BinarySearch(time, start);
        return i >= 0 ? i : ~i - 1;
    }

    /// <summary>Mass flow [kg/s] and temperature [K] in a piece.</summary>
    public (T MassFlow, T Temperature) At<T>(int piece, T t)
        where T : struct, IReal<T>
    {
        T s = (t - time[piece]) / (time[piece + 1] - time[piece]);
        return (massFlow[piece] + s * (massFlow[piece + 1] - massFlow[piece]),
            temperature[piece] + s * (temperature[piece + 1] - temperature[piece]));
    }
}
