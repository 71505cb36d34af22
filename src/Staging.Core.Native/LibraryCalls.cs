using System.Reflection;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Staging.Core.Native;

/// <summary>Versions, and what callers give back. Every call is described in <c>staging_core.h</c>.</summary>
internal static unsafe class LibraryCalls
{
    /// <summary>
    /// Raised when a call, a number or a meaning of <c>staging_core.h</c> changes or goes; not when one is added.
    /// </summary>
    private const int AbiVersion = 1;

    /// <summary>Made once and never freed.</summary>
    private static readonly nint Version = (nint)NativeText.Give(OfTheBuild());

    [UnmanagedCallersOnly(EntryPoint = "staging_version", CallConvs = [typeof(CallConvCdecl)])]
    public static byte* VersionText() => (byte*)Version;

    [UnmanagedCallersOnly(EntryPoint = "staging_abi_version", CallConvs = [typeof(CallConvCdecl)])]
    public static int Abi() => AbiVersion;

    [UnmanagedCallersOnly(EntryPoint = "staging_text_free", CallConvs = [typeof(CallConvCdecl)])]
    public static void FreeText(byte* text) => NativeText.Free(text);

    [UnmanagedCallersOnly(EntryPoint = "staging_release", CallConvs = [typeof(CallConvCdecl)])]
    public static int Release(nint handle) => handle == 0 ? (int)Status.Ok : Border.Cross(null, () => Handles.Release(handle));

    [UnmanagedCallersOnly(EntryPoint = "staging_handles_held", CallConvs = [typeof(CallConvCdecl)])]
    public static long HandlesHeld() => Handles.Count;

    [UnmanagedCallersOnly(EntryPoint = "staging_stop_create", CallConvs = [typeof(CallConvCdecl)])]
    public static int CreateStop(nint* stop, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(stop, nameof(stop));
        *stop = Handles.Keep(new CancellationTokenSource());
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_stop", CallConvs = [typeof(CallConvCdecl)])]
    public static int AskToStop(nint stop, byte** error) =>
        Border.Cross(error, () => Handles.Get<CancellationTokenSource>(stop, nameof(stop)).Cancel());

    /// <summary>The version of Directory.Build.props, without the commit that the build adds behind a plus.</summary>
    private static string OfTheBuild() => typeof(LibraryCalls).Assembly
        .GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];
}
