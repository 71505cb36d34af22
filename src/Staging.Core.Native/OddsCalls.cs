using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Studies;

namespace Staging.Core.Native;

/// <summary>How often the stages of a plan light over what is judged.</summary>
internal static unsafe class OddsCalls
{
    [UnmanagedCallersOnly(EntryPoint = "staging_odds", CallConvs = [typeof(CallConvCdecl)])]
    public static int Odds(nint plan, int cases, ulong seed, int threads, delegate* unmanaged[Cdecl]<long, long, void*, int> progress,
        void* user, nint stop, nint* odds, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(odds, nameof(odds));
        StagingPlan asked = Handles.Get<StagingPlan>(plan, nameof(plan));
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(Handles.Token(stop));
        ended.Token.ThrowIfCancellationRequested();
        StudyOptions options = StudyOptions.Default with { Threads = threads == 0 ? null : threads };
        ProgressCall? told = progress is null ? null : new ProgressCall(progress, user, ended);
        *odds = Handles.Keep(asked.Odds(cases, seed, options, told, ended.Token));
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_odds_share", CallConvs = [typeof(CallConvCdecl)])]
    public static int Share(nint odds, double* share, double* least, double* greatest, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(share, nameof(share));
        Out.Clear(least, nameof(least));
        Out.Clear(greatest, nameof(greatest));
        Proportion lit = Handles.Get<Odds>(odds, nameof(odds)).EveryStageLights;
        Interval at95 = lit.Wilson();
        (*share, *least, *greatest) = (lit.Estimate, at95.Low, at95.High);
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_odds_json", CallConvs = [typeof(CallConvCdecl)])]
    public static int Json(nint odds, byte** json, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(json, nameof(json));
        *json = NativeText.Give(Handles.Get<Odds>(odds, nameof(odds)).ToJson());
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_odds_text", CallConvs = [typeof(CallConvCdecl)])]
    public static int Text(nint odds, byte** text, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(text, nameof(text));
        Odds studied = Handles.Get<Odds>(odds, nameof(odds));
        *text = NativeText.Give($"{studied}\n{studied.WhatMatters()}");
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_odds_table", CallConvs = [typeof(CallConvCdecl)])]
    public static int CaseTable(nint odds, nint* table, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(table, nameof(table));
        *table = Handles.Keep(Table.Of(Handles.Get<Odds>(odds, nameof(odds)).Run.Columns()));
    });
}
