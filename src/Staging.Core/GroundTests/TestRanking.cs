using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.GroundTests;

/// <summary>Tests that could be made, by what they would teach.</summary>
public sealed class TestRanking
{
    internal TestRanking(ImmutableArray<ExpectedInformation> tests) => Tests = tests;

    /// <summary>
    /// The tests, the most informative first. Their classes are: lit; parted, dark; dark and together.
    /// </summary>
    public ImmutableArray<ExpectedInformation> Tests { get; }

    /// <summary>A line for each test: what it would teach, and how probable each ending is.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        int width = Math.Max(4, Tests.Max(t => t.Name.Length));
        return string.Join('\n', Tests.Select(t => Invariant.Text($"  {t.Name.PadRight(width)}  {t.Bits,5:F3}  ")
            + Invariant.Text($"{t.Probabilities[0],5:F2}  {t.Probabilities[1],6:F2}  {t.Probabilities[2],8:F2}"))
            .Prepend(Invariant.Text($"  {"test".PadRight(width)}  {"bit",5}  {"lit",5}  {"parted",6}  {"together",8}")));
    }
}
