using System.Text.Json;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Reviews;

namespace Staging.Core.Plans;

/// <summary>Writes a review as JSON for other programs: SI numbers with the unit in the key, null where something did not happen.</summary>
public static class ReviewDocument
{
    /// <summary>Writes a review.</summary>
    /// <param name="review">The review.</param>
    /// <returns>The text.</returns>
    public static string Write(StagingReview review)
    {
        ArgumentNullException.ThrowIfNull(review);
        return JsonText.Of(w =>
        {
            w.WriteStartObject();
            w.WriteString("plan", review.Plan.Name);
            w.WriteBoolean("everyStageLights", review.EveryStageLights);
            List(w, "gaps", review.Gaps, WriteGap);
            List(w, "stagings", review.Flight.Stagings, WriteStaging);
            Number(w, "apogee_m", review.Flight.Apogee?.Meters);
            Number(w, "greatestSpeed_m_per_s", review.Flight.MaximumSpeed.MetersPerSecond);
            Number(w, "guideExitSpeed_m_per_s", review.Flight.GuideExitSpeed?.MetersPerSecond);
            List(w, "bodies", review.Flight.Bodies, WriteBody);
            List(w, "branches", review.Flight.Branches, WriteBranch);
            List(w, "cautions", review.Cautions, WriteCaution);
            List(w, "findings", review.Findings, WriteFinding);
            w.WriteEndObject();
        });
    }

    private static void WriteGap(Utf8JsonWriter w, GapReview gap)
    {
        GapRun run = gap.Run;
        w.WriteString("upperStage", gap.Staging.UpperStage);
        w.WriteString("outcome", JsonNamingPolicy.CamelCase.ConvertName(run.Outcome.GetType().Name));
        w.WriteString("cause", run.Outcome.Cause);
        w.WriteString("cure", run.Outcome.Cure);
        Number(w, "peakGaugePressure_Pa", run.PeakGaugePressure.Pascals);
        Number(w, "peakGrainSurface_K", run.PeakGrainSurface.Kelvins);
        List(w, "events", run.Events, static (w, e) =>
        {
            w.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(e.Kind.ToString()));
            Number(w, "sinceBurnThrough_s", e.Time.Seconds);
        });
        Number(w, "ventAreaGiven_m2", run.Problem.Design.TotalVentArea.SquareMeters);
        Number(w, "ventAreaAsked_m2", gap.Advice.Recommended?.SquareMeters);
        w.WriteString("ventReason", gap.Advice.Reason);
        List(w, "ventWindows", gap.Advice.Windows, static (w, v) =>
        {
            Number(w, "least_m2", v.Least.SquareMeters);
            Number(w, "greatest_m2", v.Greatest.SquareMeters);
            w.WriteBoolean("reachesScanEnd", v.ReachesScanEnd);
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

    private static void WriteBranch(Utf8JsonWriter w, FlightBranch branch)
    {
        w.WriteString("stage", branch.Stage);
        w.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(branch.Kind.ToString()));
        List(w, "bodies", branch.Bodies, WriteBody);
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

    private static void WriteFinding(Utf8JsonWriter w, ModelFinding f)
    {
        w.WriteString("severity", JsonNamingPolicy.CamelCase.ConvertName(f.Severity.ToString()));
        w.WriteString("code", f.Code);
        w.WriteString("path", f.Path);
        w.WriteString("message", f.Message);
    }

    private static void List<T>(Utf8JsonWriter w, string key, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
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

    /// <summary>A number, or null where there is none; infinity and not-a-number have no place in JSON.</summary>
    private static void Number(Utf8JsonWriter w, string key, double? value)
    {
        if (value is { } number && double.IsFinite(number))
            w.WriteNumber(key, number);
        else
            w.WriteNull(key);
    }
}
