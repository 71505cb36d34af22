using Staging.Core.Discharge;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>The source step: fragments, pieces, nozzles, vents, jackets, dead end, tape, walls.</summary>
internal sealed partial class OneDimensionalGap
{
    /// <summary>
    /// Takes everything but the tube to a time [s]: the middle of the tube's next step, unless a shortened one has left
    /// it ahead of that.
    /// </summary>
    private void SourcesTo(double to)
    {
        double from = sourceTime, time = to - from;
        if (!(time > 0))
            return;
        foreach (ChamberVessel chamber in chambers)
        {
            Given += chamber.Burn(from, to);
            Left += chamber.Exhaust(from, to);
        }

        foreach (ThrownPieces thrown in pieces)
            Given += thrown.Burn(from, to);
        sourceTime = to;

        double volume = 0;
        foreach (VentCells vent in vents)
        {
            double passed = 0;
            for (int k = 0; k < vent.Share.Length; k++)
                passed += VentCell(vent.Over(k), vent.Behind, origin + vent.First + k, time);
            volume += vent.Stirring * Math.Max(0, passed);
        }

        if (jackets is not null)
        {
            Left += jackets.Pass(time, out double stirred);
            volume += stirred;
        }

        StreamVolumeFlow = volume / time;
        if (deadEnd is not null && StreamVolumeFlow > 0)
        {
            Tube.Look();
            Left += deadEnd.Stir(origin, StreamVolumeFlow, time);
        }

        tape?.Warm(time, TemperatureOf(Tube.Cells.First, out _));

        Walls(time);
    }

    /// <summary>
    /// Cuts products to between none and all of a cell. Beside a flame that moves through still air the carried
    /// fraction undershoots by some 1e-8; mass and energy of the cell stay as they are.
    /// </summary>
    private void KeepMixtures()
    {
        TubeArrays a = Tube.Cells;
        for (int i = a.First; i < a.End; i++)
        {
            a.Products[i] = Math.Clamp(a.Products[i], 0, a.Density[i]);
            a.Fraction[i] = Math.Clamp(a.Fraction[i], 0, 1);
        }
    }

    /// <summary>
    /// Lets one cell pass gas through the holes over it; what leaves keeps its speed along the tube. Returns the volume
    /// that left [m3].
    /// </summary>
    private double VentCell(in OrificeSize size, double behind, int i, double time)
    {
        TubeArrays a = Tube.Cells;
        double volume = Tube.FirstArea * Tube.VolumeOf(i), u = a.Momentum[i] / a.Density[i];
        var parcel = new Parcel(
            volume * a.Products[i], volume * (a.Density[i] - a.Products[i]), volume * (a.Energy[i] - 0.5 * a.Momentum[i] * u));
        Passed passed = VesselVent.Pass(p.Law, size, ref parcel, volume, time, behind, p);
        double carried = Math.Max(passed.Mass, 0), energy = passed.Enthalpy + 0.5 * carried * u * u;
        a.Density[i] = parcel.Mass / volume;
        a.Products[i] = parcel.Products / volume;
        a.Momentum[i] -= carried * u / volume;
        a.Energy[i] -= energy / volume;
        Left += new GapTotals(passed.Mass, energy);
        return passed.Volume;
    }

    private void Walls(double time)
    {
        TubeArrays a = Tube.Cells;
        double lost = Tube.LoseToWall(time, p.Profile.FirstBore, p.Walls);

        // The end wall, as the wall of the dead end in the lumped models.
        int last = a.End - 1;
        double T = TemperatureOf(last, out double rhoCv);
        double share = p.Walls.ShareLost(time, 1, rhoCv * Tube.CellLength, T, a.Products[last] / a.Density[last]);
        double loss = rhoCv * (T - p.OutsideTemperature) * share;
        a.Energy[last] -= loss;
        Left += new GapTotals(0, (lost + loss * Tube.CellLength * Tube.RelativeArea(last)) * Tube.FirstArea);
    }

    /// <summary>
    /// Temperature of a cell [K], and its heat capacity a unit of volume [J/(m3 K)], from what it holds now.
    /// </summary>
    private double TemperatureOf(int i, out double rhoCv)
    {
        TubeArrays a = Tube.Cells;
        rhoCv = (a.Density[i] - a.Products[i]) * p.Air.Cv + a.Products[i] * p.Products.Cv;
        return (a.Energy[i] - 0.5 * a.Momentum[i] * a.Momentum[i] / a.Density[i]) / rhoCv;
    }
}
