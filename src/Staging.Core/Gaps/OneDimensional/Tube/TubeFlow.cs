using System.Runtime.Intrinsics;
using Staging.Core.Gases;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Quasi-one-dimensional compressible flow of two mixing perfect gases in a tube, by finite volumes: second order in
/// space and time, exactly conservative, positive. Allocates nothing in a step.
/// </summary>
/// <remarks>
/// A step that would leave a cell without density or pressure is taken back and repeated at half the length without
/// slopes; for that first-order step with Courant number up to one half positivity follows from that of the star
/// states.
/// </remarks>
internal sealed class TubeFlow
{
    /// <summary>Halvings after which a step is given up: it would be a millionth of what waves allow.</summary>
    private const int MaxHalvings = 20;

    private readonly ITubeSweep sweep;
    private readonly TubeBore? bore;

    /// <summary>A tube of equal cells, not yet filled.</summary>
    /// <param name="cells">Number of cells.</param>
    /// <param name="cellLength">Length of a cell [m].</param>
    /// <param name="products">One gas.</param>
    /// <param name="air">The other gas.</param>
    /// <param name="room">Cells that a receding left end may add.</param>
    /// <param name="lanes">Cells swept at once: 1, 4 or 8; 0 for what this processor does best. The result is the
    /// same.</param>
    /// <param name="bore">Cross-sections, or null for a tube of one bore.</param>
    public TubeFlow(int cells, double cellLength, in GasConstants products, in GasConstants air, int room = 0, int lanes = 0,
        TubeBore? bore = null)
    {
        Cells = new TubeArrays(cells, room);
        CellLength = cellLength;
        this.bore = bore;
        sweep = Sweep(products, air, lanes > 0 ? lanes : Vector512.IsHardwareAccelerated ? 8 : Vector256.IsHardwareAccelerated ? 4 : 1);
    }

    public TubeArrays Cells { get; }

    public double CellLength { get; }

    /// <summary>Cross-section of the first cell [m2]: what the cells hold is counted a unit of it.</summary>
    public double FirstArea { get; init; } = 1;

    /// <summary>
    /// Length of the first cell, in cells [-], 1 to 2: it grows while the left end recedes, and is cut in two.
    /// </summary>
    public double FirstLength { get; private set; } = 1;

    public TubeEnd Left { get; set; } = new ClosedEnd();

    public TubeEnd Right { get; set; } = new ClosedEnd();

    /// <summary>What the last look at the cells found.</summary>
    public TubeExtremes Extremes { get; private set; }

    /// <summary>Steps taken.</summary>
    public int Steps { get; private set; }

    /// <summary>Steps taken back because a cell would have lost its gas.</summary>
    public int Repeats { get; private set; }

    /// <summary>Cells advanced, over all steps, repeats included.</summary>
    public long CellSteps { get; private set; }

    /// <summary>Length of cell i [m].</summary>
    public double LengthOf(int i) => i == Cells.First ? FirstLength * CellLength : CellLength;

    /// <summary>Cross-section of cell i over that of the first [-].</summary>
    public double RelativeArea(int i) => bore is null ? 1 : bore.Relative[i];

    /// <summary>Volume of cell i, a unit of the first cell's cross-section [m].</summary>
    public double VolumeOf(int i) => RelativeArea(i) * LengthOf(i);

    /// <summary>Sets one cell, counted from the left from 0.</summary>
    public void Fill(int cell, double density, double velocity, double pressure, double fraction)
    {
        int i = Cells.First + cell;
        Cells.Density[i] = density;
        Cells.Momentum[i] = density * velocity;
        Cells.Energy[i] = pressure / sweep.GammaMinusOne(fraction) + 0.5 * density * velocity * velocity;
        Cells.Products[i] = density * fraction;
    }

    /// <summary>
    /// Looks at all cells: primitives and extremes. Needed after the cells were changed from outside.
    /// </summary>
    public TubeExtremes Look() => Extremes = sweep.Primitives(Cells);

    /// <summary>
    /// Friction and heat loss at the wall over a time; returns the heat lost, a unit of the first cell's cross-section
    /// [J/m2]. A bore [m] counts where the tube has one.
    /// </summary>
    public double LoseToWall(double time, double bore, in WallExchange walls)
    {
        double before = Cells.Energy[Cells.First];
        double lost = sweep.Walls(Cells, this.bore, time, bore, walls);
        return CellLength * (lost + (FirstLength - 1) * (before - Cells.Energy[Cells.First]));
    }

    /// <summary>Longest step for a Courant number [s].</summary>
    public double LongestStep(double courant) => courant * CellLength / Extremes.Fastest;

