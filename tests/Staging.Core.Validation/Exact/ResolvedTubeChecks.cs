using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;
using static Staging.Core.Validation.GapCheck;

namespace Staging.Core.Validation.Exact;

/// <summary>The resolved tube on 400 cells against exact Riemann problems and shock reflection of the literature.</summary>
public class ResolvedTubeChecks
{
    private const int Cells = 400;

    private static readonly Provenance Toro = new()
    {
        Source = "Toro, Riemann Solvers and Numerical Methods for Fluid Dynamics, chapter 4, functions evaluated by bisection in 40-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance LiepmannRoshko = new()
    {
        Source = "Liepmann & Roshko, Elements of Gasdynamics (1957), sections 3.2-3.5, evaluated in 25-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Tolerance HalfPercent = Tolerance.Relative(0.005, "required of the one-dimensional model on 400 cells");

    /// <summary>
    /// Speed of the contact over the second half of the run, its place taken from what the scheme conserves: the mass of products between a station in the
    /// plateau behind it and the end of the tube, over the density of the plateau. Through that station products come at rho* u*, so the place moves with
    /// u* to round-off however much the contact is smeared. (The place where the mass fraction passes one half does not: in a smeared contact it lies off
    /// its middle by volume, towards the lighter gas by an amount that grows with the smear: 0.2 to 0.6 cells at the end of these runs.)
    /// The start of a run from a jump puts the contact off by a seventh of a cell at most, once.
    /// </summary>
    [Theory]
    [InlineData("Sod", 1.0, 1.0, 1.4, 287.05287, 0.125, 0.1, 0.2, 0.92745262004895)]
    [InlineData("two gases, gamma 1.25 and 1.4", 1.0, 1.0, 1.25, 287.05287, 0.125, 0.1, 0.2, 0.970387430773472)]
    [InlineData("hot gas 1 MPa into air", 2.08973216886736, 1e6, 1.25, 239.2651113, 1.22497814345127, 101325, 0.5e-3, 441.114973494909)]
    [InlineData("hot gas 300 kPa into air", 0.626919650660209, 3e5, 1.25, 239.2651113, 1.22497814345127, 101325, 0.5e-3, 197.249661228049)]
    public void Contact_speed(string name, double rhoL, double pL, double gammaL, double rL, double rhoR, double pR, double time, double expected)
    {
        FlowState left = new(rhoL, 0, pL, gammaL), right = new(rhoR, 0, pR, 1.4);
        RiemannSolution exact = RiemannProblem.Solve(left, right);
        TubeFlow tube = Tube(left, right, rL);
        double half = Run(tube, time / 2), atHalf = Place(tube, left, exact, half);
        double whole = half + Run(tube, time - half);
        double speed = (Place(tube, left, exact, whole) - atHalf) / (whole - half);
        Verify($"resolved tube, {name}: contact speed over the second half", "-", expected, speed, HalfPercent, Toro);
        Verify($"resolved tube, {name}: speed of the gas five cells either side of the contact", "-", expected, GasSpeed(tube), HalfPercent, Toro);
    }

    [Theory]
    [InlineData(1.4, 1.5, 5.42528735632)]
    [InlineData(1.4, 2, 15.0)]
    [InlineData(1.25, 1.5, 5.30216802168)]
    public void Reflected_shock(double gamma, double mach, double expected)
    {
        // A shock of the given Mach number is sent into gas at rest by setting the state behind it; it meets the closed right end.
        double p21 = NormalShock.PressureRatio(mach, gamma), a1 = Math.Sqrt(gamma);
        var behind = new FlowState(NormalShock.HugoniotDensityRatio(p21, gamma), NormalShock.GasSpeed(mach, gamma) * a1, p21, gamma);
        TubeFlow tube = Tube(behind, new FlowState(1, 0, 1, gamma), 287.05287);
        tube.Right = new ClosedEnd();
        Run(tube, 0.75 / (mach * a1));
        TubeArrays a = tube.Cells;
        Verify(
            $"resolved tube, gamma {gamma}, Ms {mach}: pressure at the closed end after reflection p5/p1", "-", expected, a.Pressure[a.End - 1],
            Tolerance.Relative(0.01, "required of the one-dimensional model on 400 cells"), LiepmannRoshko);
    }

    private static TubeFlow Tube(in FlowState left, in FlowState right, double leftR)
    {
        var tube = new TubeFlow(Cells, 1.0 / Cells, new GasConstants(leftR, left.Gamma), new GasConstants(287.05287, right.Gamma))
        {
            Left = new OpenEnd(),
            Right = new OpenEnd(),
        };
        for (int i = 0; i < Cells; i++)
        {
            FlowState s = i < Cells / 2 ? left : right;
            tube.Fill(i, s.Density, s.Velocity, s.Pressure, i < Cells / 2 ? 1 : 0);
        }

        tube.Look();
        return tube;
    }

    /// <summary>Runs at least for a time and returns the time run.</summary>
    private static double Run(TubeFlow tube, double time)
    {
        double t = 0;
        while (t < time)
            t += tube.Step(tube.LongestStep(0.8));
        return t;
    }

    /// <summary>Distance of the contact from the diaphragm by the mass of products beyond the middle of the plateau between fan and contact.</summary>
    private static double Place(TubeFlow tube, in FlowState left, in RiemannSolution exact, double time)
    {
        TubeArrays a = tube.Cells;
        double tail = exact.ContactSpeed - Math.Sqrt(left.Gamma * exact.StarPressure / exact.LeftStarDensity);
        int station = a.First + (int)Math.Round((0.5 + 0.5 * (tail + exact.ContactSpeed) * time) * Cells);
        double beyond = 0;
        for (int i = station; i < a.End; i++)
            beyond += a.Products[i] * tube.CellLength;
        return (station - a.First) * tube.CellLength - 0.5 + beyond / a.Density[station];
    }

    private static double GasSpeed(TubeFlow tube)
    {
        TubeArrays a = tube.Cells;
        int at = a.First;
        while (a.Fraction[at + 1] >= 0.5)
            at++;
        return 0.5 * (a.Velocity[at - 5] + a.Velocity[at + 5]);
    }
}
