using Staging.Core.Discharge;
using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Chamber, tube, vents, dead end and joint of one gap, advanced together: flow along the tube in one step, everything
/// else in a source step of equal length that straddles it (G. Strang, SIAM J. Numer. Anal. 5 (1968) 506: second
/// order).
/// </summary>
internal sealed partial class OneDimensionalGap : IGapView
{
    private readonly GapParameters p;
    private readonly double courant;
    private readonly ChamberVessel[] chambers;
    private readonly ThrownPieces[] pieces;
    private readonly ReservoirEnd booster;

    /// <summary>The outside, seen through the annulus between bodies that have parted.</summary>
    private readonly ChamberOpening annulus;
    private readonly FeedHistory? feed;
    private readonly VentCells[] vents;
    private readonly VentCells[] lastVents;
    private readonly JacketNetwork? jackets;
    private readonly DeadEndMixing? deadEnd;
    private readonly TapeFilm? tape;
    private readonly int origin;
    private double lengthened;
    private double sourceTime;

    public OneDimensionalGap(GapParameters p, GapModel.OneDimensional model, double length, double reach)
    {
        this.p = p;
        courant = model.CourantNumber;

        // The recess behind the nozzle plane is taken as a piece of tube of its volume.
        double recess = p.DeadEndVolume - (p.Profile.VolumeTo(length) - p.Profile.VolumeTo(length - p.DeadEndDepth));
        double whole = length + recess / p.Profile.AreaBelow(length);
        int cells = model.CellsOver(whole / p.Profile.NarrowestBore);
        double dx = whole / cells;
        double firstArea = p.Profile.IsUniform ? p.Profile.FirstArea : p.Profile.VolumeTo(dx) / dx;
        double stretch = p.Engagement * p.JointArea / firstArea;
        int room = (int)(stretch / dx) + 3;
        Tube = new TubeFlow(cells, dx, p.Products, p.Air, room, bore: TubeBore.Of(p.Profile, cells, dx, room)) { FirstArea = firstArea };
        origin = Tube.Cells.First;
        NozzleCell = Math.Min((int)Math.Round(length / dx), cells - 1);
        double rho = p.OutsidePressure / (p.Air.R * p.OutsideTemperature);
        for (int i = 0; i < cells; i++)
            Tube.Fill(i, rho, 0, p.OutsidePressure, 0);
        Tube.Look();

        chambers = [.. p.Chambers.Select(c => new ChamberVessel(c, p))];
        pieces = [.. p.Chambers.Where(c => c.Pieces is not null).Select(c => new ThrownPieces(c, p, Tube, origin))];
        annulus = new ChamberOpening(p.Law) { Chamber = new OrificeSide(p.OutsidePressure, p.OutsideTemperature, p.Air) };
        booster = new ReservoirEnd(Tube.FirstArea, [.. chambers.Select(c => c.Mouth), annulus]);
        feed = p.Feed is { } table ? new FeedHistory(table, p.Products.Cp) : null;
        Tube.Left = booster;
        VentCells[] all = [.. p.Vents.Select(v => new VentCells(v, v.Station >= p.LastVent, p.LastStirring, dx, cells))];
        vents = [.. all.Where(v => v.Jacket < 0)];
        jackets = p.Jackets.Length > 0 ? new JacketNetwork(p, Tube, origin, all.Where(v => v.Jacket >= 0)) : null;
        lastVents = [.. all.Where(v => v.IsLast)];
        if (lastVents.Length > 0)
            deadEnd = new DeadEndMixing(p, Tube, length, NozzleCell, reach, lastVents);
        tape = p.Film is { } film ? new TapeFilm(film) : null;
    }

    public TubeFlow Tube { get; }

    /// <summary>First cell behind the nozzle plane, counted from the tube's original left end.</summary>
    public int NozzleCell { get; }

    public double Time { get; private set; }

    /// <summary>Length of the last step [s].</summary>
    public double LastStep { get; private set; }

    /// <summary>Travel of the joint [m] and its speed [m/s].</summary>
    public double JointTravel { get; private set; }

    public double SlideSpeed { get; private set; }

