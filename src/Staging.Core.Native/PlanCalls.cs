using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Staging.Core.Plans;
using Staging.Core.Reviews;

namespace Staging.Core.Native;

/// <summary>From a text or a file to a plan.</summary>
internal static unsafe class PlanCalls
{
    [UnmanagedCallersOnly(EntryPoint = "staging_plan_parse", CallConvs = [typeof(CallConvCdecl)])]
    public static int Parse(byte* text, nint* plan, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(plan, nameof(plan));
        *plan = Handles.Keep(StagingPlan.Parse(NativeText.ReadPlan(text)));
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_plan_read", CallConvs = [typeof(CallConvCdecl)])]
    public static int Read(byte* path, nint* plan, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(plan, nameof(plan));
        *plan = Handles.Keep(StagingPlan.Read(NativeText.ReadPath(path)));
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_plan_json", CallConvs = [typeof(CallConvCdecl)])]
    public static int Json(nint plan, byte** json, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(json, nameof(json));
        *json = NativeText.Give(Handles.Get<StagingPlan>(plan, nameof(plan)).ToJson());
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_review_plan_text", CallConvs = [typeof(CallConvCdecl)])]
    public static int ReviewText(byte* text, int cases, byte** json, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(json, nameof(json));
        *json = NativeText.Give(StagingPlan.Parse(NativeText.ReadPlan(text)).Review(cases: cases).ToJson());
    });
}
