using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

/// <summary>Hears each report at once, on the thread that makes it.</summary>
internal sealed class Listener(Action<StudyProgress> heard) : IProgress<StudyProgress>
{
    public void Report(StudyProgress value) => heard(value);
}
