namespace Staging.Core.Discharge;

/// <summary>Which limits of use of ISO 5167-2:2003 (5.3.1, 5.3.2.2) a reading leaves.</summary>
[Flags]
public enum OrificePlateNotes
{
    /// <summary>Inside every limit.</summary>
    None = 0,

    /// <summary>Orifice diameter below 12.5 mm.</summary>
    BoreTooSmall = 1,

    /// <summary>Pipe diameter below 50 mm.</summary>
    PipeTooSmall = 2,

    /// <summary>Pipe diameter above 1 m.</summary>
    PipeTooLarge = 4,

    /// <summary>Diameter ratio outside 0.10 to 0.75.</summary>
    DiameterRatioOutside = 8,

    /// <summary>Pipe Reynolds number below the limit for the tappings and the diameter ratio.</summary>
    ReynoldsTooLow = 16,

    /// <summary>Downstream over upstream pressure below 0.75, the end of the expansibility fit.</summary>
    PressureRatioTooLow = 32,
}
