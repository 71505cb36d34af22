using System.Collections.Immutable;

namespace Staging.Core.Flight;

/// <summary>The rules that involve several fields of a flight plan.</summary>
internal static class FlightPlanCheck
{
    /// <summary>Share of the impulse that a chamber which blows down may still give [-]; a judgement.</summary>
    private const double MaxImpulseAfterBurnThrough = 0.1;

    public static ImmutableArray<ModelFinding> Run(FlightPlan plan)
    {
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        if (plan.Stages.Length == 0)
            findings.Add(new ModelFinding(FindingSeverity.Error, "FLT001", "Stages", "There is no stage; a plan needs at least one."));
        for (int i = 0; i < plan.Stages.Length; i++)
        {
            CheckMasses(plan.Stages[i], i, findings);
            CheckIgnition(plan, i, findings);
            CheckRecovery(plan, i, findings);
            if (NameTaken(plan, i))
                findings.Add(new ModelFinding(FindingSeverity.Error, "FLT002", $"Stages[{i}].Name",
                    $"The name '{Excerpt.Of(plan.Stages[i].Name)}' is taken by a lower stage; names must differ."));
        }

        double elevation = plan.Site.Elevation.Meters;
        double floor = plan.Site.Atmosphere.Floor_m;
        double ceiling = plan.Site.Atmosphere.Ceiling_m;
        if (elevation < floor || elevation >= ceiling)
        {
            findings.Add(new ModelFinding(FindingSeverity.Error, "FLT003", "Site.Elevation", Invariant.Text(
                $"The site lies at {elevation:G6} m, the atmosphere runs from {floor:G6} to {ceiling:G6} m; the site must lie within "
                    + $"it.")));
        }

        return findings.ToImmutable();
    }

    private static bool NameTaken(FlightPlan plan, int i)
    {
        for (int k = 0; k < i; k++)
        {
            if (plan.Stages[k].Name == plan.Stages[i].Name)
                return true;
        }

        return false;
    }

    private static void CheckMasses(Stage stage, int i, ImmutableArray<ModelFinding>.Builder findings)
    {
        CheckMotor(stage.Motor, i, -1, findings);
        for (int k = 0; k < stage.ParallelMotors.Length; k++)
        {
            Motor motor = stage.ParallelMotors[k].Motor;
            CheckMotor(motor, i, k, findings);
            if (motor.ForwardEnd is not MotorForwardEnd.Plugged)
            {
                findings.Add(new ModelFinding(FindingSeverity.Warning, "FLT013", $"Stages[{i}].ParallelMotors[{k}].Motor.ForwardEnd",
                    $"'{Excerpt.Of(motor.Name)}' burns in parallel with the main motor and is not plugged; gas from its forward "
                        + "end is not modelled."));
            }
        }

        CheckBurnThrough(stage.Motor, i, findings);
        if (!(stage.BurntMass.Kilograms > 0))
        {
            findings.Add(new ModelFinding(FindingSeverity.Error, "FLT005", $"Stages[{i}].StructureMass",
                "Structure and burnt motors weigh nothing together; some mass must be left when the propellant is gone."));
        }
    }

    /// <summary>A web that has broken no longer holds the pressure that pushes, so little thrust may follow.</summary>
    private static void CheckBurnThrough(Motor motor, int i, ImmutableArray<ModelFinding>.Builder findings)
    {
        if (motor.ForwardEnd is not MotorForwardEnd.BurnsThrough { After: { } after })
            return;
        double left = 1 - motor.Thrust.ImpulseUntil(after) / motor.Thrust.TotalImpulse;
        if (after > motor.Thrust.BurnTime)
            findings.Add(new ModelFinding(FindingSeverity.Warning, "FLT014", $"Stages[{i}].Motor.ForwardEnd", Invariant.Text(
                $"Burn-through comes {after.Seconds:G6} s after ignition, the thrust history ends at "
                    + $"{motor.Thrust.BurnTime.Seconds:G6} s; the end of the curve is taken.")));
        else if (left > MaxImpulseAfterBurnThrough)
            findings.Add(new ModelFinding(FindingSeverity.Warning, "FLT015", $"Stages[{i}].Motor.ForwardEnd", Invariant.Text(
                $"Burn-through comes {after.Seconds:G6} s after ignition, when {left:P0} of the impulse is still to come: once its web has "
                    + $"broken, '{Excerpt.Of(motor.Name)}' pushes no longer.")));
    }

