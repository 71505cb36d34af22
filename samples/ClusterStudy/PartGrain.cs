using Orleans.Placement;
using Staging.Core.Studies;

namespace ClusterStudy;

/// <summary>The worker: it holds no state, so a part that was lost with its silo is simply asked for again elsewhere.</summary>
[RandomPlacement]
public sealed class PartGrain(ILocalSiloDetails silo) : Grain, IPartGrain
{
    public Task<PartAnswer> Run(int part, int parts) => Task.Run(() =>
    {
        ReliabilityRun run = GapStudy.Study.Run(new StudyOptions { Shard = new StudyShard(part, parts), Threads = 1 });
        using var text = new StringWriter();
        run.Write(text);
        return new PartAnswer(silo.Name, text.ToString());
    });
}
