using System.Text.Json;
using Staging.Core.Discharge;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;

namespace Staging.Core.Reviews;

/// <summary>
/// Writes a review as JSON for other programs: SI numbers with the unit in the key, null where something did not
/// happen.
/// </summary>
internal static class ReviewJson
{
    public static string Of(StagingReview review) => JsonText.Of(w =>
    {
        w.WriteStartObject();
        w.WriteString("plan", review.Plan.Name);
        w.WriteBoolean("everyStageLightsNominally", review.EveryStageLights);
        VerdictJson.Write(w, review);
        List(w, "gaps", review.Gaps, WriteGap);
        List(w, "stagings", review.Flight.Stagings, WriteStaging);
        Number(w, "apogee_m", review.Flight.Apogee?.Meters);
        Number(w, "greatestSpeed_m_per_s", review.Flight.MaximumSpeed.MetersPerSecond);
        Number(w, "guideExitSpeed_m_per_s", review.Flight.GuideExitSpeed?.MetersPerSecond);
        List(w, "bodies", review.Flight.Bodies, WriteBody);
        List(w, "failureCases", review.Flight.FailureCases, WriteFailureCase);
        List(w, "cautions", review.Cautions, WriteCaution);
        List(w, "findings", review.Findings, WriteFinding);
        w.WriteEndObject();
    });

