using Staging.Core.Studies;

namespace Staging.Core.Native;

/// <summary>
/// Tells a function of the caller how far a study has come, on the thread of the call, and stops when it says so.
/// </summary>
internal sealed unsafe class ProgressCall(
    delegate* unmanaged[Cdecl]<long, long, void*, int> function, void* user, CancellationTokenSource ended) : IProgress<StudyProgress>
{
    private readonly delegate* unmanaged[Cdecl]<long, long, void*, int> function = function;

    private readonly void* user = user;

    public void Report(StudyProgress value)
    {
        if (!ended.IsCancellationRequested && function(value.Done, value.Total, user) != 0)
            ended.Cancel();
    }
}
