namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// A wall across the tube, at rest or receding: nothing passes, the wall holds the pressure of the gas stopped at it.
/// </summary>
internal sealed class ClosedEnd : TubeEnd
{
    private double speed;

    /// <summary>What the wall gave the gas in the last step, a unit of area.</summary>
    public EndFlux LastFlow { get; private set; }

    public override bool Mirrors => true;

    public override double Speed => speed;

    /// <summary>Sets the speed at which the wall recedes, 0 or more.</summary>
    public void Recede(double value) => speed = -value;

    public override EndFlux Flow(in EndState inside)
    {
        double p = inside.From(speed).WallPressure();
        return LastFlow = new EndFlux(0, p, p * speed, 0);
    }
}
