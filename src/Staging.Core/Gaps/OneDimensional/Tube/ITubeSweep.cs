namespace Staging.Core.Gaps.OneDimensional;

/// <summary>The passes over a tube with one number of lanes and one kind of gas.</summary>
internal interface ITubeSweep
{
    TubeExtremes Primitives(TubeArrays a);

    /// <summary>
    /// Values half a step ahead at the left or the right face of one cell, always computed with one lane.
    /// </summary>
    Primitive<Lane1> Face(TubeArrays a, int cell, bool right, double h);

    /// <summary>Writes the next state; without slopes when the step must keep everything positive.</summary>
    void Advance(TubeArrays a, TubeBore? bore, double k, bool uniform, in EndFlux left, in EndFlux right);

    /// <summary>Friction and heat loss at the wall, see <see cref="WallLosses{L}"/>.</summary>
    double Walls(TubeArrays a, TubeBore? shape, double time, double bore, in WallExchange walls);

    /// <summary>gamma - 1 of the gas with a mass fraction of products [-].</summary>
    double GammaMinusOne(double fraction);
}
