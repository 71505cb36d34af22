using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>What the gap says of itself between two steps.</summary>
internal sealed partial class OneDimensionalGap
{
    /// <summary>
    /// Volume that leaves per second and stirs as if it left through the last vents [m3/s]: each vent counts by its
    /// share of stirring over theirs.
    /// </summary>
    public double StreamVolumeFlow { get; private set; }

    /// <summary>Whether tube, chambers and jackets all hold a gas: finite densities and pressures above zero.</summary>
    public bool HoldsGas
    {
        get
        {
            foreach (ChamberVessel chamber in chambers)
            {
                if (!chamber.HoldsGas)
                    return false;
            }

            return Tube.Extremes.AllPositive && (jackets?.HoldGas ?? true);
        }
    }

    /// <summary>
    /// Speed of the stirring that reaches the nozzle plane [m/s], less what a free jet has lost on its way.
    /// </summary>
    public double SpeedAtNozzle => StreamVolumeFlow / p.BoreArea * p.LastStirring * (deadEnd?.JetShare ?? 1);

    /// <summary>Lengthening of the tube by the sliding joint, as bore length [m].</summary>
    public double Stretch => lengthened * p.JointArea / Tube.FirstArea;

    /// <summary>Force of a tape that the heat has left [N]; it tears at the first movement.</summary>
    public double TapeHolds => tape is not null && JointTravel == 0 ? p.Film!.Strength * p.Film.StrengthLeft(tape.Layers) : 0;

    /// <summary>Pressures in the jackets [Pa].</summary>
    public double[] JacketPressures => jackets?.Pressures ?? [];

    /// <summary>
    /// Highest pressure anywhere [Pa]: chambers, jackets, and the tube, whose mean is known to the caller.
    /// </summary>
    public double HighestPressure(double tube)
    {
        double most = Math.Max(tube, jackets?.HighestPressure ?? 0);
        foreach (ChamberVessel chamber in chambers)
            most = Math.Max(most, chamber.Pressure);
        return most;
    }

    /// <summary>Highest pressure in a chamber; the gap's where there is none [Pa].</summary>
    public double ChamberPressure
    {
        get
        {
            double most = chambers.Length == 0 ? Pressure : 0;
            foreach (ChamberVessel chamber in chambers)
                most = Math.Max(most, chamber.Pressure);
            return most;
        }
    }

    /// <summary>Mean pressure of the tube by volume: what pushes the joint [Pa].</summary>
    public double Pressure
    {
        get
        {
            TubeArrays a = Tube.Cells;
            double sum = 0, volume = 0;
            for (int i = a.First; i < a.End; i++)
            {
                double v = Tube.VolumeOf(i);
                sum += v * a.Pressure[i];
                volume += v;
            }

            return sum / volume;
        }
    }

    /// <summary>Mass fraction of products in what stands before the last vents [-].</summary>
    public double ProductsAtLastVent
    {
        get
        {
            TubeArrays a = Tube.Cells;
            if (lastVents.Length == 0)
                return a.Fraction[CellAt(p.LastVent)];
            double sum = 0, area = 0;
            foreach (VentCells vent in lastVents)
            {
                area += vent.Area;
                for (int k = 0; k < vent.Share.Length; k++)
                    sum += vent.Area * vent.Share[k] * a.Fraction[origin + vent.First + k];
            }

            return sum / area;
        }
    }

    public Zone<Real> Nozzle => NozzleGas(out _);

    /// <summary>The gas behind the nozzle plane, as one parcel, with its mean pressure.</summary>
    private Zone<Real> NozzleGas(out double pressure)
    {
        TubeArrays a = Tube.Cells;
        var sum = default(Parcel);
        double volume = 0;
        int from = origin + NozzleCell;
        for (int i = from; i < a.End; i++)
        {
            double v = Tube.VolumeOf(i);
            volume += v;
            sum.Add(v * a.Products[i], v * (a.Density[i] - a.Products[i]), v * (a.Energy[i] - 0.5 * a.Momentum[i] * a.Velocity[i]));
        }

        Zone<Real> zone = sum.Zone(p);
        pressure = zone.PressureVolume / volume;
        return zone;
    }

    /// <summary>Index of the cell at a station of the tube as it was before the joint slid.</summary>
    public int CellAt(double station) => Math.Min(origin + (int)(station / Tube.CellLength), Tube.Cells.End - 1);

    /// <summary>Middle of a cell, from the booster's end as it was before the joint slid [m].</summary>
    public double StationOf(int i)
    {
        double right = (i - origin + 1) * Tube.CellLength;
        return right - 0.5 * Tube.LengthOf(i);
    }

    public GapTotals Totals
    {
        get
        {
            TubeArrays a = Tube.Cells;
            double mass = 0, energy = 0;
            for (int i = a.First; i < a.End; i++)
            {
                double v = Tube.VolumeOf(i);
                mass += v * a.Density[i];
                energy += v * a.Energy[i];
            }

            var sum = new GapTotals(Tube.FirstArea * mass, Tube.FirstArea * energy);
            foreach (ChamberVessel chamber in chambers)
                sum += chamber.Totals;
            return jackets is null ? sum : sum + jackets.Totals;
        }
    }
}
