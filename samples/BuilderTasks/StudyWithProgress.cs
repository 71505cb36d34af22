#region program-study
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Studies;
#endregion

namespace BuilderTasks;

/// <summary>A study that tells how far it is, and that can be stopped.</summary>
internal static class StudyWithProgress
{
    public static void Run()
    {
        #region program-study
        using var stop = new CancellationTokenSource(TimeSpan.FromMinutes(10));
        Console.CancelKeyPress += (_, key) =>
        {
            key.Cancel = true; // the study ends, the program does not
            stop.Cancel();
        };
        try
        {
            Odds odds = StagingPlan.Read("demo/plan.json").Odds(cases: 100, progress: new Told(), cancellationToken: stop.Token);
            Console.WriteLine(odds);
        }
        catch (OperationCanceledException)
        {
            Console.WriteLine("stopped");
        }
        #endregion
    }
}

#region program-study
internal sealed class Told : IProgress<StudyProgress>
{
    public void Report(StudyProgress value) => // in order, on the thread that runs the study
        Console.Error.Write($"\r{value.Done} of {value.Total}, {value.Remaining.Seconds:F0} s left ");
}
#endregion
