namespace Staging.Core.Solving;

/// <summary>
/// Explicit Runge-Kutta pair of order 5(4) with a free fourth-order dense output.
/// Ch. Tsitouras, "Runge-Kutta pairs of order 5(4) satisfying only the first column simplifying assumption",
/// Computers and Mathematics with Applications 62 (2011) 770-775, doi:10.1016/j.camwa.2011.06.002. The coefficients
/// were recalled, and are checked against the order conditions to round-off by the tests.
/// </summary>
internal struct Tsitouras54 : IOneStepMethod
{
    public static int Order => 5;

    /// <summary>Number of slopes a step; the last is the first of the next step.</summary>
    public static int Stages => 7;

    public static int DenseDegree => 4;

    /// <summary>
    /// Gustafsson's value for explicit methods: exponents 0.7/p and 0.4/p, which keep steps smooth at the edge of
    /// stability.
    /// </summary>
    public static double ErrorMemory => 0.4;

    /// <summary>Where the stability polynomial leaves [-1, 1], rounded down; a test computes it.</summary>
    public static double EdgeOfStability => 3.5;

    /// <summary>Nodes c.</summary>
    public static ReadOnlySpan<double> Nodes => [0, C2, C3, C4, C5, 1, 1];

    /// <summary>Matrix a, row by row below the diagonal; the last row holds the fifth-order weights b.</summary>
    public static ReadOnlySpan<double> Matrix =>
    [
        A21,
        A31, A32,
        A41, A42, A43,
        A51, A52, A53, A54,
        A61, A62, A63, A64, A65,
        A71, A72, A73, A74, A75, A76,
    ];

    /// <summary>Weights of the local error estimate.</summary>
    public static ReadOnlySpan<double> ErrorWeights => [E1, E2, E3, E4, E5, E6, E7];

    /// <summary>Dense output: four powers of the step fraction a stage.</summary>
    public static ReadOnlySpan<double> DenseWeights =>
    [
        1.0, -2.763706197274826, 2.9132554618219126, -1.0530884977290216,
        0.0, 0.13169999999999998, -0.2234, 0.1017,
        0.0, 3.9302962368947516, -5.941033872131505, 2.490627285651253,
        0.0, -12.411077166933676, 30.33818863028232, -16.548102889244902,
        0.0, 37.50931341651104, -88.1789048947664, 47.37952196281928,
        0.0, -27.896526289197286, 65.09189467479366, -34.87065786149661,
        0.0, 1.5, -4.0, 2.5,
    ];

    internal const double C2 = 0.161, C3 = 0.327, C4 = 0.9, C5 = 0.9800255409045097;
    internal const double A21 = 0.161;
    internal const double A31 = -0.008480655492356989, A32 = 0.335480655492357;
    internal const double A41 = 2.8971530571054935, A42 = -6.359448489975075, A43 = 4.3622954328695815;
    internal const double A51 = 5.325864828439257, A52 = -11.748883564062828, A53 = 7.4955393428898365, A54 = -0.09249506636175525;
    internal const double A61 = 5.86145544294642, A62 = -12.92096931784711, A63 = 8.159367898576159, A64 = -0.071584973281401,
        A65 = -0.028269050394068383;
    internal const double A71 = 0.09646076681806523, A72 = 0.01, A73 = 0.4798896504144996, A74 = 1.379008574103742,
        A75 = -3.290069515436081, A76 = 2.324710524099774;
    internal const double E1 = -0.00178001105222577714, E2 = -0.0008164344596567469, E3 = 0.007880878010261995,
        E4 = -0.1447110071732629, E5 = 0.5823571654525552, E6 = -0.45808210592918697, E7 = 1.0 / 66.0;

    private double[] slopes;
    private int n;

    /// <inheritdoc/>
    public readonly ReadOnlySpan<double> StartSlope => slopes.AsSpan(0, n);

    /// <inheritdoc/>
    public void Allocate(ReadOnlySpan<double> scales)
    {
        n = scales.Length;
        slopes = new double[Stages * n];
    }

    /// <inheritdoc/>
    public readonly void Begin<TSystem>(ref TSystem system, double t, ReadOnlySpan<double> y, ref SolverWork work)
        where TSystem : IOdeSystem
    {
        system.Derivative(t, y, slopes.AsSpan(0, n));
        work = work with { DerivativeCalls = work.DerivativeCalls + 1 };
    }

    /// <inheritdoc/>
    public readonly void Step<TSystem>(
        ref TSystem system, double t, double h, ReadOnlySpan<double> y, Span<double> yNew, Span<double> error, ref SolverWork work)
        where TSystem : IOdeSystem
    {
        Span<double> k = slopes;
        int row = 0;
        for (int stage = 1; stage < Stages; stage++)
        {
            WeightedRows.AddTo(y, h, Matrix.Slice(row, stage), k, yNew);
            system.Derivative(t + Nodes[stage] * h, yNew, k.Slice(stage * n, n));
            row += stage;
        }

        WeightedRows.Write(h, ErrorWeights, k, error);
        work = work with { DerivativeCalls = work.DerivativeCalls + Stages - 1 };
    }

    /// <inheritdoc/>
    public readonly void Dense(double h, ReadOnlySpan<double> y, ReadOnlySpan<double> yNew, Span<double> c)
    {
        ReadOnlySpan<double> r = DenseWeights;
        Span<double> weights = stackalloc double[Stages];
        for (int power = 0; power < DenseDegree; power++)
        {
            for (int stage = 0; stage < Stages; stage++)
                weights[stage] = r[DenseDegree * stage + power];
            WeightedRows.Write(h, weights, slopes, c.Slice(power * n, n));
        }
    }

    /// <inheritdoc/>
    /// <remarks>
    /// The last two slopes are both taken at the end, of states that differ by what the fast parts of the solution do
    /// (E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed., 1996, section IV.2, "Stiffness
    /// detection").
    /// </remarks>
    public readonly double RateAtEnd(double h, ErrorScale scale, ReadOnlySpan<double> yNew, Span<double> work)
    {
        ReadOnlySpan<double> lastButOne = slopes.AsSpan((Stages - 2) * n, n), last = slopes.AsSpan((Stages - 1) * n, n);
        WeightedRows.Write(h, [A71 - A61, A72 - A62, A73 - A63, A74 - A64, A75 - A65, A76], slopes, work);
        return scale.Distance(last, lastButOne, yNew) / scale.Norm(work, yNew);
    }

    /// <summary>
    /// The slope at the end of the step is the slope at the start of the next: the last row moves to the first.
    /// </summary>
    public readonly void Advance() => slopes.AsSpan((Stages - 1) * n, n).CopyTo(slopes);
}
