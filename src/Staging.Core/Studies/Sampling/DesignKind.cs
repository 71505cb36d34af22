namespace Staging.Core.Studies;

/// <summary>How the cases of a study are sampled over the range of its inputs.</summary>
public enum DesignKind
{
    /// <summary>Each case drawn independently. Binomial intervals hold, and a study may stop early.</summary>
    Independent,

    /// <summary>
    /// Latin hypercube: of n cases each input takes one value from each of n equally likely strata (M. D. McKay, R. J.
    /// Beckman and W. J. Conover, Technometrics 21, 1979). The number of cases is fixed beforehand.
    /// </summary>
    LatinHypercube,

    /// <summary>
    /// Sobol's low-discrepancy sequence with the direction numbers of S. Joe and F. Y. Kuo (2008), shifted at random by
    /// the seed. Powers of two are best. At most 40 inputs.
    /// </summary>
    LowDiscrepancy,
}
