namespace Staging.Core.Studies;

/// <summary>An interval of confidence.</summary>
public sealed class Interval
{
    internal Interval(double low, double high, double confidence) => (Low, High, Confidence) = (low, high, confidence);

    /// <summary>Lower end, in the unit of what it is about [Unit].</summary>
    public double Low { get; }

    /// <summary>Upper end [Unit].</summary>
    public double High { get; }

    /// <summary>Share of such intervals that contain the true value [-].</summary>
    public double Confidence { get; }

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
