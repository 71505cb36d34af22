using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;

namespace Staging.Core.Reviews;

// From a plan to one of its gaps, with the pressure, density, speed and acceleration that the flight has at
// burn-through. The flight is that of the plan as it stands: a question that then varies the gap keeps the state at
// which the plan meets it.
public static partial class StagingReviewer
{
    /// <summary>Flies a plan as far as need be and gives one of its gaps as the flight meets it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stage">Name of the stage above the gap; null for the only one that is lit through a gap.</param>
    /// <param name="options">How the flight is computed; null for the defaults. Its scope is not asked.</param>
    /// <param name="cancellationToken">Stops the flight.</param>
    /// <returns>The problem that the flight solves there.</returns>
    /// <exception cref="ArgumentException">No such stage is lit through a gap, or several are and none was
    /// named.</exception>
    /// <exception cref="InvalidModelException"><see cref="StagingPlan.Check"/> reports errors, or the flight does not
    /// come to that gap.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static GapProblem GapBelow(this StagingPlan plan, string? stage = null, FlightOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        InvalidModelException.ThrowOnError(plan.Check());
        Named(plan.Flight, stage);
        FlightOptions enough = (options ?? FlightOptions.Default) with { Scope = FlightScope.UppermostStage, KeepTracks = false };
        return plan.Flight.Fly(enough, cancellationToken: cancellationToken).GapRunBelow(stage).Problem;
    }

    /// <summary>The gap run by which a flight decided whether a stage lights: it is not solved again.</summary>
    /// <param name="flight">The flight.</param>
    /// <param name="stage">Name of the stage above the gap; null for the only one that is lit through a gap.</param>
    /// <returns>The run; its <see cref="Gaps.GapRun.Problem"/> is the gap as the flight met it.</returns>
    /// <exception cref="ArgumentException">No such stage is lit through a gap, or several are and none was
    /// named.</exception>
    /// <exception cref="InvalidModelException">The flight did not come to that gap.</exception>
    public static GapRun GapRunBelow(this FlightRun flight, string? stage = null)
    {
        ArgumentNullException.ThrowIfNull(flight);
        Stage upper = Named(flight.Plan, stage);
        return flight.Stagings.FirstOrDefault(s => s.UpperStage == upper.Name) is { } staging
            ? staging.GapRun()
            : throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "GAP060",
                $"Flight.Stages[{flight.Plan.Stages.Items.IndexOf(upper)}].Ignition", NotReached(flight))]);
    }

    /// <summary>
    /// What can be asked of one of the gaps of a plan: its layout, its model and its solver, at the state that the
    /// flight gives it.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stage">Name of the stage above the gap; null for the only one that is lit through a gap.</param>
    /// <param name="options">How the flight is computed; null for the defaults. Its scope is not asked.</param>
    /// <param name="cancellationToken">Stops the flight.</param>
    /// <returns>
    /// A nominal question; add <see cref="GapQuestion.Uncertain"/> and <see cref="GapQuestion.Asked"/> to ask for a
    /// probability.
    /// </returns>
    /// <exception cref="ArgumentException">No such stage is lit through a gap, or several are and none was
    /// named, or the plan has no layout of new vents there.</exception>
    /// <exception cref="InvalidModelException"><see cref="StagingPlan.Check"/> reports errors, or the flight does not
    /// come to that gap.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static GapQuestion QuestionBelow(this StagingPlan plan, string? stage = null, FlightOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        GapProblem problem = plan.GapBelow(stage, options, cancellationToken);
        Stage upper = Named(plan.Flight, stage);
        GapIgnition gap = upper.Gap()!;
        VentLayout layout = gap.Layout ?? throw new ArgumentException(
            $"The gap below \"{Excerpt.Of(upper.Name)}\" has no layout of new vents, so nothing can be asked about them.", nameof(plan));
        return new GapQuestion { Problem = problem, Layout = layout, Model = gap.Model, Solver = gap.Solver };
    }

    /// <summary>The gap run that a staging through a gap of this library carries.</summary>
    internal static GapRun GapRun(this StagingReport staging) => (GapRun)staging.Details!;

    private static Stage Named(FlightPlan plan, string? stage)
    {
        Stage[] all = [.. plan.Stages.Where(s => s.Gap() is not null)], fit = [.. all.Where(s => stage is null || s.Name == stage)];
        if (fit.Length == 1)
            return fit[0];
        string lit = all.Length == 0 ? "no stage is" : string.Join(" and ", all.Select(s => $"\"{Excerpt.Of(s.Name)}\""));
        string which = stage is null ? "Say which gap, by the stage above it." : $"There is no gap below \"{Excerpt.Of(stage)}\".";
        throw new ArgumentException($"{which} Lit through a gap: {lit}.", nameof(stage));
    }

    private static string NotReached(FlightRun flight) => "The flight does not come to the burn-through below this stage"
        + (flight.Stagings.FirstOrDefault(s => !s.Lit) is { } unlit
            ? $": \"{Excerpt.Of(unlit.UpperStage)}\" stays unlit. {unlit.Reason}"
            : ".");
}
