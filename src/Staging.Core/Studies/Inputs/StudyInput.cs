namespace Staging.Core.Studies;

/// <summary>
/// One uncertain scalar of an immutable model: its name, how it scatters, and how a value is put into the model.
/// </summary>
/// <typeparam name="T">The model, for example a gap problem or a staging plan.</typeparam>
/// <remarks>
/// The way into the model is a lambda, <c>(p, v) => p with { ... }</c>: the compiler checks it, a renamed property
/// breaks the build and not the study, and nothing is reflected upon at run time. Equality of two inputs compares that
/// lambda by reference.
/// </remarks>
public sealed record StudyInput<T>
{
    /// <summary>An uncertain scalar.</summary>
    /// <param name="path">What it is called in results: letters, digits, dots and hyphens, for example
    /// <c>joint.breakaway</c>.</param>
    /// <param name="unit">Unit of its values; <c>-</c> where there is none.</param>
    /// <param name="spread">How it scatters, in [unit].</param>
    /// <param name="with">Puts a value, in [unit], into a copy of the model: <c>(p, v) => p with { ... }</c>.</param>
    /// <exception cref="ArgumentException">The path is blank or holds other characters.</exception>
    public StudyInput(string path, string unit, Distribution spread, Func<T, double, T> with) =>
        (Path, Unit, Spread, With) = (path, unit, spread, with);

    /// <summary>What it is called in results: words joined by dots, for example <c>joint.breakaway</c>.</summary>
    public string Path { get; init => field = InputPath.Checked(value); }

    /// <summary>Unit of its values; <c>-</c> where there is none.</summary>
    public string Unit { get; init => field = Guard.NotBlank(value); }

    /// <summary>How it scatters, in [Unit].</summary>
    public Distribution Spread { get; init => field = Guard.NotNull(value); }

    /// <summary>Puts a value, in [Unit], into a copy of the model.</summary>
    public Func<T, double, T> With { get; init => field = Guard.NotNull(value); }

    /// <summary>How it scatters, so that parts with other spreads differ.</summary>
    internal string Scatter => $"{Path} {Spread}";
}
