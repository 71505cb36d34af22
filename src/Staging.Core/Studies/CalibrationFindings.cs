using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace Staging.Core.Studies;

/// <summary>What a fit cannot answer for.</summary>
internal static class CalibrationFindings
{
    /// <summary>Length of a column of slopes, relative to the longest, below which the trace is not moved by the input.</summary>
    private const double NoInfluence = 1e-6;

    public static IEnumerable<ModelFinding> Of(
        ImmutableArray<FittedInput> fitted, Func<int, int, double> correlation, Matrix<double> slopes, CalibrationOptions options, bool converged)
    {
        Vector<double> lengths = slopes.ColumnNorms(2);
        for (int i = 0; i < fitted.Length; i++)
        {
            string name = fitted[i].Input.Name;
            if (lengths[i] <= NoInfluence * lengths.Max())
                yield return new ModelFinding(FindingSeverity.Warning, "STU012", name, "The trace does not depend on this input; a trace of another quantity would be needed.");
            if (fitted[i].IsAtEnd)
                yield return new ModelFinding(FindingSeverity.Warning, "STU013", name, $"The fit ran into an end of its range, at {AcceptedRange.Text(fitted[i].Value)} {fitted[i].Input.Unit}: the range, the model or the trace does not fit, and the interval means little.");
            for (int j = i + 1; j < fitted.Length; j++)
            {
                if (Math.Abs(correlation(i, j)) >= options.CorrelationLimit)
                    yield return new ModelFinding(FindingSeverity.Warning, "STU011", $"{name}, {fitted[j].Input.Name}", $"The trace cannot tell these two apart: their estimates are correlated by {AcceptedRange.Text(correlation(i, j))}. Fix one from another source, or measure more.");
            }
        }

        if (!converged)
            yield return new ModelFinding(FindingSeverity.Warning, "STU014", "Fit", "The fit did not settle within a hundred steps; other starting values or ends may.");
    }
}
