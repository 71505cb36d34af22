using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// The usual motor code: impulse class, average thrust in newtons, and after a dash the delay in seconds; delay
/// 0 is a booster motor that burns through, P a plugged one. Invented examples: <c>C7-4</c>,
/// <c>1/2A7-3</c>, <c>D19-0</c>, <c>F97-P</c>.
/// </summary>
public sealed class MotorDesignation
{
    /// <summary>
    /// Tolerance of a motor's average thrust about the value of its code [-] (NFPA 1125; from memory).
    /// </summary>
    private const double ThrustBand = 0.2;

    private const double MaxThrust = 100_000;
    private const double LongestDelay = 100;

    private MotorDesignation(ImpulseClass impulseClass, Force averageThrust, MotorForwardEnd forwardEnd)
    {
        ImpulseClass = impulseClass.Name;
        (MinImpulse, MaxImpulse) = (Impulse.FromNewtonSeconds(impulseClass.Min), Impulse.FromNewtonSeconds(impulseClass.Max));
        (AverageThrust, ForwardEnd) = (averageThrust, forwardEnd);
    }

    /// <summary>Class of total impulse: a letter, with its fraction: <c>1/2A</c>, <c>C</c>.</summary>
    public string ImpulseClass { get; }

    /// <summary>Impulse above which the class begins [N s], not itself in it; zero for the smallest.</summary>
    public Impulse MinImpulse { get; }

    /// <summary>Greatest impulse of the class [N s], itself in it.</summary>
    public Impulse MaxImpulse { get; }

    /// <summary>Average thrust that the code states [N].</summary>
    public Force AverageThrust { get; }

    /// <summary>The forward end given by the part after the dash.</summary>
    public MotorForwardEnd ForwardEnd { get; }

