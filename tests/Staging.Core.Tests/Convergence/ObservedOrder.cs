using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Convergence;

/// <summary>Measures orders of convergence: the slope of log(error) against log(step), by least squares over halved steps.</summary>
internal static class ObservedOrder
{
    private static readonly double[] Inside = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875];

    /// <summary>Options in which nothing but the step size matters.</summary>
    public static SolverOptions Sharp { get; } = SolverOptions.Default with
    {
        EventTimeTolerance = UnitsNet.Duration.FromSeconds(1e-12),
        LongestStep = UnitsNet.Duration.FromSeconds(100),
    };

    /// <summary>Order of the largest error at the ends of the steps, from <paramref name="coarsest"/> equal steps on, halved <paramref name="halvings"/> times.</summary>
    public static double Global<TMethod, TProblem>(int coarsest, int halvings)
        where TMethod : struct, IOneStepMethod
        where TProblem : struct, ITestProblem =>
        Fit(coarsest, halvings, steps => LargestError<TMethod, TProblem>(steps, [1]));

    /// <summary>Order of the largest error of the dense output, at seven places inside every step.</summary>
    public static double OfDenseOutput<TMethod, TProblem>(int coarsest, int halvings)
        where TMethod : struct, IOneStepMethod
        where TProblem : struct, ITestProblem =>
        Fit(coarsest, halvings, steps => LargestError<TMethod, TProblem>(steps, Inside));

    /// <summary>Slope of log(error) against log(1/count) over counts doubled from <paramref name="coarsest"/>.</summary>
    public static double Fit(int coarsest, int halvings, Func<int, double> error)
    {
        double[] x = new double[halvings + 1], y = new double[halvings + 1];
        for (int i = 0; i <= halvings; i++)
        {
            int count = coarsest << i;
            x[i] = -Math.Log(count);
            y[i] = Math.Log(error(count));
        }

        double meanX = x.Average(), meanY = y.Average();
        return x.Zip(y, (a, b) => (a - meanX) * (b - meanY)).Sum() / x.Sum(a => (a - meanX) * (a - meanX));
    }

    /// <summary>Largest error at the given fractions of every step.</summary>
    public static double LargestError<TMethod, TProblem>(int steps, double[] fractions)
        where TMethod : struct, IOneStepMethod
        where TProblem : struct, ITestProblem
    {
        var integrator = new Integrator<TMethod>(Sharp, TProblem.Scales)
        {
            Time = TProblem.Start,
            FixedStep = (TProblem.Stop - TProblem.Start) / steps,
        };
        TProblem.Exact(TProblem.Start).CopyTo(integrator.State);
        var problem = default(TProblem);
        var track = new DenseTrack(problem.Dimension, TMethod.DenseDegree);
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref problem, TProblem.Stop, track));
        Assert.Equal(steps, track.Count);
        return LargestDeviation<TProblem>(track, fractions);
    }

    /// <summary>Largest error of a record at the given fractions of every step.</summary>
    public static double LargestDeviation<TProblem>(DenseTrack track, double[] fractions)
        where TProblem : struct, ITestProblem
    {
        double[] y = new double[default(TProblem).Dimension];
        double largest = 0;
        for (int i = 0; i < track.Count; i++)
        {
            foreach (double fraction in fractions)
            {
                double t = track.StartOf(i) + fraction * track.LengthOf(i);
                track.InStep(i, t, y);
                double[] exact = TProblem.Exact(t);
                for (int j = 0; j < y.Length; j++)
                    largest = Math.Max(largest, Math.Abs(y[j] - exact[j]));
            }
        }

        return largest;
    }
}
