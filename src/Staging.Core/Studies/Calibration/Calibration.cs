using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Staging.Core.Studies;

/// <summary>Fits inputs of a model to a measured trace by least squares.</summary>
internal static class Calibration
{
    private const int MaxIterations = 100;

    /// <summary>
    /// Tolerances of the minimiser, on unit ranges and a trace of unit size: a millionth of what any measured trace can
    /// resolve. That of the function is on a sum of squares, so it is the square of this.
    /// </summary>
    private const double Tolerance = 1e-8;

    /// <summary>Scatter of a trace, relative to its size, below which it is round-off [-].</summary>
    private const double MinScatter = 1e-12;

    /// <summary>Fits; see <see cref="InputSet{T}.Fit"/>.</summary>
    /// <remarks>
    /// The minimiser is that of MathNet.Numerics with its own slopes: central differences over a stated share of
    /// each range, because its default step is below the tolerance of an integrator. Its tolerances are absolute, so
    /// trace and prediction are counted from the mean of the trace and divided by its scatter about that: the fit
    /// depends neither on their unit nor on a large constant pressure. A constant trace has no scatter; there the
    /// residual of the prediction at the start is used.
    /// </remarks>
    public static CalibrationResult<T> Fit<T>(
        InputSet<T> inputs,
        MeasuredTrace trace,
        Func<T, ImmutableArray<double>, CancellationToken, ImmutableArray<double>> predict,
        CalibrationOptions options,
        CancellationToken cancellationToken)
    {
        var range = new FittedRange([.. inputs.Inputs.Select(i => i.Spread)]);
        InvalidModelException.ThrowOnError([.. Findings(inputs, trace)]);

        Vector<double> trueSize = Vector<double>.Build.DenseOfArray([.. trace.Values]),
            times = Vector<double>.Build.DenseOfArray([.. trace.Times]);
        double centre = trueSize.Average(), size = RootMeanSquare(trueSize);
        Vector<double> Raw(Vector<double> z, CancellationToken cancel)
        {
            ImmutableArray<double> curve = predict(inputs.At(range.Values(z)), trace.Times.Items, cancel);
            if (curve.IsDefault || curve.Length != trace.Times.Length || curve.Any(v => !double.IsFinite(v)))
                throw new ArithmeticException(
                    $"The model has to give {trace.Times.Length} finite numbers, one for each time of the trace.");
            return Vector<double>.Build.DenseOfArray([.. curve]);
        }

        double scale = Scale(size, RootMeanSquare(trueSize - centre),
            () => RootMeanSquare(trueSize - Raw(range.Start(), cancellationToken)));
        Vector<double> measured = (trueSize - centre) / scale;
        Vector<double> Curve(Vector<double> z, CancellationToken cancel) => (Raw(z, cancel) - centre) / scale;

        Matrix<double> Slopes(Vector<double> z) => range.Slopes(z, options, Curve, cancellationToken);
        IObjectiveModel objective = ObjectiveFunction.NonlinearModel((z, _) => Curve(z, cancellationToken), (z, _) => Slopes(z), times,
            measured);
        NonlinearMinimizationResult found = new LevenbergMarquardtMinimizer(1e-3, Tolerance, Tolerance, Tolerance * Tolerance,
            MaxIterations)
            .FindMinimum(objective, range.Start(), Vector<double>.Build.Dense(range.Count, 0), Vector<double>.Build.Dense(range.Count, 1));

        Vector<double> best = found.MinimizingPoint;
        var minimum = new FittedMinimum(best, Slopes(best), measured - Curve(best, cancellationToken), scale, Math.Max(size / scale, 1),
            IsSettled(found.ReasonForExit));
        return CalibrationResult.Of(inputs, range, minimum, options);
    }

    private static double RootMeanSquare(Vector<double> values) => values.L2Norm() / Math.Sqrt(values.Count);

    /// <summary>
    /// Scatter of the trace about its mean [Unit]; of a constant trace, whose scatter is round-off, the residual of the
    /// curve at the start; where that is round-off too, its size; a trace of zeros is not scaled.
    /// </summary>
    private static double Scale(double size, double scatter, Func<double> leftAtStart)
    {
        if (scatter > MinScatter * size)
            return scatter;
        double left = leftAtStart();
        return left > MinScatter * size ? left : size > 0 ? size : 1;
    }

    private static bool IsSettled(ExitCondition reason) =>
        reason is ExitCondition.Converged or ExitCondition.RelativePoints or ExitCondition.RelativeGradient or ExitCondition.LackOfProgress;

    private static IEnumerable<ModelFinding> Findings<T>(InputSet<T> inputs, MeasuredTrace trace)
    {
        foreach (StudyInput<T> input in inputs.Inputs.Where(i => !i.Spread.IsBounded || i.Spread.Shape is DistributionShape.Discrete))
            yield return new ModelFinding(FindingSeverity.Error, "STU009", input.Path,
                "A fit needs the ends between which it may search; a uniform, triangular or truncated normal distribution would fit.");
        if (trace.Times.Length <= inputs.Inputs.Length)
            yield return new ModelFinding(FindingSeverity.Error, "STU010", nameof(trace), $"{trace.Times.Length} samples cannot "
                + $"determine {inputs.Inputs.Length} inputs and their scatter; more samples than inputs are needed.");
    }
}