    /// <summary>
    /// Takes a step of at most dt and returns its length [s]; 0 when no step could be taken. The cells must have been
    /// looked at.
    /// </summary>
    public double Step(double dt)
    {
        bool uniform = false;
        for (int halving = 0; halving <= MaxHalvings; halving++)
        {
            Advance(dt, uniform);
            CellSteps += Cells.Count;
            if (Look().AllPositive)
            {
                Steps++;
                FirstLength -= Left.Speed * dt / CellLength;
                while (FirstLength >= 2)
                {
                    Cells.SplitFirst();
                    FirstLength--;
                    Look();
                }

                return dt;
            }

            Repeats++;
            Cells.Swap();
            Look();
            dt *= 0.5;
            uniform = true;
        }

        return 0;
    }

    private void Advance(double dt, bool uniform)
    {
        TubeArrays a = Cells;
        int first = a.First, last = a.End - 1;
        Ghosts(first, -1, Left);
        Ghosts(last, +1, Right);
        double k = dt / CellLength, h = uniform ? 0 : 0.5 * k;
        EndFlux left = Left.Flow(Inside(first, false, h)), right = Right.Flow(Inside(last, true, h));
        sweep.Advance(a, bore, k, uniform, left, right);
        if (FirstLength != 1 || Left.Speed != 0)
            Lengthen(first, k);
        a.Swap();
    }

    /// <summary>
    /// The first cell is longer than the others and grows: its content changes by what the others' rule says, its
    /// volume by the moving end.
    /// </summary>
    private void Lengthen(int i, double k)
    {
        double before = FirstLength, after = before - Left.Speed * k;
        Cells.NextDensity[i] = (before * Cells.Density[i] + (Cells.NextDensity[i] - Cells.Density[i])) / after;
        Cells.NextMomentum[i] = (before * Cells.Momentum[i] + (Cells.NextMomentum[i] - Cells.Momentum[i])) / after;
        Cells.NextEnergy[i] = (before * Cells.Energy[i] + (Cells.NextEnergy[i] - Cells.Energy[i])) / after;
        Cells.NextProducts[i] = (before * Cells.Products[i] + (Cells.NextProducts[i] - Cells.Products[i])) / after;
    }

    /// <summary>Two cells beyond an end, whose outward direction is -1 at the left and +1 at the right.</summary>
    private void Ghosts(int cell, int outward, TubeEnd end)
    {
        TubeArrays a = Cells;
        for (int k = 1; k <= 2; k++)
        {
            int ghost = cell + k * outward, image = end.Mirrors ? cell - (k - 1) * outward : cell;
            a.Density[ghost] = a.Density[image];
            a.Pressure[ghost] = a.Pressure[image];
            a.Fraction[ghost] = a.Fraction[image];
            a.Velocity[ghost] = end.Mirrors ? -2 * outward * end.Speed - a.Velocity[image] : a.Velocity[image];
        }
    }

    private EndState Inside(int cell, bool right, double h)
    {
        Primitive<Lane1> w = h > 0
            ? sweep.Face(Cells, cell, right, h)
            : new(new(Cells.Density[cell]), new(Cells.Velocity[cell]), new(Cells.Pressure[cell]), new(Cells.Fraction[cell]));
        return new EndState(w.r.Value, right ? -w.u.Value : w.u.Value, w.p.Value, w.Y.Value, 1 + sweep.GammaMinusOne(w.Y.Value));
    }

    private static ITubeSweep Sweep(in GasConstants products, in GasConstants air, int lanes)
    {
        bool oneGamma = products.Gamma == air.Gamma;
        return lanes switch
        {
            8 => oneGamma ? OneGamma<Lane8>(products, air) : TwoGammas<Lane8>(products, air),
            4 => oneGamma ? OneGamma<Lane4>(products, air) : TwoGammas<Lane4>(products, air),
            _ => oneGamma ? OneGamma<Lane1>(products, air) : TwoGammas<Lane1>(products, air),
        };
    }

    private static TubeSweep<L, OneGamma<L>, OneGamma<Lane1>> OneGamma<L>(in GasConstants products, in GasConstants air)
        where L : struct, ILane<L> => new(new OneGamma<L>(air.Gamma), new OneGamma<Lane1>(air.Gamma), products, air);

    private static TubeSweep<L, TwoGammas<L>, TwoGammas<Lane1>> TwoGammas<L>(in GasConstants products, in GasConstants air)
        where L : struct, ILane<L> => new(new TwoGammas<L>(products, air), new TwoGammas<Lane1>(products, air), products, air);
}
