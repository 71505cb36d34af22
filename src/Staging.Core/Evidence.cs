namespace Staging.Core;

/// <summary>How a value was obtained from its source: the weight it can bear.</summary>
public enum Evidence
{
    /// <summary>Read in the named source.</summary>
    SeenInSource,

    /// <summary>Computed from the formula of the named source.</summary>
    ComputedFromFormula,

    /// <summary>Recalled from the named source, not seen again.</summary>
    FromMemory,

    /// <summary>Common practice of the trade, without a source.</summary>
    CommonPractice,

    /// <summary>Engineering judgement; the text gives the reason and the range.</summary>
    Judgement,

    /// <summary>Measured by the user.</summary>
    Measured,

    /// <summary>Invented for a demonstration; stands for nothing real.</summary>
    Invented,
}
