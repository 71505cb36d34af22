namespace Staging.Core.Gaps.OneDimensional;

/// <summary>The tube goes on as it is: waves leave without an echo.</summary>
internal sealed class OpenEnd : TubeEnd
{
    public override bool Mirrors => false;

    public override EndFlux Flow(in EndState inside)
    {
        double m = inside.Density * inside.Velocity, p = inside.Pressure;
        double E = p / (inside.Gamma - 1) + 0.5 * m * inside.Velocity;
        return new EndFlux(m, m * inside.Velocity + p, inside.Velocity * (E + p), m * inside.Fraction);
    }
}
