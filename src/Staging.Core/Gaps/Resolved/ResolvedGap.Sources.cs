using Staging.Core.Discharge;

namespace Staging.Core.Gaps.Resolved;

/// <summary>The source step: fragments, nozzle, vents, dead end, walls.</summary>
internal sealed partial class ResolvedGap
{
    private void Sources(double time)
    {
        if (motor is not null)
            Vessel(motor, time);
        else
            Feed(p.Feed!, time);
        sourceTime += time;

        double volume = 0;
        foreach (ResolvedVent vent in vents)
        {
            double passed = 0;
            for (int k = 0; k < vent.Share.Length; k++)
                passed += VentCell(vent.Over(k), vent.Behind, origin + vent.First + k, time);
            volume += vent.Stirring * Math.Max(0, passed);
        }

        StreamVolumeFlow = time > 0 ? volume / time : 0;
        if (deadEnd is not null && StreamVolumeFlow > 0)
        {
            Tube.Look();
            deadEnd.Stir(Tube.Cells, origin, StreamVolumeFlow, time);
        }

        Walls(time);
    }

    /// <summary>The chamber: its fragments, and its nozzle to the rear.</summary>
    private void Vessel(ChamberParameters c, double time)
    {
        double m = c.Fragments >= 0 ? BurnPlates(c, time) : Pulse(c, time);
        double energy = m * p.Products.Cp * c.FlameTemperature;
        chamber.Add(m, 0, energy);
        Given = new GapTotals(Given.Mass + m, Given.Energy + energy);
        if (!(c.Nozzle.Area > 0))
            return;
        Passed passed = VesselVent.Pass(ConstantCoefficientLaw.Ideal, c.Nozzle, ref chamber, c.Volume, time, p.OutsidePressure, p);
        Left = new GapTotals(Left.Mass + passed.Mass, Left.Energy + passed.Enthalpy);
    }

    /// <summary>Mass that a half-sine pulse burns in a time [kg].</summary>
    private double Pulse(ChamberParameters c, double time)
    {
        double tau = c.FragmentBurnTime, from = Math.Min(sourceTime, tau), to = Math.Min(sourceTime + time, tau);
        return 0.5 * c.FragmentMass * (Math.Cos(Math.PI * from / tau) - Math.Cos(Math.PI * to / tau));
    }

    /// <summary>Mass that plates burn in a time [kg], at the chamber pressure of the middle of it.</summary>
    private double BurnPlates(ChamberParameters c, double time)
    {
        if (!(unburnt > 0))
            return 0;
        Parcel half = chamber;
        double ahead = Math.Min(0.5 * time * Rate(half), unburnt) * c.FragmentMass;
        half.Add(ahead, 0, ahead * p.Products.Cp * c.FlameTemperature);
        double rate = Rate(half), share = time * rate;
        if (share >= unburnt)
        {
            share = unburnt;
            SourceEnd = sourceTime + unburnt / rate;
        }

        unburnt -= share;
        return c.FragmentMass * share;

        double Rate(in Parcel at) =>
            c.ShareRate * Math.Pow(at.Zone(p).PressureVolume / c.Volume / BurnRateLaw.ReferencePressure_Pa, c.PressureExponent);
    }

    /// <summary>A known flow, into the first cell and without momentum. Simpson's rule on each piece is exact: flow and temperature are straight lines.</summary>
    private void Feed(FeedParameters feed, double time)
    {
        double mass = 0, energy = 0;
        ReadOnlySpan<double> times = feed.Times;
        for (int piece = 0; piece + 1 < times.Length; piece++)
        {
            double from = Math.Max(sourceTime, times[piece]), to = Math.Min(sourceTime + time, times[piece + 1]);
            if (!(to > from))
                continue;
            (double m0, double T0) = feed.At(piece, from);
            (double m1, double T1) = feed.At(piece, 0.5 * (from + to));
            (double m2, double T2) = feed.At(piece, to);
            mass += (to - from) / 6 * (m0 + 4 * m1 + m2);
            energy += (to - from) / 6 * p.Products.Cp * (m0 * T0 + 4 * m1 * T1 + m2 * T2);
        }

        TubeArrays a = Tube.Cells;
        int i = a.First;
        double perVolume = 1 / (p.Profile.FirstArea * Tube.VolumeOf(i));
        a.Density[i] += perVolume * mass;
        a.Products[i] += perVolume * mass;
        a.Energy[i] += perVolume * energy;
        Given = new GapTotals(Given.Mass + mass, Given.Energy + energy);
    }

    /// <summary>Lets one cell pass gas through the holes over it; what leaves keeps its speed along the tube. Returns the volume that left [m3].</summary>
    private double VentCell(in OrificeSize size, double behind, int i, double time)
    {
        TubeArrays a = Tube.Cells;
        double volume = p.Profile.FirstArea * Tube.VolumeOf(i), u = a.Momentum[i] / a.Density[i];
        var parcel = new Parcel(
            volume * a.Products[i], volume * (a.Density[i] - a.Products[i]), volume * (a.Energy[i] - 0.5 * a.Momentum[i] * u));
        Passed passed = VesselVent.Pass(p.Law, size, ref parcel, volume, time, behind, p);
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
        double lost = Tube.LoseToWall(time, p.Profile.FirstBore, p.WallHeatTransfer, p.OutsideTemperature);

        // The end wall, as the wall of the dead end in the displacement model.
        int last = a.End - 1;
        double rhoCv = (a.Density[last] - a.Products[last]) * p.Air.Cv + a.Products[last] * p.Products.Cv;
        double T = (a.Energy[last] - 0.5 * a.Momentum[last] * a.Momentum[last] / a.Density[last]) / rhoCv;
        double x = time * p.WallHeatTransfer / (rhoCv * Tube.CellLength);
        double loss = rhoCv * (T - p.OutsideTemperature) * (1 - 1 / (1 + x + 0.5 * x * x));
        a.Energy[last] -= loss;
        Left = new GapTotals(Left.Mass, Left.Energy + (lost + loss * Tube.CellLength * Tube.RelativeArea(last)) * p.Profile.FirstArea);
    }
}
