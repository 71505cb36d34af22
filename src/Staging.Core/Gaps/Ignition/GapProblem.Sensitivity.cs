using System.Collections.Immutable;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <content>Sensitivity of the time to light to every input of ignition.</content>
public sealed partial record GapProblem
{
    /// <summary>
    /// d ln t/d ln x of the lit time by central differences of whole runs, at a step and at half of it, extrapolated to
    /// zero step (L. F. Richardson 1911). The gas does not feel the grain, but exchange, front and wall change the flow
    /// as well: all is run again.
    /// </summary>
    /// <param name="step">Relative step of the differences [-], 0.001 to 0.1; 0.02 is a good start, smaller ones meet
    /// the tolerance of the run.</param>
    /// <param name="model">Which model runs; null for <see cref="GapModel.TwoZone"/>.</param>
    /// <param name="options">How to integrate; null for the defaults.</param>
    /// <param name="cancellationToken">Stops the runs.</param>
    /// <returns>
    /// One slope an input, the strongest first; without inputs that are zero, and without those that leave their range
    /// or put the light out within the step. Empty when the gap does not light.
    /// </returns>
    /// <exception cref="InvalidModelException">The problem is in error.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The step is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public ImmutableArray<IgnitionTimeSlope> SensitivityOfIgnitionTime(
        double step, GapModel? model = null, SolverOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        double h = Guard.In(step, 1e-3, 0.1, "-", nameof(step));
        if (LitTime(this) is null)
            return [];
        var slopes = ImmutableArray.CreateBuilder<IgnitionTimeSlope>();
        foreach (IgnitionInput input in IgnitionInputToSi.All)
        {
            double value = input.Read(Design);
            if (value != 0 && Slope(input, h) is { } wide && Slope(input, 0.5 * h) is { } narrow)
                slopes.Add(new IgnitionTimeSlope(input, value, narrow + (narrow - wide) / 3, Math.Abs(narrow - wide) / 3));
        }

        slopes.Sort((a, b) => Math.Abs(b.Slope).CompareTo(Math.Abs(a.Slope)));
        return slopes.ToImmutable();

        double? LitTime(GapProblem at) => at.Solve(model, options, cancellationToken: cancellationToken).TimeOf(GapEventKind.Lit)?.Seconds;

        double? Slope(IgnitionInput input, double by)
        {
            // The same way down as up in the logarithm.
            double up = 1 + by, down = 1 / up;
            try
            {
                return LitTime(this with { Design = input.Scale(Design, up) }) is { } late
                    && LitTime(this with { Design = input.Scale(Design, down) }) is { } early
                    ? Math.Log(late / early) / Math.Log(up / down)
                    : null;
            }
            catch (ArgumentOutOfRangeException)
            {
                return null;
            }
        }
    }
}
