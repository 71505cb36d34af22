using Staging.Core.Flight;

namespace Staging.Core.Reviews;

/// <summary>Cautions about the class of motors and of the whole rocket.</summary>
internal static class MotorCautions
{
    private const double ModelImpulse = 160, ModelThrust = 80, ModelPropellant = 0.0625;              // N s, N, kg; one motor
    private const double ClassOneMass = 1.5, ClassOnePropellant = 0.125, ClassTwoImpulse = 40_960;    // kg, kg, N s

    /// <summary>
    /// What lies beyond the classes of model rockets; nothing where all stays within them, since the limits above say
    /// so already.
    /// </summary>
    public static IEnumerable<Caution> Beyond(FlightPlan plan, double mass, double propellant, double impulse)
    {
        Motor? motor = plan.Stages.SelectMany(s => s.AllMotors).Select(g => g.Motor).FirstOrDefault(IsHighPower);
        if (motor is not null)
        {
            yield return new Caution(
                code: "CAU018",
                subject: "motor class",
                outsideRule: true,
                text: Invariant.Text(
                    $"{motor.Name} has {motor.Thrust.TotalImpulse.NewtonSeconds:F0} N s, {motor.Thrust.AverageThrust.Newtons:F0} N "
                        + $"average and {motor.PropellantMass.Grams:F1} g of propellant: a high power motor, for certified fliers, at "
                            + $"the greater distances that code asks for multistage rockets."),
                rule: SafetyCodes.HighPowerCode);
        }

        if (mass > ClassOneMass || propellant > ClassOnePropellant)
        {
            string name = impulse <= ClassTwoImpulse ? "class 2" : "beyond class 2";
            yield return new Caution(
                code: "CAU019",
                subject: "federal class",
                outsideRule: true,
                text: Invariant.Text($"{mass * 1e3:F0} g with {propellant * 1e3:F0} g of propellant and {impulse:F1} N s is not class "
                    + $"1: {name}. Ask which authorisation of the airspace that needs."),
                rule: SafetyCodes.AmateurClasses);
        }
    }

    /// <summary>Whether any motor belongs to the code for high power.</summary>
    public static bool HasHighPower(FlightPlan plan) => plan.Stages.Any(s => s.AllMotors.Any(g => IsHighPower(g.Motor)));

    private static bool IsHighPower(Motor motor) =>
        motor.Thrust.TotalImpulse.NewtonSeconds > ModelImpulse
        || motor.Thrust.AverageThrust.Newtons > ModelThrust
        || motor.PropellantMass.Kilograms > ModelPropellant;
}
