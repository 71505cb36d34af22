namespace Staging.Core.Plans;

/// <summary>One thing wrong with the text of a plan.</summary>
public sealed class PlanProblem
{
    internal PlanProblem(string jsonPath, string message) => (JsonPath, Message) = (jsonPath, message);

    /// <summary>Where, for example <c>$.flight.stages[1].motor.length</c>; <c>$</c> is the whole text.</summary>
    public string JsonPath { get; }

    /// <summary>What is wrong, with value, unit and range, and what would be accepted.</summary>
    public string Message { get; }

    /// <summary>The problem on one line.</summary>
    /// <returns>Path and message.</returns>
    public override string ToString() => $"{JsonPath}: {Message}";
}
