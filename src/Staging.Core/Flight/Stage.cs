using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>One stage of the stack, with the motors it carries.</summary>
public sealed record Stage
{
    /// <summary>What it is called in the results; unique within a plan.</summary>
    public required string Name { get; init => field = Guard.NotBlank(value); }

    /// <summary>Everything of the stage but the motors: airframe, fins, coupler, recovery device [kg], 0 to 100 t.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass StructureMass { get; init => field = Guard.In(value, 0, 100_000); }

    /// <summary>The motor.</summary>
    public required Motor Motor { get; init => field = Guard.NotNull(value); }

    /// <summary>Number of equal motors that burn side by side, 1 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int MotorCount { get; init => field = Guard.In(value, 1, 100); }

    /// <summary>Drag of the stack while this stage is its lowest part, no motor burning.</summary>
    public required DragTable Drag { get; init => field = Guard.NotNull(value); }

    /// <summary>The same while its motors burn, when the jet fills the base; null takes <see cref="Drag"/>.</summary>
    public DragTable? DragWhileBurning { get; init; }

    /// <summary>Drag of the piece once it has been dropped and before it tumbles or its device acts; null takes <see cref="Drag"/>.</summary>
    public DragTable? DragWhenDropped { get; init; }

    /// <summary>How the piece that this stage becomes comes down.</summary>
    public required Recovery Recovery { get; init => field = Guard.NotNull(value); }

    /// <summary>What lights its motors.</summary>
    public required StageIgnition Ignition { get; init => field = Guard.NotNull(value); }

    /// <summary>Mass ready to fly: structure and loaded motors [kg].</summary>
    public Mass LoadedMass => Mass.FromKilograms(StructureMass.Kilograms + MotorCount * Motor.LoadedMass.Kilograms);

    /// <summary>Mass with the propellant gone [kg].</summary>
    public Mass BurntMass => Mass.FromKilograms(LoadedMass.Kilograms - MotorCount * Motor.PropellantMass.Kilograms);
}
