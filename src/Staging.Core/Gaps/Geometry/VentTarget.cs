namespace Staging.Core.Gaps;

/// <summary>Where holes lead. Closed: use <see cref="Match"/> to treat every case.</summary>
public abstract record VentTarget
{
    private protected VentTarget()
    {
    }

    /// <summary>The outside, at the pressure of the surroundings.</summary>
    public static VentTarget Air { get; } = new Outside();

    /// <summary>A jacket by its name.</summary>
    /// <param name="name">The name of the jacket.</param>
    /// <returns>The target.</returns>
    public static VentTarget Jacket(string name) => new IntoJacket { Name = name };

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="outside">For the outside.</param>
    /// <param name="intoJacket">For a jacket.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(Func<Outside, T> outside, Func<IntoJacket, T> intoJacket) => this switch
    {
        Outside x => outside(x),
        IntoJacket x => intoJacket(x),
        _ => throw new InvalidOperationException($"Unknown target {GetType().Name}."),
    };

    /// <summary>The outside.</summary>
    public sealed record Outside : VentTarget
    {
        /// <summary>
        /// Pressure there above that of the surroundings of the gap, over the dynamic pressure [-], -1.5 to 1. The
        /// default is 0. In a staging plan the surroundings already stand at the pressure of the holes in the body
        /// side; a base is some 0.1 to 0.2 lower.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public double PressureCoefficient { get; init => field = Guard.In(value, -1.5, 1); }
    }

    /// <summary>A jacket round the guide tube.</summary>
    public sealed record IntoJacket : VentTarget
    {
        /// <summary>Its name among <see cref="GapDesign.Jackets"/>.</summary>
        public required string Name { get; init => field = Guard.NotBlank(value); }
    }
}
