namespace Staging.Core.Studies;

/// <summary>An interval of confidence.</summary>
/// <param name="Low">Lower end, in the unit of what it is about [Unit].</param>
/// <param name="High">Upper end [Unit].</param>
/// <param name="Confidence">Share of such intervals that hold the true value [-].</param>
public sealed record Interval(double Low, double High, double Confidence)
{
    /// <summary>Half of the width [Unit].</summary>
    public double HalfWidth => (High - Low) / 2;

    /// <summary>Whether a value lies inside, ends included.</summary>
    /// <param name="value">The value [Unit].</param>
    /// <returns>True inside.</returns>
    public bool Holds(double value) => value >= Low && value <= High;

    /// <summary>Both ends and the confidence.</summary>
    /// <returns>For example <c>0.81 to 0.85 at 95 %</c>.</returns>
    public override string ToString() => Invariant.Text($"{Low:G4} to {High:G4} at {100 * Confidence:G4} %");
}
