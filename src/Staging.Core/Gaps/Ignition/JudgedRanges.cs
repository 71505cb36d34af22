namespace Staging.Core.Gaps;

/// <summary>
/// The ranges that can be defended for how a grain is lit, in one place for notes, inputs and brackets.
/// </summary>
internal static class JudgedRanges
{
    /// <summary>
    /// Particle efficiency [-]: a guess over its whole range, see <see cref="MixingAndHeat.Judged"/>.
    /// </summary>
    public const double MinParticleEfficiency = 0.03, MaxParticleEfficiency = 0.6;

    /// <summary>
    /// Ignition temperature [K] where a grain is lit within milliseconds, see <see cref="StartingGaps.Bore18mm"/>.
    /// </summary>
    public const double MinIgnition = 650, MaxIgnition = 920;
}
