using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// A class of total impulse. A holds 1.26 to 2.50 N s and each letter doubles it; fractions of A halve it (NFPA 1125,
/// Code for the Manufacture of Model Rocket and High Power Rocket Motors; the ranges to G as printed in the launch-site
/// table of NFPA 1122, the rest by doubling).
/// </summary>
internal sealed record ImpulseClass
{
    /// <summary>Greatest impulse of class A [N s].</summary>
    private const double MaxOfA = 2.5;

    private ImpulseClass(string name, double min, double max) =>
        (Name, Min, Max) = (name, Impulse.FromNewtonSeconds(min), Impulse.FromNewtonSeconds(max));

    /// <summary>All classes from 1/8A to O, smallest first.</summary>
    public static ImmutableArray<ImpulseClass> All { get; } = Build();

    /// <summary>The letter, with its fraction: <c>1/2A</c>, <c>C</c>.</summary>
    public string Name { get; }

    /// <summary>Impulse above which the class begins [N s], not itself in it; zero for the smallest.</summary>
    public Impulse Min { get; }

    /// <summary>Greatest impulse of the class [N s], itself in it.</summary>
    public Impulse Max { get; }

    /// <summary>The class of a total impulse.</summary>
    /// <param name="totalImpulse">Total impulse [N s], above 0 and at most 40960.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static ImpulseClass Of(Impulse totalImpulse)
    {
        double impulse = Guard.Above(totalImpulse.NewtonSeconds, 0, All[^1].Max.NewtonSeconds, "N s", nameof(totalImpulse));
        return All.First(c => impulse <= c.Max.NewtonSeconds);
    }

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
