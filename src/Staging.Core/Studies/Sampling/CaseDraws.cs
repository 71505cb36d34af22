namespace Staging.Core.Studies;

/// <summary>
/// Random numbers of one case. Draw d of case k under a seed is always the same number: alone or in a batch, on any
/// thread, in any part. There is no state: the same call always gives the same number.
/// </summary>
/// <remarks>Philox 4x32-10, a counter-based generator (J. K. Salmon et al., SC'11, 2011). Not for secrets.</remarks>
public readonly struct CaseDraws
{
    /// <summary>
    /// Keeps a user's own draws separate from those that a study makes for its inputs under the same seed.
    /// </summary>
    private const uint Purpose = 0x75736572;

    private readonly ulong seed;
    private readonly ulong number;

    /// <summary>The numbers of one case.</summary>
    /// <param name="seed">The seed of the study.</param>
    /// <param name="number">Number of the case.</param>
    public CaseDraws(ulong seed, ulong number) => (this.seed, this.number) = (seed, number);

    /// <summary>A number between 0 and 1, both excluded.</summary>
    /// <param name="draw">Which draw, from 0.</param>
    /// <returns>The number [-].</returns>
    public double Uniform(uint draw) => Philox4x32.Unit(Philox4x32.Bits(seed, number, draw, Purpose));

    /// <summary>
    /// A number from the normal distribution with mean 0 and standard deviation 1, by inverse transform of
    /// <see cref="Uniform"/>.
    /// </summary>
    /// <param name="draw">Which draw, from 0.</param>
    /// <returns>The number [-].</returns>
    public double Normal(uint draw) => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, Uniform(draw));
}
