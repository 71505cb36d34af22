using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Plans;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Records;
using UnitsNet;

namespace Staging.Core.GroundTests;

/// <summary>How a series of ground tests stands in JSON: its gaps in the terms of a plan.</summary>
internal static class GroundTestCodecs
{
    /// <summary>The key of the version.</summary>
    public const string VersionKey = "testsVersion";

    /// <summary>The version of the format.</summary>
    public static readonly PlanVersionCodec Version = new("series of ground tests");

    /// <summary>Mass of a stage that is fixed to a stand [kg]: so heavy that it does not move.</summary>
    private const double Fixed_kg = 100_000;

    public static readonly RecordCodec<TimeSeen> Time = new("timeSeen", "When something was seen, and how exactly.", f =>
    {
        var at = f.Required("at", Quantities.Duration, x => x.At, "Time since burn-through.");
        var within = f.Required("within", Quantities.Duration, x => x.Within,
            "Standard error of that time: of a film about half of the time between two frames.");
        return v => new TimeSeen { At = at[v], Within = within[v] };
    });

    public static readonly RecordCodec<SeparatingBodies> Bodies = new("standBodies",
        "The two bodies that the gap pressure pushes apart.", f =>
    {
        var ahead = f.Required("massAhead", Quantities.Mass, x => x.MassAhead, "Mass of everything ahead of the joint.");
        var behind = f.Optional("massBehind", Quantities.Mass, x => x.MassBehind, Mass.FromKilograms(Fixed_kg),
            "Mass of everything behind the joint; fixed to the stand when left out.");
        var closing = f.Optional("closingAcceleration", Quantities.Acceleration, x => x.ClosingAcceleration, Acceleration.Zero,
            "What presses the bodies together: 9.81 m/s2 where the upper one stands on a fixed one; none when left out, as on its side.");
        return v => new SeparatingBodies { MassAhead = ahead[v], MassBehind = behind[v], ClosingAcceleration = closing[v] };
    });

    public static readonly RecordCodec<GasState> Air = new("groundAir", "The air of the day, outside of the holes.", f =>
    {
        var pressure = f.Required("pressure", Quantities.Pressure, PressureOfAir, "Absolute pressure at the site.",
            nameof(GasState.Pressure));
        var temperature = f.Required("temperature", Quantities.Temperature, x => x.Temperature, "Temperature.");
        return v => new GasState { Gas = PerfectGas.DryAir, Pressure = pressure[v], Temperature = temperature[v] };
    });

    public static readonly RecordCodec<GroundTest> Record = new("groundTest",
        "One test on the ground: a gap as built, and what was seen of it.", f =>
    {
        var name = f.Required("name", TextCodec.NotBlank, x => x.Name,
            "What the test is called: letters, digits, dots, hyphens, underscores and inner spaces.");
        var gap = f.Required("gap", GapCodecs.Gap, x => GapOf(x), "The gap as built, in the terms of a plan.", nameof(GroundTest.Gap));
        var bodies = f.Required("bodies", Bodies, x => x.Gap.Bodies, "The two bodies that the gap pressure pushes apart.");
        var air = f.Optional("air", Air, x => x.Gap.Surroundings, StartingGaps.Bore18mm.Surroundings,
            "The air of the day; 101325 Pa and 288.15 K when left out.");
        var seen = f.Required("seen", EnumCodec<Seen>.Words, x => x.Seen, "What was seen: how the test ended.");
        var flame = f.Optional<TimeSeen?>("firstFlame", Time!, x => x.FirstFlame, null,
            "When flame was first seen at the uppermost vent; not seen when left out.");
        var moves = f.Optional<TimeSeen?>("jointMoves", Time!, x => x.JointMoves, null,
            "When the joint was first seen to move; not seen when left out.");
        var parted = f.Optional<TimeSeen?>("parted", Time!, x => x.Parted, null, "When the stages had parted; not seen when left out.");
        var lit = f.Optional<TimeSeen?>("lit", Time!, x => x.Lit, null, "When the upper motor burned; not seen when left out.");
        var pressure = f.Optional("pressure", TraceCodec.Codec!, x => x.Pressure, null,
            "Gap pressure above that of the air against the time since burn-through; no gauge when left out.");
        var gauge = f.Optional("gaugeError", Quantities.Pressure, x => x.GaugeError, Pressure.Zero,
            "Standard error of the gauge; small when left out.");
        var doubt = f.Optional("doubt", NumberCodec.Ratio, x => x.Doubt, 0.0,
            "Chance that the record itself is wrong, so that it says nothing; 0 when left out.");
        var horizon = f.Optional("horizon", Quantities.Duration, x => x.Gap.Horizon,
            "How long the gap is watched; twice as long as its source lasts, 0.2 s at least, and past what was seen, when left out.");
        var after = f.Optional("afterOpening", Quantities.Duration, x => x.Gap.AfterOpening, Duration.Zero,
            "How long the gap is followed once its joint has opened, for motors in contact; not at all when left out.");
        return v => new GroundTest
        {
            Name = name[v],
            Gap = new GapProblem
            {
                Design = gap[v].Design,
                Bodies = bodies[v],
                Surroundings = air[v],
                Horizon = horizon[v] ?? Watch(gap[v].Design, pressure[v], flame[v], moves[v], parted[v], lit[v]),
                AfterOpening = after[v],
            },
            Seen = seen[v],
            FirstFlame = flame[v],
            JointMoves = moves[v],
            Parted = parted[v],
            Lit = lit[v],
            Pressure = pressure[v],
            GaugeError = gauge[v],
            Doubt = doubt[v],
            Model = gap[v].Model,
            Solver = gap[v].Solver,
        };
    });

