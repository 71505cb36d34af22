using Orleans.Placement;
using Staging.Core.Studies;

namespace ClusterStudy;

/// <summary>
/// The worker: it holds no state, so a part that was lost with its silo is simply asked for again elsewhere.
/// </summary>
[RandomPlacement]
public sealed class PartGrain(ILocalSiloDetails silo) : Grain, IPartGrain
{
    /// <summary>
    /// Awaited before a part is worked on, with the name of its silo: this program loses a silo at such a moment. It
    /// works inside one process alone.
    /// </summary>
    internal static Func<string, Task> Beginning { get; set; } = _ => Task.CompletedTask;

    public async Task<PartAnswer> Run(int part, int parts)
    {
        await Beginning(silo.Name);
        return await Task.Run(() =>
        {
            ReliabilityRun run = GapStudy.Study.Run(new StudyOptions { Part = new StudyPart(part, parts), Threads = 1 });
            using var text = new StringWriter();
            run.Write(text);
            return new PartAnswer(silo.Name, text.ToString());
        });
    }
}
