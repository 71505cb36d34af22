using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace Staging.Core.Studies;

/// <summary>The findings of a fit.</summary>
/// <param name="fitted">The fitted inputs.</param>
/// <param name="shape">(J' J)^-1 on unit ranges [-].</param>
/// <param name="correlation">Correlation of the estimates [-].</param>
/// <param name="lengths">Lengths of the columns of J [-].</param>
/// <param name="minSlope">Length of such a column that round-off alone makes [-].</param>
/// <param name="limit">Correlation from which on two inputs count as not told apart [-].</param>
internal sealed class CalibrationFindings(
    ImmutableArray<FittedInput> fitted, Matrix<double> shape, Matrix<double> correlation, Vector<double> lengths, double minSlope,
    double limit)
{
    /// <summary>
    /// Length of a column of slopes, relative to the longest, below which the input has no influence on the trace.
    /// </summary>
    private const double NoInfluence = 1e-6;

    public IEnumerable<ModelFinding> All(bool converged)
    {
        for (int i = 0; i < fitted.Length; i++)
        {
            if (IsIdle(i))
                yield return Warning("STU012", Name(i),
                    "The trace does not depend on this input; a trace of another quantity would be needed.");
            if (fitted[i].IsAtEnd)
                yield return Warning("STU013", Name(i),
                    $"The fit ran into an end of its range, at {AcceptedRange.Text(fitted[i].Value)} {fitted[i].Input.Unit}: the range, "
                        + $"the model or the trace does not fit, and the interval means little.");
            for (int j = i + 1; j < fitted.Length; j++)
            {
                if (IsPair(i, j))
                    yield return Warning("STU011", $"{Name(i)}, {Name(j)}", $"The trace cannot tell these two apart: their estimates "
                        + $"are correlated by {AcceptedRange.Text(correlation[i, j])}. Fix one from another source, or measure more.");
            }
        }

        foreach (string names in Groups())
            yield return Warning("STU011", names, "The trace cannot tell these apart: the others together do almost what each of them "
                + "does. Fix one or more from another source, or measure more.");
        if (!converged)
            yield return Warning("STU014", "Fit", "The fit did not converge in a hundred steps; other starting values or ends may help.");
    }

    private static ModelFinding Warning(string code, string path, string message) => new(FindingSeverity.Warning, code, path, message);

    private string Name(int i) => fitted[i].Input.Name;

    private bool IsIdle(int i) => lengths[i] <= Math.Max(NoInfluence * lengths.Max(), minSlope);

    private bool IsPair(int i, int j) => Math.Abs(correlation[i, j]) >= limit;

    /// <summary>
    /// Whether the others together can replace an input: its variance is inflated by 1/(1 - R^2), R its multiple
    /// correlation with them (D. A. Belsley, E. Kuh and R. E. Welsch, Regression Diagnostics, 1980, section 3.2). Of
    /// two inputs alone R is their correlation, so the limit is the same.
    /// </summary>
    private bool IsStoodFor(int i) => !IsIdle(i) && shape[i, i] * lengths[i] * lengths[i] >= 1 / (1 - limit * limit);

    /// <summary>
    /// Names of three or more inputs that act alike: each that no pair has reported, with all that can replace it.
    /// Estimates of m inputs that act exactly alike are correlated by 1/(m - 1), so half of the least such value
    /// identifies the group.
    /// </summary>
    private IEnumerable<string> Groups()
    {
        int[] all = [.. Enumerable.Range(0, fitted.Length)], stoodFor = [.. all.Where(IsStoodFor)];
        return stoodFor
            .Where(i => !all.Any(j => j != i && IsPair(i, j)))
            .Select(i => string.Join(", ", stoodFor.Where(j => Math.Abs(correlation[i, j]) >= 0.5 / fitted.Length).Select(Name)))
            .Distinct();
    }
}
