using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// What every model tells of its gap. The grain is heated by the gas behind the nozzle plane, and by the jets of the
/// chambers where they come to it.
/// </summary>
internal sealed partial class OneDimensionalGap
{
    /// <inheritdoc/>
    /// <remarks>Now, whatever the time: the gas is known at no other.</remarks>
    public bool CoreReachesAt(double time)
    {
        var jet = new SourceJet(p, JointTravel);
        foreach (ChamberVessel chamber in chambers)
        {
            ChamberOpening mouth = chamber.Mouth;
            if (mouth.IsOpen && jet.CoreReaches(mouth.Opening.Diameter, mouth.Chamber.T, mouth.Chamber.Gas.R))
                return true;
        }

        return false;
    }

    /// <inheritdoc/>
    /// <remarks>Now, with the jets of the last step.</remarks>
    public GrainHeating HeatingAt(double time)
    {
        Zone<Real> nozzle = NozzleGas(out double pressure);
        var heating = new GrainHeating(nozzle, pressure, SpeedAtNozzle, p);
        var jet = new SourceJet(p, JointTravel);
        foreach (ChamberVessel chamber in chambers)
        {
            ChamberOpening mouth = chamber.Mouth;
            double diameter = mouth.Opening.Diameter;
            if (mouth.IsOpen && jet.Arrives(diameter))
                heating = heating.Or(jet.At(mouth.Mass * Tube.FirstArea, mouth.Opening.Area, diameter, mouth.Chamber.T,
                    mouth.Chamber.Gas.R, mouth.Fraction), p);
        }

        return heating;
    }

    /// <summary>Temperature of a cell [K], as the tube last looked at it.</summary>
    public double TemperatureAt(int i)
    {
        TubeArrays a = Tube.Cells;
        double Y = a.Fraction[i];
        return a.Pressure[i] / (a.Density[i] * (Y * p.Products.R + (1 - Y) * p.Air.R));
    }

    /// <summary>
    /// Where, seen from the last vent, the gas first is half products [m from the booster's end]; 0 when nowhere.
    /// </summary>
    public double Front
    {
        get
        {
            TubeArrays a = Tube.Cells;
            int i = CellAt(p.LastVent);
            if (a.Fraction[i] >= GapSystem.Reached)
                return p.LastVent + Stretch;
            while (i >= a.First && a.Fraction[i] < GapSystem.Reached)
                i--;
            if (i < a.First)
                return 0;
            double s = (a.Fraction[i] - GapSystem.Reached) / (a.Fraction[i] - a.Fraction[i + 1]);
            double x = StationOf(i) + s * (StationOf(i + 1) - StationOf(i));
            return Math.Min(x, p.LastVent) + Stretch;
        }
    }

    /// <summary>
    /// Temperature of the products in the tube, by mass [K]; that of the outside before there are any.
    /// </summary>
    public double HotTemperature
    {
        get
        {
            TubeArrays a = Tube.Cells;
            double mass = 0, sum = 0;
            for (int i = a.First; i < a.End; i++)
            {
                double products = Tube.VolumeOf(i) * a.Products[i];
                mass += products;
                sum += products * TemperatureAt(i);
            }

            return mass > 0 ? sum / mass : p.OutsideTemperature;
        }
    }

    /// <summary>Mass fraction of products where the products in the tube are, by mass [-].</summary>
    public double HotProducts
    {
        get
        {
            TubeArrays a = Tube.Cells;
            double mass = 0, sum = 0;
            for (int i = a.First; i < a.End; i++)
            {
                double products = Tube.VolumeOf(i) * a.Products[i];
                mass += products;
                sum += products * a.Fraction[i];
            }

            return mass > 0 ? sum / mass : 0;
        }
    }
}
