using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>How one staging of the nominal flight went.</summary>
public sealed record StagingReport
{
    /// <summary>Name of the stage below the joint.</summary>
    public required string LowerStage { get; init; }

    /// <summary>Name of the stage to be lit.</summary>
    public required string UpperStage { get; init; }

    /// <summary>
    /// Flight and air at the burn-through below; with electronics, at the burnout below, or when the timer ended if
    /// that came first.
    /// </summary>
    public required BurnThroughState State { get; init; }

    /// <summary>Whether the upper stage lit.</summary>
    public required bool Lit { get; init; }

    /// <summary>What decided it.</summary>
    public required string Reason { get; init; }

    /// <summary>
    /// What the gap's answer was computed from, as <see cref="GapIgnitionResult.Details"/> gave it; null where no gap
    /// was asked, or nothing was given.
    /// </summary>
    public required object? Details { get; init; }

    /// <summary>Time of ignition [s]; null where it stayed cold.</summary>
    public required Duration? Ignition { get; init; }

    /// <summary>Height at ignition [m]; null where it stayed cold.</summary>
    public required Length? Height { get; init; }

    /// <summary>Velocity at ignition [m/s]; null where it stayed cold.</summary>
    public required Speed? Velocity { get; init; }

    /// <summary>Time of separation [s]; null where the stages stayed joined.</summary>
    public required Duration? Separation { get; init; }

    internal static StagingReport From(FlightPlan plan, StagingRecorder log)
    {
        bool burnt = log.Lit && !double.IsNaN(log.AtIgnition.Height);
        return new StagingReport
        {
            LowerStage = plan.Stages[log.Stage - 1].Name,
            UpperStage = plan.Stages[log.Stage].Name,
            State = log.State!,
            Lit = burnt,
            Reason = log.Lit && !burnt ? "The flight ended before the motor lit." : log.Reason,
            Details = log.Answer?.Details,
            Ignition = burnt ? Duration.FromSeconds(log.IgnitionTime) : null,
            Height = burnt ? Length.FromMeters(log.AtIgnition.Height) : null,
            Velocity = burnt ? Speed.FromMetersPerSecond(log.AtIgnition.Velocity) : null,
            Separation = double.IsNaN(log.SeparationTime) ? null : Duration.FromSeconds(log.SeparationTime),
        };
    }
}
