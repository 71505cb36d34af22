using MathNet.Numerics.LinearAlgebra;

namespace Staging.Core.Studies;

/// <summary>Where a fit ended: on unit ranges, and in units of the scale of the trace.</summary>
/// <param name="Best">The point [-], each input 0 to 1 over its range.</param>
/// <param name="Slopes">Slopes there, a column an input [-].</param>
/// <param name="Residuals">Measured less fitted [-].</param>
/// <param name="Scale">Scale of the trace: its scatter about its mean, or what the start leaves of a level one, in its
/// unit [Unit].</param>
/// <param name="Size">Root mean square of the trace in those units [-], 1 or more: what round-off is relative
/// to.</param>
/// <param name="Converged">Whether the minimiser settled.</param>
internal sealed record FittedMinimum(Vector<double> Best, Matrix<double> Slopes, Vector<double> Residuals, double Scale, double Size,
    bool Converged);
