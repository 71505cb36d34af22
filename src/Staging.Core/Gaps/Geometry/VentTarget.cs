namespace Staging.Core.Gaps;

/// <summary>Where holes lead: to the outside, or into a jacket round the guide tube.</summary>
public sealed record VentTarget
{
    private VentTarget(string? jacket, double pressureCoefficient) => (Jacket, PressureCoefficient) = (jacket, pressureCoefficient);

    /// <summary>The outside, at the pressure of the surroundings.</summary>
    public static VentTarget Air { get; } = Outside(0);

    /// <summary>Name of the jacket among <see cref="GapDesign.Jackets"/>; null for the outside.</summary>
    public string? Jacket { get; }

    /// <summary>
    /// Pressure outside above that of the surroundings of the gap, over the dynamic pressure [-], -1.5 to 1; 0 for a
    /// jacket. In a staging plan the surroundings already stand at the pressure of the holes in the body side; a base
    /// is some 0.1 to 0.2 lower.
    /// </summary>
    public double PressureCoefficient { get; }

    /// <summary>The outside, at another pressure than that of the surroundings.</summary>
    /// <param name="pressureCoefficient">
    /// Pressure there above that of the surroundings, over the dynamic pressure [-], -1.5 to 1.
    /// </param>
    /// <returns>The target.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static VentTarget Outside(double pressureCoefficient) =>
        new(null, Guard.In(pressureCoefficient, -1.5, 1, "-", nameof(pressureCoefficient)));

    /// <summary>A jacket by its name.</summary>
    /// <param name="name">The name of the jacket; not blank.</param>
    /// <returns>The target.</returns>
    public static VentTarget IntoJacket(string name) => new(Guard.NotBlank(name), 0);
}
