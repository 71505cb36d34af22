using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// The bore of a guide tube along its stations as plain SI numbers: pieces of constant bore, extended beyond both ends.
/// </summary>
internal sealed class BoreProfile
{
    private readonly double[] starts;
    private readonly double[] bores;
    private readonly double[] areas;
    private readonly double[] volumes;
    private readonly double[] walls;

    /// <summary>
    /// Makes a profile from the stations at which pieces begin [m], the first at 0, rising, and as many bores [m].
    /// </summary>
    public BoreProfile(ReadOnlySpan<double> starts, ReadOnlySpan<double> bores)
    {
        int n = starts.Length;
        this.starts = starts.ToArray();
        this.bores = bores.ToArray();
        areas = new double[n];
        volumes = new double[n];
        walls = new double[n];
        for (int i = 0; i < n; i++)
        {
            areas[i] = Math.PI / 4 * bores[i] * bores[i];
            if (i == 0)
                continue;
            double length = starts[i] - starts[i - 1];
            volumes[i] = volumes[i - 1] + areas[i - 1] * length;
            walls[i] = walls[i - 1] + Math.PI * bores[i - 1] * length;
        }
    }

    /// <summary>Cross-section at station 0 [m2].</summary>
    public double FirstArea => areas[0];

    /// <summary>Bore at station 0 [m].</summary>
    public double FirstBore => bores[0];

    /// <summary>Narrowest bore [m].</summary>
    public double NarrowestBore => bores.Min();

    /// <summary>Whether the tube has one bore.</summary>
    public bool IsUniform => bores.All(b => b == bores[0]);

    /// <summary>Bore just below a station [m].</summary>
    public double BoreBelow(double station) => bores[PieceBelow(station)];

    /// <summary>Cross-section just below a station [m2].</summary>
    public double AreaBelow(double station) => areas[PieceBelow(station)];

    /// <summary>Volume from station 0 to a station [m3]; negative below it.</summary>
    public double VolumeTo(double station)
    {
        int i = PieceBelow(station);
        return volumes[i] + areas[i] * (station - starts[i]);
    }

    /// <summary>Wall from station 0 to a station [m2]; negative below it.</summary>
    public T WallTo<T>(T station)
        where T : struct, IReal<T>
    {
        int i = PieceBelow(station.Value);
        return walls[i] + Math.PI * bores[i] * (station - starts[i]);
    }

    /// <summary>The station up to which a volume reaches [m].</summary>
    public T StationOf<T>(T volume)
        where T : struct, IReal<T>
    {
        int i = volumes.Length - 1;
        while (i > 0 && volumes[i] >= volume.Value)
            i--;
        return starts[i] + (volume - volumes[i]) / areas[i];
    }

    private int PieceBelow(double station)
    {
        int i = starts.Length - 1;
        while (i > 0 && starts[i] >= station)
            i--;
        return i;
    }
}
