using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Studies;

namespace Staging.Core.Tests.GroundTests;

/// <summary>The lines a user writes: shown in the documentation, run here with few cases.</summary>
public class GroundTestSnippets
{
    [Fact]
    public void Ten_tests_and_the_next_design()
    {
        string file = TenTests.File;
        GroundTestSeries candidates = GroundTestSeries.Read(Path.Combine(TenTests.Folder, "next-tests.json"));
        GapProblem next = candidates.Tests[3].Gap;
        int cases = 16, runs = 100; // every case: few cases are enough to try it
        #region ground-tests
        GroundTestSeries tests = GroundTestSeries.Read(file);
        Learned learned = tests.Learn(cases, runs: runs); // say, 3000 runs of 100 000 cases
        Console.WriteLine(learned); // effective number of cases, each unknown, each test
        Console.WriteLine(learned.Odds(next)); // odds of the next design before and after
        Console.WriteLine(learned.MostInformative(candidates.Tests)); // which test would teach most
        #endregion
        Assert.Equal(17, learned.Posterior.Inputs.Length);
        Assert.Equal(10, learned.Explained.Length);
        Assert.InRange(learned.Posterior.EffectiveSampleSize, 1.99, 16);
        Assert.Equal(learned.ToString(), tests.Learn(cases, options: new StudyOptions { Threads = 1 }).ToString());
    }

    [Fact]
    public void Any_model()
    {
        #region learning-study
        var study = new LearningStudy<double[]>
        {
            Inputs = new([0.5], new StudyInput<double[]>("share", "-", Distribution.Uniform(0, 1), (_, v) => [v])),
            Observations = ["seven of ten"],
            LogLikelihoods = (model, _) => [7 * Math.Log(model[0]) + 3 * Math.Log(1 - model[0])],
            Cases = 4096,
        };
        Posterior<double[]> posterior = study.Learn();
        Console.WriteLine(posterior);
        Console.WriteLine(posterior.Odds((model, _) => model[0]));     // of the next one: 1/2 before, 8/12 after
        #endregion
        Assert.Equal(8.0 / 12, posterior.Odds((model, _) => model[0]).After, 1e-3);
    }
}
