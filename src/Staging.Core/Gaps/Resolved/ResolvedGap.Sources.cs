using Staging.Core.Discharge;

namespace Staging.Core.Gaps.Resolved;

/// <summary>The source step: fragments, nozzle, vents, dead end, walls.</summary>
internal sealed partial class ResolvedGap
{
    private void Sources(double time)
    {
        Burn(time);
        if (p.Nozzle.Area > 0)
        {
            Passed passed = VesselVent.Pass(ConstantCoefficientLaw.Ideal, p.Nozzle, ref chamber, p.ChamberVolume, time, p);
            Left = new GapTotals(Left.Mass + passed.Mass, Left.Energy + passed.Enthalpy);
        }

        double volume = 0;
        foreach (ResolvedVent vent in vents)
        {
            for (int k = 0; k < vent.Share.Length; k++)
            {
                double passed = VentCell(vent.Over(k), origin + vent.First + k, time);
                volume += vent.IsLast ? passed : 0;
            }
        }

        StreamVolumeFlow = time > 0 ? volume / time : 0;
        if (deadEnd is not null && StreamVolumeFlow > 0)
        {
            Tube.Look();
            deadEnd.Stir(Tube.Cells, origin, StreamVolumeFlow / p.BoreArea, time);
        }

        Walls(time);
    }

    private void Burn(double time)
    {
        double tau = p.FragmentBurnTime, from = Math.Min(sourceTime, tau), to = Math.Min(sourceTime + time, tau);
        sourceTime += time;
        double m = 0.5 * p.FragmentMass * (Math.Cos(Math.PI * from / tau) - Math.Cos(Math.PI * to / tau));
        chamber.Add(m, 0, m * p.Products.Cp * p.FlameTemperature);
        Burnt += m;
    }

    /// <summary>Lets one cell pass gas through the holes over it; what leaves keeps its speed along the tube. Returns the volume that left [m3].</summary>
    private double VentCell(in OrificeSize size, int i, double time)
    {
        TubeArrays a = Tube.Cells;
        double volume = p.BoreArea * Tube.LengthOf(i), u = a.Momentum[i] / a.Density[i];
        var parcel = new Parcel(
            volume * a.Products[i], volume * (a.Density[i] - a.Products[i]), volume * (a.Energy[i] - 0.5 * a.Momentum[i] * u));
        Passed passed = VesselVent.Pass(p.Law, size, ref parcel, volume, time, p);
        double carried = Math.Max(passed.Mass, 0), energy = passed.Enthalpy + 0.5 * carried * u * u;
        a.Density[i] = parcel.Mass / volume;
        a.Products[i] = parcel.Products / volume;
        a.Momentum[i] -= carried * u / volume;
        a.Energy[i] -= energy / volume;
        Left = new GapTotals(Left.Mass + passed.Mass, Left.Energy + energy);
        return passed.Volume;
    }

    private void Walls(double time)
    {
        TubeArrays a = Tube.Cells;
        double lost = Tube.LoseToWall(time, p.Bore, p.WallHeatTransfer, p.OutsideTemperature);

        // The end wall, as the wall of the dead end in the displacement model.
        int last = a.End - 1;
        double rhoCv = (a.Density[last] - a.Products[last]) * p.Air.Cv + a.Products[last] * p.Products.Cv;
        double T = (a.Energy[last] - 0.5 * a.Momentum[last] * a.Momentum[last] / a.Density[last]) / rhoCv;
        double x = time * p.WallHeatTransfer / (rhoCv * Tube.CellLength);
        double loss = rhoCv * (T - p.OutsideTemperature) * (1 - 1 / (1 + x + 0.5 * x * x));
        a.Energy[last] -= loss;
        Left = new GapTotals(Left.Mass, Left.Energy + (lost + loss * Tube.CellLength) * p.BoreArea);
    }
}
