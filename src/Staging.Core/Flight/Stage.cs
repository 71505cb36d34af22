using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>One stage of the stack, with the motors it carries.</summary>
public sealed record Stage
{
    /// <summary>Its name in the results; unique within a plan.</summary>
    public required string Name { get; init => field = Guard.NotBlank(value); }

    /// <summary>
    /// Everything in the stage except the motors: airframe, fins, coupler, recovery device [kg], 0 to 100 t.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass StructureMass { get; init => field = Guard.In(value, 0, 100_000); }

    /// <summary>The motor whose forward end lights the next stage or ejects.</summary>
    public required Motor Motor { get; init => field = Guard.NotNull(value); }

    /// <summary>Number of equal motors that burn side by side, 1 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int MotorCount { get; init => field = Guard.In(value, 1, 100); }

    /// <summary>
    /// Motors of other kinds that burn in parallel, lit at the same moment: a core with smaller ones around it. Their
    /// forward ends are not followed, so they should be plugged. The default is none.
    /// </summary>
    public EquatableArray<MotorGroup> ParallelMotors { get; init; } = [];

    /// <summary>Drag of the stack while this stage is its lowest part and no motor burns.</summary>
    public required DragTable Drag { get; init => field = Guard.NotNull(value); }

    /// <summary>The same while its motors burn, when the jet fills the base; null takes <see cref="Drag"/>.</summary>
    public DragTable? DragWhileBurning { get; init; }

    /// <summary>
    /// Drag of the body once the stage has been dropped and before it tumbles or its device acts; null takes
    /// <see cref="Drag"/>.
    /// </summary>
    public DragTable? DragWhenDropped { get; init; }

    /// <summary>Recovery of the body that this stage becomes.</summary>
    public required Recovery Recovery { get; init => field = Guard.NotNull(value); }

    /// <summary>The ignition of its motors.</summary>
    public required StageIgnition Ignition { get; init => field = Guard.NotNull(value); }

    /// <summary>Propellant of all its motors [kg].</summary>
    public Mass PropellantMass => Mass.FromKilograms(Total(m => m.PropellantMass.Kilograms));

    /// <summary>Total impulse of all its motors [N s].</summary>
    public Impulse TotalImpulse => Impulse.FromNewtonSeconds(Total(m => m.Thrust.TotalImpulse.NewtonSeconds));

    /// <summary>Mass ready to fly: structure and loaded motors [kg].</summary>
    public Mass LoadedMass => Mass.FromKilograms(StructureMass.Kilograms + Total(m => m.LoadedMass.Kilograms));

    /// <summary>Mass with the propellant gone [kg].</summary>
    public Mass BurntMass => Mass.FromKilograms(LoadedMass.Kilograms - PropellantMass.Kilograms);

    /// <summary>The main motors, then the parallel ones.</summary>
    internal ImmutableArray<MotorGroup> AllMotors => [new MotorGroup { Motor = Motor, Count = MotorCount }, .. ParallelMotors];

    /// <summary>Propellant burnt until a time from ignition, in proportion to the impulse of each motor [kg].</summary>
    internal Mass PropellantBurntBy(Duration sinceIgnition) => Mass.FromKilograms(Total(m =>
        m.PropellantMass.Kilograms * (m.Thrust.ImpulseUntil(sinceIgnition).NewtonSeconds / m.Thrust.TotalImpulse.NewtonSeconds)));

    private double Total(Func<Motor, double> of)
    {
        double sum = MotorCount * of(Motor);
        foreach (MotorGroup group in ParallelMotors)
            sum += group.Count * of(group.Motor);
        return sum;
    }
}
