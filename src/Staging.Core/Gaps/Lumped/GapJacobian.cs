using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// Derivatives of the right-hand side of a lumped gap for implicit steps: from the code of its slopes, by dual
/// numbers; those of the layers of a tape in closed form.
/// </summary>
internal static class GapJacobian
{
    /// <summary>Writes df/dy row by row, and df/dt.</summary>
    public static void Write(GapSystem system, GapParameters p, in GapPhase phase, double t, ReadOnlySpan<double> y,
        Span<double> jacobian, Span<double> timeSlope)
    {
        int n = y.Length, end = p.FirstLayer;
        Span<Dual> slope = stackalloc Dual[n];
        jacobian.Clear();
        for (int first = FirstVariable(phase); first <= end; first += Dual.Places)
        {
            // Time stands behind the last variable.
            system.Slopes(Dual.Variable(t, end - first), new StateVector<Dual>(y, first), slope);
            int variables = Math.Min(Dual.Places, end - first);
            for (int i = 0; i < n; i++)
            {
                slope[i].CopyTo(jacobian.Slice(i * n + first, variables));
                if (variables < Dual.Places)
                    timeSlope[i] = slope[i][variables];
            }
        }

        if (p.Film is { } film)
            Layers(film, end, n, jacobian);
    }

    /// <summary>Passes through the right-hand side.</summary>
    public static int Passes(GapParameters p, in GapPhase phase) => (p.FirstLayer - FirstVariable(phase)) / Dual.Places + 1;

    /// <summary>Nothing depends on the totals, nor on the joint while it rests.</summary>
    public static int FirstVariable(in GapPhase phase) => phase.Moves ? StateLayout.Slide : StateLayout.FirstParcel;

    /// <summary>Layers of tape follow the gas and each other evenly, and nothing follows them.</summary>
    private static void Layers(FilmParameters film, int first, int n, Span<double> jacobian)
    {
        Span<double> one = stackalloc double[FilmParameters.Layers];
        Span<Real> slopes = stackalloc Real[FilmParameters.Layers];
        one.Clear();
        for (int j = 0; j < one.Length; j++)
        {
            one[j] = 1;
            film.Slopes(one, 0, slopes);
            one[j] = 0;
            for (int i = 0; i < slopes.Length; i++)
                jacobian[(first + i) * n + first + j] = slopes[i];
        }
    }
}
