using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// Hands each accepted step of a lumped run to the record and to the march of the grain surface, looks for the
/// extremes, and tells whoever follows the run how far it has come.
/// </summary>
internal sealed class LumpedObserver(
    GapParameters p, DenseTrack track, IgnitionTracker ignition, SurfaceMarch surface, ProgressReport? progress) : IStepObserver
{
    private readonly double[] y = new double[p.StateCount];
    private double lastPressure = p.OutsidePressure;

    /// <inheritdoc/>
    public bool IsDone => surface.IsDone;

    public void Accept(double start, double length, in DenseStep step)
    {
        track.Accept(start, length, step);
        if (start == 0)
            ignition.Start(StateAt(step, 0).HeatingAt(0));
        surface.Along(step, start + length);
        if (!ignition.Opened)
            Extremes(step, start, length);
        progress?.Reached(start + length);
    }

    /// <summary>
    /// Extremes stand at the ends of steps, where sources turn abruptly, or within a smooth one: there at the top of
    /// the parabola through the pressures at its ends and middle.
    /// </summary>
    private void Extremes(in DenseStep step, double start, double length)
    {
        double middle = Look(step, start + 0.5 * length), end = Look(step, start + length);
        double bend = lastPressure - 2 * middle + end, top = 0.25 * (lastPressure - end) / bend;
        if (bend < 0 && Math.Abs(top) < 0.5)
            Look(step, start + (0.5 + top) * length);
        lastPressure = end;
    }

    /// <summary>Takes note of the extremes at a time; returns the pressure there [Pa].</summary>
    private double Look(in DenseStep step, double time)
    {
        LumpedView now = StateAt(step, time);
        ignition.Note(now.Pressure, now.Nozzle.ProductFraction);
        ignition.NoteFront(now.FrontRemaining);
        return now.Pressure;
    }

    private LumpedView StateAt(in DenseStep step, double time)
    {
        step.At(time, y);
        return new LumpedView(p, y);
    }
}
