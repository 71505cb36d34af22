using UnitsNet;

namespace Staging.Core.Studies;

/// <summary>
/// Progress of a study. Reported in order, on the calling thread; the last report comes before the result.
/// </summary>
/// <remarks>
/// <see cref="Progress{T}"/> hands reports on to the context that it was made in, where they may arrive late; a direct
/// implementation of the interface receives them at once.
/// </remarks>
public sealed class StudyProgress
{
    private StudyProgress(long done, long total, Duration remaining) => (Done, Total, Remaining) = (done, total, remaining);

    /// <summary>Cases done.</summary>
    public long Done { get; }

    /// <summary>Cases to do; in the report of an early stop, those that were done.</summary>
    public long Total { get; }

    /// <summary>Estimated time left at the rate so far [s]; zero at the end.</summary>
    public Duration Remaining { get; }

    /// <summary>Share done [-], 0 to 1.</summary>
    public double Fraction => Total == 0 ? 1 : (double)Done / Total;

    /// <summary>Progress after some seconds.</summary>
    internal static StudyProgress After(long done, long total, double elapsed) =>
        new(done, total, Duration.FromSeconds(elapsed * (total - done) / done));
}
