using Staging.Core.Flight;
using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>Stages.</summary>
internal static class StageCodecs
{
    public static readonly RecordCodec<DragTable> Drag = new("drag",
        "Drag coefficient against Mach number: straight lines between points, the end values held beyond them.", f =>
    {
        var area = f.Required("referenceArea", Quantities.Area, x => x.ReferenceArea, "Area on which the coefficient stands.");
        var mach = f.Required("mach", ColumnCodec.Numbers, x => x.Mach, "Mach numbers, rising, 0 to 50; two or more.");
        var coefficient = f.Required("coefficient", ColumnCodec.Numbers, x => x.Coefficient, "As many drag coefficients, 0 to 100.");
        return v => DragTable.FromColumns(area[v], mach[v].Span, coefficient[v].Span);
    });

    public static readonly RecordCodec<MotorGroup> Group = new("motorGroup", "Equal motors that burn side by side.", f =>
    {
        var motor = f.Required("motor", MotorCodecs.Motor, x => x.Motor, "The motor.");
        var count = f.Required("count", CountCodec.Whole, x => x.Count, "How many.");
        return v => new MotorGroup { Motor = motor[v], Count = count[v] };
    });

    public static readonly RecordCodec<Stage> Stage = new("stage", "One stage, with the motors it carries.", f =>
    {
        var name = f.Required("name", TextCodec.NotBlank, x => x.Name, "What it is called in the results; unique within a plan.");
        var structure = f.Required("structureMass", Quantities.Mass, x => x.StructureMass, "Everything of the stage but the motors.");
        var motor = f.Required("motor", MotorCodecs.Motor, x => x.Motor, "The motor.");
        var count = f.Optional("motorCount", CountCodec.Whole, x => x.MotorCount, 1,
            "Number of equal motors that burn side by side; 1 when left out.");
        var parallel = f.Optional("parallelMotors", new ListCodec<MotorGroup>(Group), x => x.ParallelMotors, [],
            "Motors of other kinds that burn beside it, lit at the same moment; none when left out.");
        var drag = f.Required("drag", Drag, x => x.Drag, "Drag of the stack while this stage is its lowest part, no motor burning.");
        var burning = f.Optional<DragTable?>("dragWhileBurning", Drag!, x => x.DragWhileBurning, null,
            "The same while its motors burn; the drag above when left out.");
        var dropped = f.Optional<DragTable?>("dragWhenDropped", Drag!, x => x.DragWhenDropped, null,
            "Drag of the piece once dropped, before it tumbles or its device acts; the drag above when left out.");
        var recovery = f.Required("recovery", RecoveryCodecs.Recovery, x => x.Recovery,
            "How the piece that this stage becomes comes down.");
        var ignition = f.Optional("ignition", IgnitionCodecs.Ignition, x => x.Ignition, new StageIgnition.AtLaunch(),
            "What lights its motors; the launch igniter when left out, which the lowest stage has and no other.");
        return v => new Stage
        {
            Name = name[v],
            StructureMass = structure[v],
            Motor = motor[v],
            MotorCount = count[v],
            ParallelMotors = parallel[v],
            Drag = drag[v],
            DragWhileBurning = burning[v],
            DragWhenDropped = dropped[v],
            Recovery = recovery[v],
            Ignition = ignition[v],
        };
    });
}