    /// <summary>Mass and energy that the source has given.</summary>
    public GapTotals Given { get; private set; }

    /// <summary>When the last source ends [s]; infinite while that is not known.</summary>
    public double SourceEnd
    {
        get
        {
            double end = p.KnownSourceEnd;
            foreach (ChamberVessel chamber in chambers)
                end = Math.Max(end, chamber.BurntAt);
            foreach (ThrownPieces thrown in pieces)
                end = Math.Max(end, thrown.BurntAt);
            return end;
        }
    }

    /// <summary>When pieces first came to the nozzle plane, still burning [s]; infinite while none have.</summary>
    public double PiecesAtNozzle
    {
        get
        {
            double first = double.PositiveInfinity;
            foreach (ThrownPieces thrown in pieces)
                first = Math.Min(first, thrown.AtNozzleAt);
            return first;
        }
    }

    /// <summary>Mass and energy that have left: through vents and nozzle, as wall heat, as work on the joint.</summary>
    public GapTotals Left { get; private set; }

    /// <summary>
    /// Takes one step, not past a time; acceleration is that of the joint while it moves. Returns false when no step
    /// could be taken.
    /// </summary>
    public bool Step(double until, JointPhase joint, double acceleration)
    {
        double dt = Math.Min(Tube.LongestStep(courant), LongestChamberStep());
        double left = until - Time;
        dt = dt >= left ? left : Math.Min(dt, 0.5 * left);

        SourcesTo(Time + 0.5 * dt);
        if (!Tube.Look().AllPositive)
            return false;
        double speed = joint == JointPhase.Held ? 0 : SlideSpeed + 0.5 * dt * acceleration;
        if (joint == JointPhase.Slides)
            speed = Math.Max(0, speed);
        double receding = joint == JointPhase.Slides ? speed : 0;
        booster.Recede(receding * p.JointArea / Tube.FirstArea);
        Open(dt);
        FeedOver(dt);
        double taken = Tube.Step(dt);
        if (taken == 0)
            return false;

        double area = Tube.FirstArea * taken;
        foreach (ChamberVessel chamber in chambers)
            chamber.Give(area);
        Left += new GapTotals(-area * annulus.Mass, area * (booster.EnergyThrough - booster.Last.Energy - annulus.Energy));
        if (feed is not null)
        {
            var fed = new GapTotals(area * booster.Feed.Mass, area * booster.Feed.Mass * booster.Feed.Enthalpy);
            feed.Give(fed);
            Given += fed;
        }

        if (pieces.Length > 0)
            KeepMixtures();
        JointTravel += taken * speed;
        lengthened += taken * receding;
        SlideSpeed = joint == JointPhase.Held ? 0 : SlideSpeed + taken * acceleration;
        LastStep = taken;
        Time = taken == left ? until : Time + taken;
        return true;
    }

    /// <summary>Brings the joint to rest.</summary>
    public void Rest() => SlideSpeed = 0;

    /// <summary>
    /// Time in which sound in the bore would sweep the smallest chamber's volume, for the Courant number [s].
    /// </summary>
    private double LongestChamberStep()
    {
        double min = double.PositiveInfinity;
        foreach (ChamberVessel chamber in chambers)
            min = Math.Min(min, courant * chamber.SweepTime(Tube.FirstArea));
        return min;
    }

    /// <summary>
    /// Sets the openings to their size in the middle of a step, and the chambers to what half of it at the last step's
    /// flow leaves of them.
    /// </summary>
    private void Open(double step)
    {
        foreach (ChamberVessel chamber in chambers)
            chamber.Open(Time, step, Tube.FirstArea);
        double open = JointMechanics.Annulus<Real>(p, JointTravel);
        annulus.Opening = new OrificeSize(open, Math.Sqrt(4 * open / Math.PI), 0);
    }

    /// <summary>Sets the known flow to its mean over a step.</summary>
    private void FeedOver(double dt)
    {
        if (feed is null)
            return;
        GapTotals owed = feed.Owed(Time + dt);
        booster.Feed = new EndFeed(owed.Mass / (Tube.FirstArea * dt), owed.Mass > 0 ? owed.Energy / owed.Mass : 0, p.Products);
    }
}
