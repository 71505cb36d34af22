namespace Staging.Core.Gaps;

/// <summary>
/// Derivatives of the right-hand side of a lumped gap for implicit steps: all but those of a tape by differences.
/// </summary>
/// <remarks>
/// Differences carry the noise of rounding, some 1e-6 of what they measure, and an implicit step would put that into
/// the ledgers. So every column is made to close the balances of mass and of energy, by its largest entry: the ledgers
/// stay exact to round-off, and where nothing leaves nothing has left.
/// </remarks>
internal static class GapJacobian
{
    /// <summary>
    /// Increment as a share of what a parcel holds [-]: smaller than the square root of the unit round-off, at which
    /// rounding and curvature weigh alike, because pressures on both sides of wide holes differ by less than 1 Pa, and
    /// a difference taken across the corner at equal pressures belongs to neither side.
    /// </summary>
    private const double Increment = 1e-10;

    /// <summary>Increment of time [s]: a millionth of the milliseconds in which sources change.</summary>
    private const double TimeIncrement = 1e-9;

    /// <summary>Writes df/dy row by row, and df/dt.</summary>
    public static void Write(GapSystem system, GapParameters p, in GapPhase phase, double t, ReadOnlySpan<double> y,
        ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope)
    {
        int n = y.Length;
        Span<double> moved = stackalloc double[n], other = stackalloc double[n];
        jacobian.Clear();
        y.CopyTo(moved);
        for (int j = 0; j < p.FirstLayer; j++)
        {
            double size = SizeOf(p, phase, y, j);
            if (size == 0)
                continue;
            moved[j] = y[j] + Math.CopySign(Increment * size, slope[j]);
            double difference = moved[j] - y[j];
            system.Derivative(t, moved, other);
            for (int i = 0; i < n; i++)
                jacobian[i * n + j] = (other[i] - slope[i]) / difference;
            moved[j] = y[j];
            Close(p, jacobian, n, j);
        }

        if (p.Film is { } film)
            Layers(film, p.FirstLayer, n, jacobian);
        double step = t + TimeIncrement <= phase.Stop ? TimeIncrement : -TimeIncrement;
        double later = t + step;
        system.Derivative(later, y, timeSlope);
        for (int i = 0; i < n; i++)
            timeSlope[i] = (timeSlope[i] - slope[i]) / (later - t);
        Close(p, timeSlope, 1, 0);
    }

    /// <summary>Layers of tape follow the gas and each other evenly, and nothing follows them: exact.</summary>
    private static void Layers(FilmParameters film, int first, int n, Span<double> jacobian)
    {
        Span<double> one = stackalloc double[FilmParameters.Layers], slopes = stackalloc double[FilmParameters.Layers];
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

    /// <summary>
    /// Evaluations of the right-hand side at most: one a state that it depends on, and one later.
    /// </summary>
    public static int Calls(GapParameters p, in GapPhase phase) =>
        p.FirstLayer - StateLayout.FirstParcel - (p.Stirred ? StateLayout.Parcel : 0) + (phase.Moves ? 2 : 0) + 1
            - p.Chambers.Sum(c => (c.Plates is null ? 0 : 1) + (c.Pieces is null ? 0 : 1));

    /// <summary>
    /// What an increment of a state is measured by: what its parcel holds; zero where the right-hand side does not
    /// depend on it.
    /// </summary>
    private static double SizeOf(GapParameters p, in GapPhase phase, ReadOnlySpan<double> y, int j)
    {
        if (j >= StateLayout.FirstParcel && j < p.FirstShare)
        {
            int at = j - (j - StateLayout.FirstParcel) % StateLayout.Parcel;
            return p.Stirred && at == StateLayout.Cold ? 0 : j == at + 2 ? y[j] : y[at] + y[at + 1];
        }

        return j switch
        {
            StateLayout.Slide => phase.Moves ? p.Engagement : 0,
            StateLayout.SlideSpeed => phase.Moves ? Math.Max(1, Math.Abs(y[j])) : 0,
            _ => j >= p.FirstShare && y[j] > Increment && !IsOnlyCounted(p, j) ? y[j] : 0,
        };
    }

    /// <summary>
    /// Whether a state is a share of fragments or pieces: it says how long they burn, and not how fast.
    /// </summary>
    private static bool IsOnlyCounted(GapParameters p, int j)
    {
        foreach (ChamberParameters chamber in p.Chambers)
        {
            if (chamber.Plates?.Unburnt == j || chamber.Pieces?.Unburnt == j)
                return true;
        }

        return false;
    }

    /// <summary>
    /// Closes the balances of mass and of energy in a column: what rounding leaves over goes to its largest entry.
    /// </summary>
    private static void Close(GapParameters p, Span<double> columns, int stride, int column)
    {
        double mass = columns[StateLayout.Burnt * stride + column] - columns[StateLayout.MassOut * stride + column];
        double energy = columns[StateLayout.BurntEnergy * stride + column] - columns[StateLayout.EnergyOut * stride + column];
        int heaviest = StateLayout.FirstParcel * stride + column, hottest = heaviest + 2 * stride;
        for (int at = StateLayout.FirstParcel; at < p.FirstShare; at += StateLayout.Parcel)
        {
            int products = at * stride + column, air = products + stride, content = air + stride;
            mass -= columns[products] + columns[air];
            energy -= columns[content];
            heaviest = Larger(columns, Larger(columns, heaviest, products), air);
            hottest = Larger(columns, hottest, content);
        }

        columns[heaviest] += mass;
        columns[hottest] += energy;
    }

    private static int Larger(ReadOnlySpan<double> columns, int one, int other) =>
        Math.Abs(columns[other]) > Math.Abs(columns[one]) ? other : one;
}
