// One study in parts over a cluster of two silos, one of which is lost on the way: the same bits as the study run
// alone.
//   dotnet run --project samples/ClusterStudy
using ClusterStudy;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Staging.Core.Studies;

const int parts = 36, atOnce = 4, maxTries = 20;
int primary = Member.FreePort();
IHost first = await Member.Start("first", primary, primary);
IHost second = await Member.Start("second", Member.FreePort(), primary);
IGrainFactory grains = first.Services.GetRequiredService<IGrainFactory>();
while ((await grains.GetGrain<IManagementGrain>(0).GetHosts(onlyActive: true)).Count < 2)
    await Task.Delay(TimeSpan.FromMilliseconds(100));

var answers = new PartAnswer[parts];
int fromSecond = 0, retries = 0;
// The second is lost once it has shown that it works, at the moment at which it begins another part: it keeps that
// part, and no answer comes.
var begins = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
Task never = new TaskCompletionSource().Task;
PartGrain.Beginning = silo =>
{
    if (silo != "second" || Volatile.Read(ref fromSecond) == 0)
        return Task.CompletedTask;
    begins.TrySetResult();
    return never;
};
Task lost = Lose();
await Parallel.ForEachAsync(Enumerable.Range(1, parts), new ParallelOptions { MaxDegreeOfParallelism = atOnce }, async (part, stop) =>
{
    answers[part - 1] = await Ask(part, stop);
    if (answers[part - 1].Silo == "second")
        Interlocked.Increment(ref fromSecond);
});
bool dropped = begins.Task.IsCompleted;
if (dropped)
    await lost;

ReliabilityRun merged = ReliabilityRun.Merge([.. answers.Select(a => ReliabilityRun.Read(new StringReader(a.Text)))]);
ReliabilityRun alone = GapStudy.Study.Run();
Console.WriteLine($"{parts} parts over two silos; the second {(dropped ? "was lost" : "was never lost")} on the way; {fromSecond} parts "
    + $"came from it, {retries} times a part was asked for again");
Console.WriteLine(merged);
bool same = Text(merged) == Text(alone);
Console.WriteLine(same ? "same bits as the study run alone" : "the cluster gave other bits");
await Member.Drop(first);
return same && dropped && retries > 0 ? 0 : 1;

async Task Lose()
{
    await begins.Task;
    await Member.Drop(second);
}

async Task<PartAnswer> Ask(int part, CancellationToken stop)
{
    for (int attempt = 1; ; attempt++)
    {
        try
        {
            return await grains.GetGrain<IPartGrain>(part).Run(part, parts);
        }
        catch (Exception fault) when (attempt < maxTries && fault is OrleansException or TimeoutException)
        {
            Interlocked.Increment(ref retries);
            await Task.Delay(TimeSpan.FromMilliseconds(500), stop);
        }
    }
}

static string Text(ReliabilityRun run)
{
    using var text = new StringWriter();
    run.Write(text);
    return text.ToString();
}
