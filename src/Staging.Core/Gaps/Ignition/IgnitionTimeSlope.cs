namespace Staging.Core.Gaps;

/// <summary>How the time to light answers to one input.</summary>
/// <param name="Input">Path of the input in the design, for example <c>Grain.Conductivity</c>.</param>
/// <param name="Unit">Unit of its value; <c>-</c> where there is none.</param>
/// <param name="Value">Its nominal value [Unit].</param>
/// <param name="Slope">d ln(lit time)/d ln(input) [-]: 1 means that one percent more takes one percent longer.</param>
/// <param name="StepError">Error of that slope by the step of the differences [-]: a third of the change when the step
/// was halved.</param>
public sealed record IgnitionTimeSlope(string Input, string Unit, double Value, double Slope, double StepError);
