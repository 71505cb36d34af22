using UnitsNet;

namespace Staging.Core.Studies;

/// <summary>
/// How far a study has come. Reported in order, on the thread that called; the last report comes before the result.
/// </summary>
/// <remarks>
/// <see cref="Progress{T}"/> hands reports on to the context that it was made in, where they may come late; a listener
/// of your own hears them at once.
/// </remarks>
/// <param name="Done">Cases done.</param>
/// <param name="Total">Cases to do; in the report of an early stop, those that were done.</param>
/// <param name="Remaining">Time left at the rate so far [s]; zero at the end.</param>
public readonly record struct StudyProgress(long Done, long Total, Duration Remaining)
{
    /// <summary>Share done [-], 0 to 1.</summary>
    public double Fraction => Total == 0 ? 1 : (double)Done / Total;

    /// <summary>Progress after some seconds.</summary>
    internal static StudyProgress After(long done, long total, double elapsed) =>
        new(done, total, Duration.FromSeconds(elapsed * (total - done) / done));
}
