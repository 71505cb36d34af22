using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The course of one staging of the nominal flight.</summary>
public sealed class StagingReport
{
    internal StagingReport(FlightPlan plan, StagingRecorder log)
    {
        Lit = log.Lit && !double.IsNaN(log.AtIgnition.Height);
        LowerStage = plan.Stages[log.Stage - 1].Name;
        UpperStage = plan.Stages[log.Stage].Name;
        State = log.State!;
        Reason = log.Lit && !Lit ? "The flight ended before the motor lit." : log.Reason;
        Details = log.Answer?.Details;
        Ignition = Lit ? Duration.FromSeconds(log.IgnitionTime) : null;
        Height = Lit ? Length.FromMeters(log.AtIgnition.Height) : null;
        Velocity = Lit ? Speed.FromMetersPerSecond(log.AtIgnition.Velocity) : null;
        Separation = double.IsNaN(log.SeparationTime) ? null : Duration.FromSeconds(log.SeparationTime);
    }

    /// <summary>Name of the stage below the joint.</summary>
    public string LowerStage { get; }

    /// <summary>Name of the stage to be lit.</summary>
    public string UpperStage { get; }

    /// <summary>
    /// Flight and air at the burn-through below; with electronics, at the burnout below, or when the timer ended if
    /// that came first.
    /// </summary>
    public BurnThroughState State { get; }

    /// <summary>Whether the upper stage lit.</summary>
    public bool Lit { get; }

    /// <summary>The reason for the outcome.</summary>
    public string Reason { get; }

    /// <summary>
    /// The calculation behind the gap's answer, from <see cref="GapIgnitionResult.Details"/>; null where there was no
    /// gap, or no details.
    /// </summary>
    public object? Details { get; }

    /// <summary>Time of ignition [s]; null where it stayed cold.</summary>
    public Duration? Ignition { get; }

    /// <summary>Height at ignition [m]; null where it stayed cold.</summary>
    public Length? Height { get; }

    /// <summary>Velocity at ignition [m/s]; null where it stayed cold.</summary>
    public Speed? Velocity { get; }

    /// <summary>Time of separation [s]; null where the stages stayed joined.</summary>
    public Duration? Separation { get; }

    /// <summary>The staging on one line.</summary>
    /// <returns>Whether and when the stage lit, and why.</returns>
    public override string ToString() => Lit
        ? Invariant.Text($"{UpperStage} lights at {Ignition!.Value.Seconds:F3} s, {Height!.Value.Meters:F1} m high, at ")
            + Invariant.Text($"{Velocity!.Value.MetersPerSecond:F1} m/s. {Reason}")
        : $"{UpperStage} stays cold. {Reason}";
}
