namespace Staging.Core.Gaps;

/// <summary>How the time to light answers to one input.</summary>
/// <remarks>
/// Immutable; may be read from any thread. Made by <see cref="GapProblem.SensitivityOfIgnitionTime"/>.
/// </remarks>
public sealed class IgnitionTimeSlope
{
    internal IgnitionTimeSlope(IgnitionInput input, double value, double slope, double stepError) =>
        (Input, Unit, Value, Slope, StepError) = (input.Name, input.Unit, value, slope, stepError);

    /// <summary>Path of the input in the design, for example <c>Grain.Conductivity</c>.</summary>
    public string Input { get; }

    /// <summary>Unit of its value; <c>-</c> where there is none.</summary>
    public string Unit { get; }

    /// <summary>Its nominal value [Unit].</summary>
    public double Value { get; }

    /// <summary>d ln(lit time)/d ln(input) [-]: 1 means that one percent more takes one percent longer.</summary>
    public double Slope { get; }

    /// <summary>
    /// Error of that slope by the step of the differences [-]: a third of the change when the step was halved.
    /// </summary>
    public double StepError { get; }

    /// <summary>The input, its value and the slope.</summary>
    /// <returns>For example <c>Grain.Conductivity, 0.3 W/(m K): one percent more takes 0.52 % longer</c>.</returns>
    public override string ToString() =>
        Invariant.Text($"{Input}, {Value:G4} {Unit}: one percent more takes {Math.Abs(Slope):F2} % {(Slope < 0 ? "less" : "longer")}");
}