    private static void WriteGap(Utf8JsonWriter w, GapReview gap)
    {
        GapRun run = gap.Run;
        w.WriteString("upperStage", gap.Staging.UpperStage);
        w.WriteString("outcome", JsonNamingPolicy.CamelCase.ConvertName(run.Outcome.GetType().Name));
        Number(w, "decidedAt_s", run.Outcome.Time.Seconds);
        run.Outcome.Match<object?>(
            lit => Numbers(w, ("marginToSeparation_s", lit.MarginToSeparation?.Seconds), ("surfaceMargin_K", lit.SurfaceMargin.Kelvins)),
            apart => Numbers(w, ("frontRemaining_m", apart.FrontRemaining.Meters), ("surfaceShortfall_K", apart.SurfaceShortfall.Kelvins)),
            vented => Numbers(w, ("productsAtNozzle", vented.ProductsAtNozzle), ("surfaceShortfall_K", vented.SurfaceShortfall.Kelvins)),
            cool => Numbers(w, ("surfaceShortfall_K", cool.SurfaceShortfall.Kelvins)),
            far => Numbers(w, ("frontRemaining_m", far.FrontRemaining.Meters)),
            _ => null);
        w.WriteString("cause", run.Outcome.Cause);
        w.WriteString("remedy", run.Outcome.Remedy);
        Number(w, "peakGaugePressure_Pa", run.PeakGaugePressure.Pascals);
        Number(w, "peakGrainSurface_K", run.PeakGrainSurface.Kelvins);
        List(w, "events", run.Events, static (w, e) =>
        {
            w.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(e.Kind.ToString()));
            Number(w, "sinceBurnThrough_s", e.Time.Seconds);
        });
        Number(w, "ventAreaGiven_m2", run.Problem.Design.TotalVentArea.SquareMeters);
        Number(w, "ventAreaAsked_m2", gap.Advice?.Recommended?.SquareMeters);
        w.WriteString("ventReason", gap.Advice?.Reason);
        List(w, "ventWindows", gap.Advice?.Windows ?? [], static (w, v) =>
        {
            Number(w, "least_m2", v.Min.SquareMeters);
            Number(w, "greatest_m2", v.Max.SquareMeters);
            w.WriteBoolean("reachesScanEnd", v.ReachesScanEnd);
        });
        WriteHoles(w, gap.Advice?.Holes);
        BuildJson.Write(w, gap);
        if (gap.Bracket is { } bracket)
            WriteBracket(w, bracket);
        else
            w.WriteNull("bracket");
    }

    private static void WriteBracket(Utf8JsonWriter w, GapBracket bracket)
    {
        w.WriteStartObject("bracket");
        w.WriteString("verdict", bracket.Verdict);
        w.WriteString("lights", JsonNamingPolicy.CamelCase.ConvertName(bracket.Lights.ToString()));
        w.WriteString("jointHolds", JsonNamingPolicy.CamelCase.ConvertName(bracket.JointHolds.ToString()));
        w.WriteString("decides", bracket.Decides);
        w.WriteString("gasAlone", bracket.GasAlone is { } alone ? JsonNamingPolicy.CamelCase.ConvertName(alone.GetType().Name) : null);
        Number(w, "piecesArriveFast_s", bracket.Arrival?.Fast.Seconds);
        Number(w, "piecesArriveSlow_s", bracket.Arrival?.Slow.Seconds);
        Number(w, "contactDelay_s", bracket.ContactDelay?.Seconds);
        Number(w, "leastVentOldFaces_m2", bracket.OldFacesVent?.SquareMeters);
        Number(w, "leastVentAllFaces_m2", bracket.AllFacesVent?.SquareMeters);
        Number(w, "steadyVentOldFaces_m2", bracket.OldFacesSteadyVent?.SquareMeters);
        Number(w, "steadyVentAllFaces_m2", bracket.AllFacesSteadyVent?.SquareMeters);
        List(w, "corners", bracket.Cases, static (w, c) =>
        {
            w.WriteString("ends", string.Join(", ", c.Ends));
            w.WriteString("outcome", JsonNamingPolicy.CamelCase.ConvertName(c.Outcome.GetType().Name));
            Number(w, "decidedAt_s", c.Outcome.Time.Seconds);
            Number(w, "peakGaugePressure_Pa", c.PeakGaugePressure.Pascals);
            Number(w, "jointOpens_s", c.JointOpens?.Seconds);
        });
        w.WriteEndObject();
    }

    /// <summary>
    /// The holes that the advice asks for, exact and with the drills next to them; an empty list of drills where no
    /// area lights.
    /// </summary>
    private static void WriteHoles(Utf8JsonWriter w, HolePattern? pattern)
    {
        Number(w, "holeCount", pattern?.Exact.Count);
        Number(w, "holeDiameter_m", pattern?.Exact.Diameter.Meters);
        List(w, "drills", new[] { pattern?.Below, pattern?.Above }.OfType<DrilledHoles>(), static (w, d) =>
        {
            w.WriteString("label", d.Drill.Label);
            Number(w, "diameter_m", d.Drill.Diameter.Meters);
            Number(w, "areaError", d.AreaError);
        });
    }

    private static void WriteStaging(Utf8JsonWriter w, StagingReport s)
    {
        w.WriteString("lowerStage", s.LowerStage);
        w.WriteString("upperStage", s.UpperStage);
        w.WriteBoolean("lit", s.Lit);
        w.WriteString("reason", s.Reason);
        Number(w, "ignition_s", s.Ignition?.Seconds);
        Number(w, "height_m", s.Height?.Meters);
        Number(w, "velocity_m_per_s", s.Velocity?.MetersPerSecond);
        Number(w, "separation_s", s.Separation?.Seconds);
    }

    private static void WriteBody(Utf8JsonWriter w, BodyFlight body)
    {
        w.WriteString("name", body.Name);
        w.WriteString("outcome", JsonNamingPolicy.CamelCase.ConvertName(body.Outcome.GetType().Name));
        if (body.Outcome is FlightOutcome.Landed landed)
        {
            Number(w, "landing_s", landed.Time.Seconds);
            Number(w, "landingSpeed_m_per_s", landed.Speed.MetersPerSecond);
            Number(w, "landingEnergy_J", landed.KineticEnergy.Joules);
        }

        Number(w, "apogee_m", body.Apogee?.Meters);
        Number(w, "apogeeTime_s", body.ApogeeTime?.Seconds);
        Number(w, "drift_m", body.DriftEstimate?.Meters);
        List(w, "events", body.Events, static (w, e) =>
        {
            w.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(e.Kind.ToString()));
            w.WriteString("stage", e.Stage);
            Number(w, "time_s", e.Time.Seconds);
            Number(w, "height_m", e.After.Height.Meters);
            Number(w, "velocity_m_per_s", e.After.Velocity.MetersPerSecond);
        });
    }

    private static void WriteFailureCase(Utf8JsonWriter w, FailureCase failure)
    {
        w.WriteString("stage", failure.Stage);
        w.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(failure.Kind.ToString()));
        List(w, "bodies", failure.Bodies, WriteBody);
    }

    private static void WriteCaution(Utf8JsonWriter w, Caution c)
    {
        w.WriteString("code", c.Code);
        w.WriteString("subject", c.Subject);
        w.WriteBoolean("outsideRule", c.OutsideRule);
        w.WriteString("text", c.Text);
        w.WriteString("rule", c.Rule.Source);
        w.WriteString("locator", c.Rule.Locator);
    }

    internal static void WriteFinding(Utf8JsonWriter w, ModelFinding f)
    {
        w.WriteString("severity", JsonNamingPolicy.CamelCase.ConvertName(f.Severity.ToString()));
        w.WriteString("code", f.Code);
        w.WriteString("path", f.Path);
        w.WriteString("message", f.Message);
    }

    internal static void List<T>(Utf8JsonWriter w, string key, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        w.WriteStartArray(key);
        foreach (T item in items)
        {
            w.WriteStartObject();
            write(w, item);
            w.WriteEndObject();
        }

        w.WriteEndArray();
    }

    private static object? Numbers(Utf8JsonWriter w, params ReadOnlySpan<(string Key, double? Value)> numbers)
    {
        foreach ((string key, double? value) in numbers)
            Number(w, key, value);
        return null;
    }

    /// <summary>A number, or null where there is none; infinity and not-a-number have no place in JSON.</summary>
    internal static void Number(Utf8JsonWriter w, string key, double? value)
    {
        if (value is { } number && double.IsFinite(number))
            w.WriteNumber(key, number);
        else
            w.WriteNull(key);
    }
}
