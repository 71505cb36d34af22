namespace Staging.Core.Studies;

/// <summary>Options of a fit. The defaults are the numbers stated here.</summary>
public sealed record CalibrationOptions
{
    /// <summary>The defaults.</summary>
    public static CalibrationOptions Default { get; } = new();

    /// <summary>
    /// Step of the slopes, as a share of the range of each input [-], 1e-7 to 0.1; well above the tolerance of the
    /// model. The default is 1e-3.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double SlopeStep { get; init => field = Guard.In(value, 1e-7, 0.1); } = 1e-3;

    /// <summary>Confidence of the intervals [-], 0.5 to 0.999999. The default is 0.95.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double Confidence { get; init => field = Guard.In(value, 0.5, 0.999999); } = 0.95;

    /// <summary>
    /// Correlation of two estimates from which they count as not separable [-], 0.5 to 0.9999. The default is 0.98, an
    /// engineering judgement: one may then replace the other.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double CorrelationLimit { get; init => field = Guard.In(value, 0.5, 0.9999); } = 0.98;

    /// <summary>
    /// Threads for the slopes, 1 to 1024; null, the default, to let the runtime choose. No result depends on it.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? Threads { get; init => field = value is { } n ? Guard.In(n, 1, 1024) : null; }
}
