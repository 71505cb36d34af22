using Staging.Core.Campaign.Oracle;
using Staging.Core.Flight;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Campaign.Subjects;

/// <summary>What every flight has to keep, whatever its plan.</summary>
internal static class FlightPromises
{
    /// <summary>What does not add up of mass [-]: round-off of as many terms as there are bodies and motors.</summary>
    private const double Mass = 1e-10;

    /// <summary>Speed to which the absolute tolerance is a share [m/s], as the solver has it.</summary>
    private const double SpeedScale = 100;

    /// <summary>Steps beyond which a flight would not end soon.</summary>
    private const double MostSteps = 2_000_000;

    public static void Keep(FlightRun run, Facts facts)
    {
        facts.Steps += run.Statistics.AcceptedSteps + run.Statistics.RejectedSteps;
        facts.Answer = run.Main.Outcome.GetType().Name;
        facts.Within("steps", "steps", run.Statistics.AcceptedSteps + run.Statistics.RejectedSteps, 0, MostSteps);
        facts.Within("ledger of mass", "what does not add up", run.MassResidual(), -Mass, Mass);
        facts.Read("flight", run);
        foreach (BodyFlight body in run.Bodies.Concat(run.FailureCases.SelectMany(c => c.Bodies)))
            Keep(body, run, facts);
        facts.Text("text", run.ToString());
    }

    private static void Keep(BodyFlight body, FlightRun run, Facts facts)
    {
        if (body.Outcome is FlightOutcome.NotSolved failed)
            facts.Gave = failed.Failure.Kind.ToString();
        double last = body.Start.Seconds;
        foreach (FlightEvent e in body.Events)
        {
            facts.Within("order of events", $"{e.Kind} of {body.Name}", e.Time.Seconds, last, body.End.Seconds);
            last = e.Time.Seconds;
        }

        if (!body.HasHistory)
            return;
        double lasts = body.End.Seconds - body.Start.Seconds;
        double heaviest = 0;
        FlightColumns columns = body.Sample(Duration.FromSeconds(Math.Clamp(lasts / 200, 1e-6, 1000)));
        foreach (FlightChannel channel in Enum.GetValues<FlightChannel>())
            facts.Column($"{body.Name} {channel}", columns[channel].Span);
        foreach (double mass in columns[FlightChannel.Mass].Span)
        {
            facts.Within("mass not above zero", body.Name, mass, double.Epsilon, double.MaxValue);
            heaviest = Math.Max(heaviest, mass);
        }

        // The ledger is that of the way up: in steady descent the speed is the terminal one and is not integrated.
        if (body.Outcome is FlightOutcome.NotSolved || body.ApogeeTime is null)
            return;
        EnergyLedger ledger = body.EnergyLedger();
        facts.Read("energy", ledger);
        double[] entries =
            [ledger.Thrust.Joules, ledger.Drag.Joules, ledger.Gravity.Joules, ledger.LeftWithMass.Joules, ledger.KineticGain.Joules];
        double whole = Math.Max(entries.Max(Math.Abs), double.Epsilon);
        SolverOptions solver = run.Options.Solver;
        // A body that hardly moves is known to the absolute tolerance of its speed: m v times that is what its energy may be off by.
        double unseen = heaviest * body.MaximumSpeed.MetersPerSecond * SpeedScale * solver.ScaledAbsoluteTolerance;
        double allowed = Math.Max(1e-10, solver.RelativeTolerance * run.Statistics.AcceptedSteps)
            + run.Statistics.AcceptedSteps * unseen / whole;
        facts.Within("ledger of energy", $"{body.Name}, {ledger}:", ledger.Residual, -allowed, allowed);
    }
}
