using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// A film over the seam as plain SI numbers, cut into layers; and how its layers warm and what they still hold.
/// </summary>
/// <param name="Strength">Force that it holds cold [N].</param>
/// <param name="Initial">Temperature before the gas arrives [K].</param>
/// <param name="Softening">Temperature at which a layer holds nothing [K].</param>
/// <param name="FirstRate">Rate at which the first layer follows the gas: coefficient over heat capacity of a layer
/// [1/s].</param>
/// <param name="LayerRate">Rate at which layers follow each other: k/(rho c) over the square of their thickness
/// [1/s].</param>
internal sealed record FilmParameters(double Strength, double Initial, double Softening, double FirstRate, double LayerRate)
{
    /// <summary>Layers: the far face then softens within half a percent of the exact time, see the tests.</summary>
    public const int Layers = 8;

    /// <summary>
    /// Share of its cold strength that the film has left [-]; none where the air has already softened it.
    /// </summary>
    public double StrengthLeft(ReadOnlySpan<double> layers)
    {
        if (!(Softening > Initial))
            return 0;
        double sum = 0;
        foreach (double T in layers)
            sum += Math.Clamp((Softening - T) / (Softening - Initial), 0, 1);
        return sum / Layers;
    }

    /// <summary>Writes how fast the layers warm under gas of a temperature [K] at the first of them [K/s].</summary>
    public void Slopes<T>(ReadOnlySpan<double> layers, T gas, Span<T> slopes)
        where T : struct, IReal<T>
    {
        T flow = FirstRate * (gas - layers[0]);
        for (int i = 0; i < Layers - 1; i++)
        {
            double next = LayerRate * (layers[i] - layers[i + 1]);
            slopes[i] = flow - next;
            flow = next;
        }

        slopes[Layers - 1] = flow;
    }
}
