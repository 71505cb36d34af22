using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Staging.Core.Flight;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using UnitsNet;

namespace Staging.Core.Native;

/// <summary>A plan flown and judged, and the courses of its gaps and bodies.</summary>
internal static unsafe class ReviewCalls
{
    [UnmanagedCallersOnly(EntryPoint = "staging_review", CallConvs = [typeof(CallConvCdecl)])]
    public static int Review(nint plan, int cases, nint stop, nint* review, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(review, nameof(review));
        CancellationToken token = Handles.Token(stop);
        *review = Handles.Keep(Handles.Get<StagingPlan>(plan, nameof(plan)).Review(cases: cases, cancellationToken: token));
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_review_verdict", CallConvs = [typeof(CallConvCdecl)])]
    public static int VerdictOf(nint review, int* verdict, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(verdict, nameof(verdict));
        *verdict = Handles.Get<StagingReview>(review, nameof(review)).Verdict switch
        {
            Verdict.Lights => 0,
            Verdict.MayLight => 1,
            Verdict.StaysCold => 2,
            Verdict other => throw new NotSupportedException(other.ToString()),
        };
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_review_json", CallConvs = [typeof(CallConvCdecl)])]
    public static int Json(nint review, byte** json, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(json, nameof(json));
        *json = NativeText.Give(Handles.Get<StagingReview>(review, nameof(review)).ToJson());
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_review_text", CallConvs = [typeof(CallConvCdecl)])]
    public static int Text(nint review, int width, byte** text, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(text, nameof(text));
        *text = NativeText.Give(Handles.Get<StagingReview>(review, nameof(review)).ToString(width));
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_gap_table", CallConvs = [typeof(CallConvCdecl)])]
    public static int GapTable(nint review, int gap, double step_s, nint* table, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(table, nameof(table));
        StagingReview reviewed = Handles.Get<StagingReview>(review, nameof(review));
        GapReview one = reviewed.Gaps[Place(gap, reviewed.Gaps.Length, nameof(gap), "gaps were reached")];
        *table = Handles.Keep(Table.Of(one.Run.Sample(Step(step_s))));
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_flight_table", CallConvs = [typeof(CallConvCdecl)])]
    public static int FlightTable(nint review, int body, double step_s, nint* table, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(table, nameof(table));
        StagingReview reviewed = Handles.Get<StagingReview>(review, nameof(review));
        int place = Place(body, reviewed.Flight.Bodies.Length, nameof(body), "bodies fly");
        BodyFlight flight = reviewed.Flight.Bodies[place];
        if (!flight.HasHistory)
            throw new ArgumentException(FormattableString.Invariant($"body {place} ends where it starts; it has no trajectory."));
        *table = Handles.Keep(Table.Of(flight.Sample(Step(step_s))));
    });

    private static int Place(int place, int count, string name, string what) => place >= 0 && place < count
        ? place
        : throw new ArgumentOutOfRangeException(null, FormattableString.Invariant($"{name} is {place}; {count} {what}, counted from 0."));

    private static Duration Step(double step_s) => double.IsFinite(step_s)
        ? Duration.FromSeconds(step_s)
        : throw new ArgumentOutOfRangeException(null, "step_s is not a finite number of seconds.");
}
