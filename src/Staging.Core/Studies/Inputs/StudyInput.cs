namespace Staging.Core.Studies;

/// <summary>
/// One uncertain scalar of an immutable model: its name, its distribution, and how a value is set in the model.
/// </summary>
/// <typeparam name="T">The model, for example a gap problem or a staging plan.</typeparam>
/// <remarks>
/// The setter is a lambda, <c>(p, v) => p with { ... }</c>: the compiler checks it, a renamed property
/// breaks the build and not the study, and no reflection is used. Equality of two inputs compares that
/// lambda by reference.
/// </remarks>
public sealed record StudyInput<T>
{
    /// <summary>An uncertain scalar.</summary>
    /// <param name="path">What it is called in results: letters, digits, dots, hyphens, underscores and inner spaces,
    /// for example <c>joint.breakaway</c>.</param>
    /// <param name="unit">Unit of its values; <c>-</c> where there is none.</param>
    /// <param name="spread">How it scatters, in [unit].</param>
    /// <param name="with">Puts a value, in [unit], into a copy of the model: <c>(p, v) => p with { ... }</c>.</param>
    /// <exception cref="ArgumentException">The path is blank or holds other characters.</exception>
    public StudyInput(string path, string unit, Distribution spread, Func<T, double, T> with) =>
        (Path, Unit, Spread, With) = (path, unit, spread, with);

    /// <summary>Its name in results: words joined by dots, for example <c>joint.breakaway</c>.</summary>
    public string Path { get; init => field = InputPath.Checked(value); }

    /// <summary>Unit of its values; <c>-</c> where there is none.</summary>
    public string Unit { get; init => field = Guard.NotBlank(value); }

    /// <summary>Its distribution, in [Unit].</summary>
    public Distribution Spread { get; init => field = Guard.NotNull(value); }

    /// <summary>Sets a value, in [Unit], in a copy of the model.</summary>
    public Func<T, double, T> With { get; init => field = Guard.NotNull(value); }

    /// <summary>Its distribution as text, so that parts with other distributions differ.</summary>
    internal string Scatter => $"{Path} {Spread}";
}