    private static void CheckMotor(Motor motor, int stage, int parallel, ImmutableArray<ModelFinding>.Builder findings)
    {
        string path = parallel < 0 ? $"Stages[{stage}].Motor" : $"Stages[{stage}].ParallelMotors[{parallel}].Motor";
        findings.AddRange(MotorDesignation.OfName(motor, path));
        double loaded = motor.LoadedMass.Kilograms, propellant = motor.PropellantMass.Kilograms;
        if (propellant > loaded)
        {
            findings.Add(new ModelFinding(FindingSeverity.Error, "FLT004", $"{path}.PropellantMass", Invariant.Text(
                $"The propellant weighs {propellant * 1e3:G6} g, the loaded motor {loaded * 1e3:G6} g; the propellant must weigh less.")));
        }
    }

    private static void CheckIgnition(FlightPlan plan, int i, ImmutableArray<ModelFinding>.Builder findings)
    {
        StageIgnition ignition = plan.Stages[i].Ignition;
        if (i == 0)
        {
            if (ignition is not StageIgnition.AtLaunch)
                findings.Add(new ModelFinding(FindingSeverity.Error, "FLT006", $"Stages[{i}].Ignition",
                    "The lowest stage must be lit at launch."));
            return;
        }

        Motor below = plan.Stages[i - 1].Motor;
        switch (ignition)
        {
            case StageIgnition.AtLaunch:
                findings.Add(new ModelFinding(FindingSeverity.Error, "FLT007", $"Stages[{i}].Ignition",
                    "Only the lowest stage can be lit at launch; choose contact, gap or electronics."));
                break;
            case StageIgnition.ByContact or StageIgnition.ByGap when below.ForwardEnd is not MotorForwardEnd.BurnsThrough:
                findings.Add(new ModelFinding(FindingSeverity.Error, "FLT008", $"Stages[{i}].Ignition",
                    $"The motor below, '{Excerpt.Of(below.Name)}', does not burn through, so it lights nothing; take a booster "
                        + "motor (delay code 0) or electronics."));
                break;
            case StageIgnition.ByElectronics { From: TimerStart.Separation, SeparationAfterBurnout: null }:
                findings.Add(new ModelFinding(FindingSeverity.Error, "FLT009", $"Stages[{i}].Ignition",
                    "The timer waits for separation and separation waits for ignition; start the timer from another event or separate "
                        + "after burnout."));
                break;
            case StageIgnition.ByElectronics { From: TimerStart.BurnThroughBelow }
                when below.ForwardEnd is not MotorForwardEnd.BurnsThrough:
                findings.Add(new ModelFinding(FindingSeverity.Error, "FLT016", $"Stages[{i}].Ignition",
                    $"The timer waits for a burn-through of the motor below, '{Excerpt.Of(below.Name)}', which does not burn "
                        + "through; start it from another event, the burnout below for example."));
                break;
            default:
                break;
        }

        // Past apogee the proxy refuses off any guide, so a timer from apogee finds a guard that works.
        if (ignition is StageIgnition.ByElectronics { Guards.MaxTilt: not null, From: not TimerStart.Apogee }
            && plan.Guide.Elevation.Degrees == FlightToSi.StraightUp)
        {
            findings.Add(new ModelFinding(FindingSeverity.Warning, "FLT017", $"Stages[{i}].Ignition.Guards.MaxTilt",
                "The tilt is that of a gravity turn from the guide's elevation, and straight up it stays 0 until apogee: on the way up "
                    + "this guard refuses nothing. State a guide that leans by as much as the flight may, 85 deg for example."));
        }
    }

    private static void CheckRecovery(FlightPlan plan, int i, ImmutableArray<ModelFinding>.Builder findings)
    {
        Stage stage = plan.Stages[i];
        DeploymentTrigger? deployment = stage.Recovery.Deployment;
        if (deployment?.On is DeploymentEvent.MotorDelay && stage.Motor.ForwardEnd is not MotorForwardEnd.Ejects)
        {
            findings.Add(new ModelFinding(FindingSeverity.Error, "FLT010", $"Stages[{i}].Recovery.Deployment",
                $"The motor '{Excerpt.Of(stage.Motor.Name)}' has no ejection charge; the device would never come out."));
        }

        if (deployment?.On is DeploymentEvent.Separation && i == plan.Stages.Length - 1)
        {
            findings.Add(new ModelFinding(FindingSeverity.Error, "FLT011", $"Stages[{i}].Recovery.Deployment",
                "The uppermost stage parts from nothing above it; choose the motor's delay or apogee."));
        }

        if (stage.Recovery.Kind == RecoveryKind.Ballistic)
        {
            findings.Add(new ModelFinding(FindingSeverity.Warning, "FLT012", $"Stages[{i}].Recovery",
                $"'{Excerpt.Of(stage.Name)}' comes down ballistic, nose first at full speed; safety codes require a recovery device."));
        }
    }
}
