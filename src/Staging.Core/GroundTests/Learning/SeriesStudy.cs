using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Studies;

namespace Staging.Core.GroundTests;

/// <summary>What answers for the model: a gap with the values of a case in it.</summary>
internal delegate GapAnswer GapAnswers(GapProblem problem, GapModel model, SolverOptions solver, CancellationToken cancel);

/// <summary>
/// A series of tests as a learning study. A case runs every different gap once, however many tests there are of it, and
/// keeps one log-likelihood of each test. A case in which a gap is not solved counts as refused: any likelihood would
/// draw what is believed towards the places where the solver fails, or away from them.
/// </summary>
/// <param name="series">The series.</param>
/// <param name="unknown">What is not known of its gaps.</param>
/// <param name="answers">What runs a gap.</param>
internal sealed class SeriesStudy(GroundTestSeries series, UnknownInputs unknown, GapAnswers answers)
{
    /// <summary>What is not known of the gaps.</summary>
    public UnknownInputs Unknown => unknown;

    /// <summary>What runs a gap.</summary>
    public GapAnswers Answers => answers;

    /// <summary>For each test the logarithm of its likelihood where model or record is wrong [-].</summary>
    public IEnumerable<double> LogSilence => series.Tests.Select(t => new TestLikelihood(t, series.Discrepancy).LogOfSilence);

    /// <summary>The study.</summary>
    public LearningStudy<EquatableArray<double>> Study(int cases, ulong seed)
    {
        InvalidModelException.ThrowOnError(series.Check());
        (TestLikelihood[] Tests, int[] At, RunnableGap Gap)[] gaps =
        [
            .. series.Tests.Select((test, j) => (test, j)).GroupBy(t => (t.test.Gap, t.test.Model, t.test.Solver)).Select(g => (
                g.Select(t => new TestLikelihood(t.test, series.Discrepancy)).ToArray(),
                g.Select(t => t.j).ToArray(),
                Runnable(g.Key.Gap, g.Key.Model, g.Key.Solver))),
        ];
        return new LearningStudy<EquatableArray<double>>
        {
            Inputs = unknown.Values,
            Observations = [.. series.Tests.Select(t => t.Name)],
            LogLikelihoods = (values, cancel) =>
            {
                double[] logs = new double[series.Tests.Length];
                foreach ((TestLikelihood[] tests, int[] at, RunnableGap gap) in gaps)
                {
                    GapAnswer answer = gap.At(values, cancel);
                    if (answer.Ending is null)
                        throw new ArgumentException($"The gap of \"{Excerpt.Of(series.Tests[at[0]].Name)}\" was not solved.");
                    for (int k = 0; k < tests.Length; k++)
                        logs[at[k]] = tests[k].Log(answer);
                }

                return [.. logs];
            },
            Cases = cases,
            Seed = seed,
            Remark = series.Digest,
        };
    }

    /// <summary>A gap that can be run for any case.</summary>
    public RunnableGap Runnable(GapProblem gap, GapModel model, SolverOptions solver)
    {
        Func<EquatableArray<double>, GapProblem> with = unknown.In(gap);
        return new RunnableGap((values, cancel) => answers(with(values), model, solver, cancel));
    }
}
