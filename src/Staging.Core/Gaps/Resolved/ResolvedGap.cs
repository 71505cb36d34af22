using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace Staging.Core.Gaps.Resolved;

/// <summary>
/// Chamber, tube, vents, dead end and joint of one gap, advanced together: flow along the tube in one step, everything else in a source
/// step of equal length that straddles it (G. Strang, SIAM J. Numer. Anal. 5 (1968) 506: second order).
/// </summary>
internal sealed partial class ResolvedGap
{
    private readonly GapParameters p;
    private readonly double courant;
    private readonly ReservoirEnd booster;
    private readonly ResolvedVent[] vents;
    private readonly ResolvedVent[] lastVents;
    private readonly DeadEndMixing? deadEnd;
    private readonly int origin;
    private Parcel chamber;

    private double sourceTime;

    public ResolvedGap(GapParameters p, GapModel.Resolved model, double length, double reach)
    {
        this.p = p;
        courant = model.CourantNumber;
        int cells = model.Cells;

        // The recess behind the nozzle plane is taken as a piece of tube of its volume.
        double recess = p.DeadEndVolume - p.BoreArea * (length - p.LastVent);
        double dx = (length + recess / p.BoreArea) / cells;
        double stretch = p.Engagement * p.JointArea / p.BoreArea;
        Tube = new TubeFlow(cells, dx, p.Products, p.Air, room: (int)(stretch / dx) + 3);
        origin = Tube.Cells.First;
        NozzleCell = Math.Min((int)Math.Round(length / dx), cells - 1);
        double rho = p.OutsidePressure / (p.Air.R * p.OutsideTemperature);
        for (int i = 0; i < cells; i++)
            Tube.Fill(i, rho, 0, p.OutsidePressure, 0);
        Tube.Look();

        booster = new ReservoirEnd(p.OpeningLaw, p.BoreArea) { Opening = default };
        Tube.Left = booster;
        double mass = p.ChamberPressure * p.ChamberVolume / (p.Products.R * p.FlameTemperature);
        chamber = new Parcel(mass, 0, p.ChamberPressure * p.ChamberVolume / (p.Products.Gamma - 1));
        vents = [.. p.Vents.Select(v => new ResolvedVent(v, dx, cells))];
        lastVents = [.. vents.Where(v => v.IsLast)];
        deadEnd = lastVents.Length == 0 ? null : new DeadEndMixing(p, dx, cells, NozzleCell, reach, lastVents);
    }

    public TubeFlow Tube { get; }

    /// <summary>First cell behind the nozzle plane, counted from the tube's original left end.</summary>
    public int NozzleCell { get; }

    public double Time { get; private set; }

    /// <summary>Length of the last step [s].</summary>
    public double LastStep { get; private set; }

    /// <summary>Travel of the joint [m] and its speed [m/s].</summary>
    public double Slide { get; private set; }

    public double SlideSpeed { get; private set; }

    public double Burnt { get; private set; }

    /// <summary>Mass and energy that have left: through vents and nozzle, as wall heat, as work on the joint.</summary>
    public GapTotals Left { get; private set; }

    /// <summary>Volume that leaves through the last vents per second [m3/s].</summary>
    public double StreamVolumeFlow { get; private set; }

    /// <summary>Lengthening of the tube by the sliding joint, as bore length [m].</summary>
    public double Stretch => Slide * p.JointArea / p.BoreArea;

    public Zone Chamber => chamber.Zone(p);

    public double ChamberPressure => Chamber.PressureVolume / p.ChamberVolume;

    /// <summary>Mean pressure of the tube by volume: what pushes the joint [Pa].</summary>
    public double Pressure
    {
        get
        {
            TubeArrays a = Tube.Cells;
            double sum = (Tube.FirstLength - 1) * a.Pressure[a.First];
            for (int i = a.First; i < a.End; i++)
                sum += a.Pressure[i];
            return sum / (a.Count + Tube.FirstLength - 1);
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
            double sum = 0;
            foreach (ResolvedVent vent in lastVents)
            {
                for (int k = 0; k < vent.Share.Length; k++)
                    sum += vent.Share[k] * a.Fraction[origin + vent.First + k];
            }

            return sum / lastVents.Length;
        }
    }

    /// <summary>The gas behind the nozzle plane, as one parcel, with its mean pressure.</summary>
    public Zone Nozzle(out double pressure)
    {
        TubeArrays a = Tube.Cells;
        var sum = default(Parcel);
        int from = origin + NozzleCell;
        for (int i = from; i < a.End; i++)
            sum.Add(a.Products[i], a.Density[i] - a.Products[i], a.Energy[i] - 0.5 * a.Momentum[i] * a.Velocity[i]);
        Zone zone = sum.Zone(p);
        pressure = zone.PressureVolume / (a.End - from);
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
            double mass = (Tube.FirstLength - 1) * a.Density[a.First], energy = (Tube.FirstLength - 1) * a.Energy[a.First];
            for (int i = a.First; i < a.End; i++)
            {
                mass += a.Density[i];
                energy += a.Energy[i];
            }

            double volume = p.BoreArea * Tube.CellLength;
            return new GapTotals(chamber.Mass + volume * mass, chamber.Energy + volume * energy);
        }
    }

    /// <summary>Takes one step, not past a time; acceleration is that of the joint while it slides. Returns false when no step could be taken.</summary>
    public bool Step(double until, bool sliding, double acceleration)
    {
        Zone zone = Chamber;
        double sound = Math.Sqrt(zone.Gamma * zone.R * zone.Temperature);
        double dt = Math.Min(Tube.LongestStep(courant), courant * p.ChamberVolume / (p.BoreArea * sound));
        double left = until - Time;
        dt = dt >= left ? left : Math.Min(dt, 0.5 * left);

        Sources(0.5 * (LastStep + dt));
        Tube.Look();
        double speed = sliding ? Math.Max(0, SlideSpeed + 0.5 * dt * acceleration) : 0;
        booster.Recede(speed * p.JointArea / p.BoreArea);
        OpenTo(Time + 0.5 * dt, 0.5 * dt);
        double taken = Tube.Step(dt);
        if (taken == 0)
            return false;

        EndFlux flux = booster.Last;
        double area = p.BoreArea * taken;
        chamber.Add(-area * flux.Products, -area * (flux.Mass - flux.Products), -area * booster.EnergyFromChamber);
        Left = new GapTotals(Left.Mass, Left.Energy + area * (booster.EnergyFromChamber - flux.Energy));
        Slide += taken * speed;
        SlideSpeed = sliding ? SlideSpeed + taken * acceleration : 0;
        LastStep = taken;
        Time = taken == left ? until : Time + taken;
        return true;
    }

    /// <summary>Brings the joint to rest.</summary>
    public void Rest() => SlideSpeed = 0;

    /// <summary>Sets the opening to its size at a time, and the chamber to what it will be after a while at the last step's flow.</summary>
    private void OpenTo(double time, double ahead)
    {
        double grown = Math.Min(time / p.OpeningTime, 1);
        booster.Opening = new OrificeSize(p.Opening.Area * grown * grown, p.Opening.Diameter * grown, p.Opening.Thickness);
        Parcel half = chamber;
        double area = p.BoreArea * ahead;
        EndFlux flux = booster.Last;
        half.Add(-area * flux.Products, -area * (flux.Mass - flux.Products), -area * booster.EnergyFromChamber);
        Zone zone = half.Zone(p);
        booster.Chamber = new OrificeSide(zone.PressureVolume / p.ChamberVolume, zone.Temperature, new GasConstants(zone.R, zone.Gamma));
        booster.ChamberFraction = zone.ProductFraction;
    }
}
