namespace Staging.Core.Validation;

/// <summary>One comparison of our number with one that somebody else published, or that follows from a published equation.</summary>
public sealed record OutsideCheck
{
    /// <summary>The floor it stands on: Gases, Discharge, Gaps, Flight, Studies.</summary>
    public required string Floor { get; init; }

    /// <summary>What is compared, with its conditions.</summary>
    public required string Quantity { get; init; }

    public required string Unit { get; init; }

    public required double Expected { get; init; }

    public required double Ours { get; init; }

    public required Tolerance Within { get; init; }

    /// <summary>Source and how the expected value was got from it.</summary>
    public required Provenance Provenance { get; init; }

    public double Deviation => Math.Abs(Ours - Expected);

    /// <summary>Makes a check of its parts, in their order above, and asserts it.</summary>
    public static void Verify(string floor, string quantity, string unit, double expected, double ours, Tolerance within, Provenance source) => new OutsideCheck
    {
        Floor = floor,
        Quantity = quantity,
        Unit = unit,
        Expected = expected,
        Ours = ours,
        Within = within,
        Provenance = source,
    }.Verify();

    /// <summary>Asserts the comparison and enters it in the table of the run.</summary>
    public void Verify()
    {
        CheckTable.Enter(this);
        Assert.True(
            Deviation <= Within.Absolute(Expected),
            $"{Quantity}: expected {Expected:R} {Unit}, ours {Ours:R}, deviation {Deviation:G3}, allowed {Within.Absolute(Expected):G3} ({Within.Reason}).");
    }
}