    public static readonly RecordCodec<ModelDiscrepancy> Discrepancy = new("modelDiscrepancy",
        "How far the model may be off even with the right inputs.", f =>
    {
        var wrong = f.Optional("wrongOutcome", NumberCodec.Ratio, x => x.WrongOutcome, ModelDiscrepancy.Judged.WrongOutcome,
            "Chance that the model is wrong about how a test ends; 0.1 when left out.");
        var time = f.Optional("timeSpread", NumberCodec.Ratio, x => x.TimeSpread, ModelDiscrepancy.Judged.TimeSpread,
            "Standard error of a time of the model, over that time; 0.3 when left out.");
        var pressure = f.Optional("pressureSpread", NumberCodec.Ratio, x => x.PressureSpread, ModelDiscrepancy.Judged.PressureSpread,
            "Standard error of a pressure of the model, over the peak of the trace; 0.3 when left out.");
        var memory = f.Optional("pressureMemory", Quantities.Duration, x => x.PressureMemory, ModelDiscrepancy.Judged.PressureMemory,
            "How long an error of pressure lasts; 5 ms when left out.");
        return v => new ModelDiscrepancy
        {
            WrongOutcome = wrong[v],
            TimeSpread = time[v],
            PressureSpread = pressure[v],
            PressureMemory = memory[v],
        };
    });

    public static readonly RecordCodec<GroundTestSeries> Series = new("groundTestSeries", "A series of tests on the ground.", f =>
    {
        f.Optional<string?>("$schema", TextCodec.NotBlank!, _ => null, null, "Where the schema is kept, for editors; it is not read.");
        f.Optional(VersionKey, Version, _ => PlanVersionCodec.Current, 0,
            "Version of this format; 1 when left out, and there is no other yet.");
        f.Optional<OwnGaps?>(OwnGapsCodec.Key, OwnGapsCodec.Codec!, _ => null, null,
            "Gaps by names of your own, from which the gaps of the tests start; none when left out.");
        var discrepancy = f.Optional("discrepancy", Discrepancy, x => x.Discrepancy, ModelDiscrepancy.Judged,
            "How far the model may be off even with the right inputs; judged values when left out.");
        var tests = f.Required("tests", new ListCodec<GroundTest>(GroundTestCodec.Codec), x => x.Tests, "The tests, in any order.");
        return v => new GroundTestSeries { Tests = tests[v], Discrepancy = discrepancy[v] };
    });

    private static Pressure PressureOfAir(GasState outside) => outside.Gas == PerfectGas.DryAir
        ? outside.Pressure
        : throw new ArgumentException($"Outside a gap is {outside.Gas.Name}; a series of ground tests has words for dry air only.");

    private static GapIgnition GapOf(GroundTest test) => new()
    {
        Design = test.Gap.Design,
        HolePressureCoefficient = 0,
        Model = test.Model,
        Solver = test.Solver,
    };

    /// <summary>
    /// Twice as long as the source is known to last, as in a flight, and half as long again as what was seen.
    /// </summary>
    private static Duration Watch(GapDesign design, Studies.MeasuredTrace? trace, params ReadOnlySpan<TimeSeen?> seen)
    {
        const double least = 0.2, most = 10, beyond = 1.5;
        double latest = trace is null ? 0 : trace.Times[^1];
        foreach (TimeSeen? time in seen)
            latest = Math.Max(latest, time?.At.Seconds ?? 0);
        return Duration.FromSeconds(Math.Clamp(Math.Max(2 * design.Source.KnownDuration, beyond * latest), least, most));
    }
}
