namespace Staging.Core.Plans;

/// <summary>One thing wrong with the text of a plan.</summary>
/// <param name="JsonPath">Where, for example <c>$.flight.stages[1].motor.length</c>; <c>$</c> is the whole
/// text.</param>
/// <param name="Message">What is wrong, with value, unit and range, and what would be accepted.</param>
public sealed record PlanProblem(string JsonPath, string Message)
{
    /// <summary>The problem on one line.</summary>
    /// <returns>Path and message.</returns>
    public override string ToString() => $"{JsonPath}: {Message}";
}
