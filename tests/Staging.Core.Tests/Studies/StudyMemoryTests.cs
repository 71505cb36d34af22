using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

/// <summary>The heap belongs to the whole process, so nothing else may run beside this.</summary>
[CollectionDefinition(nameof(StudyMemoryTests), DisableParallelization = true)]
[Collection(nameof(StudyMemoryTests))]
public class StudyMemoryTests
{
    [Fact]
    public void The_peak_heap_is_flat_in_the_number_of_cases()
    {
        Peak(2_000);
        long few = Peak(10_000), many = Peak(100_000);
        // A case that was kept would cost its two inputs and two measures, 150 bytes or more: 13 MB for the 90 000 further ones. The bins of two measures grow by some kB.
        Assert.InRange(many - few, -1_000_000, 1_000_000);
    }

    /// <summary>What is alive at twenty moments of a study beyond what was before it, at most [bytes].</summary>
    private static long Peak(long cases)
    {
        // What other tests left to their finalizers goes first, so that it does not go while this counts.
        GC.Collect();
        GC.WaitForPendingFinalizers();
        long before = GC.GetTotalMemory(forceFullCollection: true), peak = 0, run = 0;
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(cases) with
        {
            Model = (m, _) =>
            {
                if (++run % (cases / 20) == 0)
                    peak = Math.Max(peak, GC.GetTotalMemory(forceFullCollection: true));
                return m.Period;
            },
        };
        ReliabilityRun result = study.Run(new StudyOptions { Threads = 1 });
        Assert.Equal(cases, result.Cases);
        return peak - before;
    }
}
