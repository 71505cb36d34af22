using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>The tape over the seam: its layers, warmed by the gas before them, by the midpoint rule.</summary>
internal sealed class TapeFilm
{
    /// <summary>Rate of the quickest layer times a substep [-]: stable below 2 with the midpoint rule.</summary>
    private const double SubstepShare = 0.5;

    private readonly FilmParameters film;
    private readonly double[] half = new double[FilmParameters.Layers];
    private readonly Real[] slopes = new Real[FilmParameters.Layers];
    private readonly double[] layers = new double[FilmParameters.Layers];

    public TapeFilm(FilmParameters film)
    {
        this.film = film;
        Array.Fill(layers, film.Initial);
    }

    /// <summary>Temperatures of the layers [K].</summary>
    public ReadOnlySpan<double> Layers => layers;

    /// <summary>
    /// Warms it for a time [s] under gas of a temperature [K]. The film takes next to no heat from the gas, so none is
    /// booked.
    /// </summary>
    public void Warm(double time, double gas)
    {
        int parts = (int)Math.Ceiling(time * (4 * film.LayerRate + film.FirstRate) / SubstepShare);
        double h = time / parts;
        for (int part = 0; part < parts; part++)
        {
            Step(layers, 0.5 * h, gas, half);
            Step(half, h, gas, layers);
        }
    }

    /// <summary>Adds the slopes at one state, times a time, to the layers.</summary>
    private void Step(double[] at, double h, double gas, double[] into)
    {
        film.Slopes<Real>(at, gas, slopes);
        for (int i = 0; i < into.Length; i++)
            into[i] = layers[i] + h * slopes[i];
    }
}