    /// <summary>The class of a total impulse.</summary>
    /// <param name="totalImpulse">Total impulse [N s], above 0 and at most 40960.</param>
    /// <returns>The letter, with its fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static string ClassOf(Impulse totalImpulse) => Flight.ImpulseClass.Of(
        Guard.Above(totalImpulse.NewtonSeconds, 0, Flight.ImpulseClass.All[^1].Max, "N s", nameof(totalImpulse))).Name;

    /// <summary>Reads a code.</summary>
    /// <param name="text">The code; capital letters, point as decimal mark, blanks around it are passed over.</param>
    /// <returns>What it says.</returns>
    /// <exception cref="FormatException">It is not a code; the message names the part that fails.</exception>
    public static MotorDesignation Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string code = text.Trim();
        return Read(code, out string? fault) ?? throw new FormatException($"'{Excerpt.Of(code)}' is not a motor code: {fault}");
    }

    /// <summary>Reads a code if it is one.</summary>
    /// <param name="text">The code.</param>
    /// <param name="designation">What it says; null where it is none.</param>
    /// <returns>Whether it is one.</returns>
    public static bool TryParse(string? text, [NotNullWhen(true)] out MotorDesignation? designation)
    {
        designation = text is null ? null : Read(text.Trim(), out _);
        return designation is not null;
    }

    /// <summary>
    /// Whether a motor agrees with the code: total impulse in the class, average thrust within 20 %, the same forward
    /// end. <see cref="FlightPlan.Check"/> asks it of every motor whose name holds a
    /// code, by the first.
    /// </summary>
    /// <param name="motor">The motor.</param>
    /// <returns>Warnings <c>FLT020</c> (impulse), <c>FLT021</c> (average thrust) and <c>FLT022</c> (forward end); empty
    /// where it agrees.</returns>
    public IEnumerable<ModelFinding> Compare(Motor motor)
    {
        ArgumentNullException.ThrowIfNull(motor);
        return Compared(motor, "Motor");
    }

    /// <summary>What the name of a motor says beside its numbers, by the first word of it that is a code.</summary>
    internal static IEnumerable<ModelFinding> OfName(Motor motor, string path) =>
        motor.Name.Split(' ').Select(w => Read(w.Trim(), out _)).OfType<MotorDesignation>().FirstOrDefault()?.Compared(motor, path) ?? [];

    private IEnumerable<ModelFinding> Compared(Motor motor, string path)
    {
        double impulse = motor.Thrust.TotalImpulse.NewtonSeconds, thrust = motor.Thrust.AverageThrust.Newtons;
        if (!(impulse > MinImpulse.NewtonSeconds && impulse <= MaxImpulse.NewtonSeconds))
        {
            yield return new ModelFinding(FindingSeverity.Warning, "FLT020", $"{path}.Thrust", Invariant.Text(
                $"The curve has {impulse:F2} N s; class {ImpulseClass} holds more than {MinImpulse.NewtonSeconds:G6} and at "
                    + $"most {MaxImpulse.NewtonSeconds:G6} N s."));
        }

        if (Math.Abs(thrust / AverageThrust.Newtons - 1) > ThrustBand)
        {
            yield return new ModelFinding(FindingSeverity.Warning, "FLT021", $"{path}.Thrust", Invariant.Text(
                $"The curve averages {thrust:F2} N to its last point; the code says {AverageThrust.Newtons:G4} N, and 20 % either way "
                    + $"is usual."));
        }

        if (Says(ForwardEnd) is var said && Says(motor.ForwardEnd) is var does && said != does)
        {
            yield return new ModelFinding(FindingSeverity.Warning, "FLT022", $"{path}.ForwardEnd",
                $"The motor {does}; by the code {this} it {said}.");
        }
    }

    private static string Says(MotorForwardEnd end) => end.Match(
        _ => "burns through", e => Invariant.Text($"ejects after {e.Delay.Seconds:0.###} s"), _ => "is plugged");

    /// <summary>The code.</summary>
    /// <returns>For example <c>C7-4</c>.</returns>
    public override string ToString()
    {
        string end = ForwardEnd.Match(_ => "0", e => Invariant.Text($"{e.Delay.Seconds:0.##}"), _ => "P");
        return Invariant.Text($"{ImpulseClass}{AverageThrust.Newtons:0.####}-{end}");
    }

    private static MotorDesignation? Read(string text, out string? fault)
    {
        int letter = text.AsSpan().IndexOfAnyInRange('A', 'Z');
        ImpulseClass? impulseClass = letter < 0
            ? null
            : Flight.ImpulseClass.All.FirstOrDefault(c => text.AsSpan(0, letter + 1).SequenceEqual(c.Name));
        if (impulseClass is null)
            return Fail("it must begin with an impulse class, 1/8A to O.", out fault);
        int dash = text.IndexOf('-', StringComparison.Ordinal);
        if (dash < 0)
            return Fail("a dash and the delay must follow the thrust.", out fault);
        if (!Number(text.AsSpan(letter + 1, dash - letter - 1), out double thrust) || !(thrust > 0 && thrust <= MaxThrust))
            return Fail("the average thrust [N] must be between class and dash.", out fault);
        ReadOnlySpan<char> end = text.AsSpan(dash + 1);
        double delay = 0;
        if (end is not "P" && !(Number(end, out delay) && delay is >= 0 and <= LongestDelay))
            return Fail("the dash must be followed by the delay [s], at most 100, or P.", out fault);
        fault = null;
        return new MotorDesignation(impulseClass, Force.FromNewtons(thrust), end is "P"
            ? new MotorForwardEnd.Plugged()
            : delay == 0 ? new MotorForwardEnd.BurnsThrough() : new MotorForwardEnd.Ejects { Delay = Duration.FromSeconds(delay) });
    }

    private static MotorDesignation? Fail(string why, out string? fault)
    {
        fault = why;
        return null;
    }

    private static bool Number(ReadOnlySpan<char> text, out double value) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
}
