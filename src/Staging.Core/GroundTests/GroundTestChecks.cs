namespace Staging.Core.GroundTests;

/// <summary>Rules across a test record.</summary>
internal static class GroundTestChecks
{
    /// <summary>The head that a trace of gap pressure has.</summary>
    public const string TraceName = "gauge_Pa";

    /// <summary>Standard errors by which two times must be in the wrong order to contradict each other.</summary>
    private const double Sure = 3;

    public static IEnumerable<ModelFinding> Of(GroundTest test)
    {
        foreach (ModelFinding finding in test.Gap.Check())
            yield return finding.At($"Gap.{(finding.Path.Length > 0 ? "Design." + finding.Path : "Design")}");
        if (test.Gap.DynamicPressure.Pascals > 0)
            yield return Error("TST005", "Gap.DynamicPressure", Invariant.Text(
                $"A test on the ground is at rest; the dynamic pressure is {test.Gap.DynamicPressure.Pascals:G4} Pa, and must be 0 Pa."));
        foreach (ModelFinding finding in OfOutcome(test).Concat(OfOrder(test)).Concat(OfWatch(test)))
            yield return finding;
        if (test.Pressure is { } trace && trace.Name != TraceName)
            yield return Error("TST003", nameof(GroundTest.Pressure),
                $"The trace is named '{Excerpt.Of(trace.Name)}'; a gap pressure above that of the air in pascals is wanted, "
                + $"named {TraceName}.");
        if (test.Pressure is { } early && early.Times[0] < 0)
            yield return Error("TST008", nameof(GroundTest.Pressure), Invariant.Text($"The trace begins at {1e3 * early.Times[0]:G4} ms; ")
                + "times count from burn-through, and must be 0 or more: leave out what was recorded before.");
        if (test is { Seen: Seen.Lit, Pressure: not null, Lit: null })
            yield return new ModelFinding(FindingSeverity.Warning, "TST009", nameof(GroundTest.Lit), "The upper motor lit, but not when; "
                + "the whole trace is compared with a gap in which it does not burn. Give the time, or end the trace there.");
    }

    /// <summary>Times of what did not happen, by what was seen.</summary>
    private static IEnumerable<ModelFinding> OfOutcome(GroundTest test)
    {
        if (test.Lit is not null && test.Seen != Seen.Lit)
            yield return Error("TST001", nameof(GroundTest.Lit), $"The test has a time at which the upper motor burned, but was seen as "
                + $"{Word(test.Seen)}; say {Word(Seen.Lit)}, or leave the time out.");
        if (test.Parted is not null && test.Seen == Seen.NotLitTogether)
            yield return Error("TST001", nameof(GroundTest.Parted), $"The test has a time at which the stages parted, but was seen as "
                + $"{Word(test.Seen)}; say {Word(Seen.PartedFirst)}, or leave the time out.");
        if (test is { Seen: Seen.Lit, Lit: { } lit, Parted: { } parted } && IsAfter(lit, parted) && test.Gap.AfterOpening.Seconds == 0)
            yield return Error("TST001", nameof(GroundTest.Parted), Invariant.Text($"The stages parted at {Ms(parted):G4} ms, before the ")
                + Invariant.Text($"upper motor burned at {Ms(lit):G4} ms, but the test was seen as {Word(Seen.Lit)}: the model follows a ")
                + "gap past the opening of its joint only where it is told to (AfterOpening).");
    }

    /// <summary>Times in an order that cannot be.</summary>
    private static IEnumerable<ModelFinding> OfOrder(GroundTest test)
    {
        if (test is { JointMoves: { } moves, Parted: { } parted } && IsAfter(moves, parted))
            yield return Error("TST002", nameof(GroundTest.JointMoves), Invariant.Text(
                $"The joint moved at {Ms(moves):G4} ms, after the stages had parted at {Ms(parted):G4} ms; it must be before."));
    }

    /// <summary>What was seen after the model stops to look.</summary>
    private static IEnumerable<ModelFinding> OfWatch(GroundTest test)
    {
        double horizon = test.Gap.Horizon.Seconds;
        (string Name, double? Time)[] seen =
        [
            (nameof(GroundTest.FirstFlame), test.FirstFlame?.At.Seconds), (nameof(GroundTest.JointMoves), test.JointMoves?.At.Seconds),
            (nameof(GroundTest.Parted), test.Parted?.At.Seconds), (nameof(GroundTest.Lit), test.Lit?.At.Seconds),
            (nameof(GroundTest.Pressure), test.Pressure?.Times[^1]),
        ];
        foreach ((string name, double? time) in seen.Where(s => s.Time > horizon))
            yield return Error("TST004", name, Invariant.Text(
                $"It was seen at {1e3 * time!.Value:G4} ms, but the gap is watched for {1e3 * horizon:G4} ms; it needs a longer horizon."));
    }

    private static bool IsAfter(TimeSeen one, TimeSeen other) =>
        one.At.Seconds - other.At.Seconds > Sure * Math.Sqrt(Math.Pow(one.Within.Seconds, 2) + Math.Pow(other.Within.Seconds, 2));

    private static double Ms(TimeSeen time) => time.At.Milliseconds;

    private static string Word(Seen seen) => $"\"{Plans.Codecs.EnumCodec<Seen>.WordFor(seen)}\"";

    private static ModelFinding Error(string code, string path, string message) => new(FindingSeverity.Error, code, path, message);
}
