using System.Collections.Immutable;

namespace Staging.Core.Flight;

/// <summary>
/// A class of total impulse. A holds 1.26 to 2.50 N s and each letter doubles it; fractions of A halve it (NFPA 1125,
/// Code for the Manufacture of Model Rocket and High Power Rocket Motors; the ranges to G as printed in the launch-site
/// table of NFPA 1122, the rest by doubling).
/// </summary>
/// <param name="Name">The letter, with its fraction: <c>1/2A</c>, <c>C</c>.</param>
/// <param name="Min">Impulse above which the class begins [N s], not itself in it; zero for the smallest.</param>
/// <param name="Max">Greatest impulse of the class [N s], itself in it.</param>
internal sealed record ImpulseClass(string Name, double Min, double Max)
{
    /// <summary>Greatest impulse of class A [N s].</summary>
    private const double MaxOfA = 2.5;

    /// <summary>All classes from 1/8A to O, smallest first.</summary>
    public static ImmutableArray<ImpulseClass> All { get; } = Build();

    /// <summary>The class of a total impulse [N s]; none is larger than the last.</summary>
    public static ImpulseClass Of(double impulse) => All.First(c => impulse <= c.Max);

    private static ImmutableArray<ImpulseClass> Build()
    {
        var classes = ImmutableArray.CreateBuilder<ImpulseClass>();
        double min = 0, max = MaxOfA / 8;
        foreach (string name in (ReadOnlySpan<string>)["1/8A", "1/4A", "1/2A", "A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L",
            "M", "N", "O"])
        {
            classes.Add(new ImpulseClass(name, min, max));
            (min, max) = (max, 2 * max);
        }

        return classes.ToImmutable();
    }
}
