namespace Staging.Core.Studies;

/// <summary>What one observation taught, alone and beside the others.</summary>
public sealed class LearnedObservation
{
    internal LearnedObservation(string name, double alone, double givenOthers, double bitsAlone, double bitsGivenOthers, double logBest)
    {
        (Name, Alone, GivenOthers) = (name, alone, givenOthers);
        (BitsAlone, BitsGivenOthers, LogBest) = (bitsAlone, bitsGivenOthers, logBest);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>
    /// Its mean likelihood before anything was observed [-]: of an outcome the probability with which it was to be
    /// expected; of a measured number a density, of which only ratios mean something; of many numbers 0, where that is
    /// less than a number can be.
    /// </summary>
    public double Alone { get; }

    /// <summary>Its mean likelihood after all the others, in the same measure [-].</summary>
    public double GivenOthers { get; }

    /// <summary>How much it taught of all inputs together, had it been alone [bit].</summary>
    public double BitsAlone { get; }

    /// <summary>How much it taught beyond all the others [bit]: what leaving it out would lose.</summary>
    public double BitsGivenOthers { get; }

    /// <summary>
    /// The logarithm of its greatest likelihood in any case [-]: negative infinity where the model calls it impossible.
    /// Where it is much less than the observation deserves, the model explains it nowhere.
    /// </summary>
    public double LogBest { get; }

    /// <summary>Likelihood alone and after the others, and what it taught, on one line.</summary>
    /// <returns>For example <c>test 3: 0.61 alone, 0.83 after the others; taught 0.24 bit, beyond the others
    /// 0.05</c>.</returns>
    public override string ToString() => Invariant.Text($"{Name}: {Alone:G3} alone, {GivenOthers:G3} after the others; taught "
        + $"{BitsAlone:F2} bit, beyond the others {BitsGivenOthers:F2}");
}
