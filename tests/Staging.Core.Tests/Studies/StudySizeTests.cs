using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

/// <summary>What would take all memory is refused, and a cancellation is heard, before any is taken.</summary>
public class StudySizeTests
{
    private const long Few = 4_000_000;

    private static readonly InputSet<double> One = new(0.0, new StudyInput<double>("u", "-", Distribution.Uniform(0, 1), (_, v) => v));

    private static readonly Axis Long = Axis.Even("x", "-", 0, 1, 30_000), Medium = Axis.Even("x", "-", 0, 1, 4_000);

    [Fact]
    public void More_than_one_process_keeps_is_refused_before_memory_is_taken()
    {
        int calls = 0;
        var shares = new SensitivityStudy<double> { Inputs = One, Unit = "-", Model = (x, _) => ++calls };
        var kept = new ReliabilityStudy<double, double> { Inputs = One, Model = (x, _) => ++calls, Outcome = _ => "done", Cases = int.MaxValue, KeepCases = true };
        Refused(() => Sweep.Over(Long, Long, (x, y, _) => ++calls), "900000000 cases");
        Refused(() => Sweep.OverInParts(Long, Long, (x, y, _) => ++calls, Sweep.Number("sum", "-")).Run(), "16777216 would fit");
        Refused(() => shares.VarianceShares(1_000_000, 1000), "1000000000 cases, with 3 numbers each");
        Refused(() => kept.Run(), "2147483647 cases");
        Assert.Equal(0, calls);
    }

    [Fact]
    public void A_part_that_fits_is_run_of_a_study_that_does_not()
    {
        PartitionedStudy<ImmutableArray<SobolIndex>> shares = new SensitivityStudy<double> { Inputs = One, Unit = "-", Model = (x, _) => x }.VarianceSharesInParts(1_000_000, 1000);
        Assert.Equal(1000, shares.Run(new StudyOptions { Part = new StudyPart(7, 1_000_000) }).Cases);
    }

    [Fact]
    public void A_text_that_claims_too_many_cases_is_refused_at_its_head()
    {
        string text = "staging study points, form 2\ncases 99999999\nseed 0\ndesign x\ninputs 0\nspreads 0\nmeasures 1\nmeasure 1 - x\nrange 0 99999999\ncase 0 1\n";
        Assert.Contains("too many to keep", Assert.Throws<FormatException>(() => PartResult.Read(new StringReader(text))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cancellation_is_heard_before_memory_is_taken()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Throws<OperationCanceledException>(() => Sweep.Over(Medium, Medium, (x, y, _) => x + y, cancellationToken: source.Token));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, Few);
    }

    private static void Refused(Action run, string says)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        ModelFinding finding = Assert.Single(Assert.Throws<InvalidModelException>(run).Findings);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, Few);
        Assert.Equal("STU016", finding.Code);
        Assert.Contains(says, finding.Message, StringComparison.Ordinal);
    }
}
