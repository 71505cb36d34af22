using Staging.Core.Flight;
using static Staging.Core.Reviews.CautionRules;

namespace Staging.Core.Reviews;

/// <summary>Cautions about the class of motors and of the whole rocket.</summary>
internal static class MotorCautions
{
    private const double ModelImpulse = 160, ModelThrust = 80, ModelPropellant = 0.0625;              // N s, N, kg; one motor
    private const double ClassOneMass = 1.5, ClassOnePropellant = 0.125, ClassTwoImpulse = 40_960;    // kg, kg, N s

    /// <summary>Whether any motor is a high power motor.</summary>
    public static Caution HighPower(FlightPlan plan)
    {
        Motor? motor = plan.Stages.SelectMany(s => s.AllMotors).Select(g => g.Motor).FirstOrDefault(IsHighPower);
        return new Caution
        {
            Code = "CAU018",
            Subject = "motor class",
            OutsideRule = motor is not null,
            Text = motor is null
                ? "no motor exceeds what a model rocket motor may have."
                : Say($"{motor.Name} has {motor.Thrust.TotalImpulse.NewtonSeconds:F0} N s, {motor.Thrust.AverageThrust.Newtons:F0} N average and {motor.PropellantMass.Grams:F1} g of propellant: a high power motor, for certified fliers, at the greater distances that code asks for multistage rockets."),
            Rule = SafetyCodes.HighPowerCode,
        };
    }

    /// <summary>Class of the whole rocket under federal rules.</summary>
    public static Caution FederalClass(double mass, double propellant, double impulse)
    {
        string name = mass <= ClassOneMass && propellant <= ClassOnePropellant ? "class 1"
            : impulse <= ClassTwoImpulse ? "class 2, which needs an authorisation of the airspace" : "beyond class 2";
        return new Caution
        {
            Code = "CAU019",
            Subject = "federal class",
            OutsideRule = name != "class 1",
            Text = Say($"{mass * 1e3:F0} g with {propellant * 1e3:F0} g of propellant and {impulse:F1} N s: {name}, if the materials are those of the rule."),
            Rule = SafetyCodes.AmateurClasses,
        };
    }

    private static bool IsHighPower(Motor motor) =>
        motor.Thrust.TotalImpulse.NewtonSeconds > ModelImpulse
        || motor.Thrust.AverageThrust.Newtons > ModelThrust
        || motor.PropellantMass.Kilograms > ModelPropellant;
}
