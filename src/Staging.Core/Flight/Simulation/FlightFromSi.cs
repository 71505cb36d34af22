using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>From SI numbers back to quantities, for what a flight reports while it is computed.</summary>
internal static class FlightFromSi
{
    public static SolverFailure Failure(SolverFailureKind kind, double time, string message) =>
        new(kind, Duration.FromSeconds(time), message);

    /// <summary>Ignition lag and separation lag [s]; not-a-number where there is none.</summary>
    public static (double Ignition, double Separation) Times(GapIgnitionResult answer) =>
        (answer.IgnitionLag?.Seconds ?? double.NaN, answer.SeparationLag?.Seconds ?? double.NaN);

    public static BurnThroughState BurnThrough(
        string lower, string upper, double time, double height, double velocity, double mach, in AirSample air,
        double massAhead, double massBehind, double dragAhead, double dragBehind, double thrust) => new()
        {
            LowerStage = lower,
            UpperStage = upper,
            Time = Duration.FromSeconds(time),
            Height = Length.FromMeters(height),
            Speed = Speed.FromMetersPerSecond(velocity),
            MachNumber = mach,
            AirPressure = Pressure.FromPascals(air.Pressure_Pa),
            AirTemperature = Temperature.FromKelvins(air.Temperature_K),
            AirDensity = Density.FromKilogramsPerCubicMeter(air.Density_kg_per_m3),
            MassAhead = Mass.FromKilograms(massAhead),
            MassBehind = Mass.FromKilograms(massBehind),
            DragAhead = Force.FromNewtons(dragAhead),
            DragBehind = Force.FromNewtons(dragBehind),
            ThrustBehind = Force.FromNewtons(thrust),
        };
}
