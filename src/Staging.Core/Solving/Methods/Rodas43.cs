namespace Staging.Core.Solving;

/// <summary>
/// Rosenbrock method of order 4(3) for stiff problems: six stages, stiffly accurate, L-stable, with a dense output of
/// order three. E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed. (1996), section IV.7,
/// method RODAS. The coefficients were recalled, and are checked against the order conditions to round-off by the
/// tests.
/// </summary>
/// <remarks>
/// Stage i solves (I/(gamma h) - J) u(i) = f(t + alpha(i) h, y + sum a(i,j) u(j)) + sum c(i,j) u(j)/h + d(i) h df/dt,
/// equation (7.25) there: one factorised matrix a step, no iteration. The term with df/dt is what keeps the order where
/// the right-hand side depends on time; d(2) and d(4) are negative. Jacobian and df/dt are taken from the system where
/// it has them, otherwise from <see cref="FiniteDifferences"/>.
/// </remarks>
internal struct Rodas43 : IOneStepMethod
{
    private const int Stages = 6;

    private double[] scales;
    private double[] slope;
    private double[] timeSlope;
    private double[] jacobian;
    private double[] matrix;
    private double[] weights;
    private int[] pivots;
    private double[] stages;
    private double[] moved;
    private double[] movedSlope;
    private int n;
    private int integrals;
    private bool slopeKnown;
    private bool linearised;

    /// <inheritdoc/>
    public static int Order => 4;

    /// <inheritdoc/>
    public static int DenseDegree => 3;

    /// <summary>
    /// Less than for an explicit method, whose edge of stability is not there to be smoothed: on the stiff problem of
    /// Kaps 0.2 takes less than two thirds of the attempted steps of 0.4 for the same error, measured here at the
    /// default tolerances.
    /// </summary>
    public static double ErrorMemory => 0.2;

    /// <summary>None: L-stable.</summary>
    public static double EdgeOfStability => double.PositiveInfinity;

    /// <summary>The diagonal coefficient gamma.</summary>
    public static double Gamma => 0.25;

    /// <summary>Nodes alpha.</summary>
    public static ReadOnlySpan<double> Nodes => [0, 0.386, 0.21, 0.63, 1, 1];

    /// <summary>Weights d of df/dt: the row sums of the matrix gamma.</summary>
    public static ReadOnlySpan<double> TimeWeights => [0.25, -0.1043, 0.1035, -0.0362, 0, 0];

    /// <summary>
    /// Coefficients a of the stage states, row by row below the diagonal. The last row, with a final one, gives the new
    /// state.
    /// </summary>
    public static ReadOnlySpan<double> StateWeights =>
    [
        1.544,
        0.9466785280815826, 0.2557011698983284,
        3.314825187068521, 2.896124015972201, 0.9986419139977817,
        1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950,
        1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1,
    ];

    /// <summary>Coefficients c of the earlier stages on the right, row by row below the diagonal.</summary>
    public static ReadOnlySpan<double> StageWeights =>
    [
        -5.6688,
        -2.430093356833875, -0.2063599157091915,
        -0.1073529058151375, -9.594562251023355, -20.47028614809616,
        7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160,
        8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054,
    ];

    /// <summary>
    /// Dense output: y(t + s h) = (1 - s) y + s yNew + s (1 - s) (k1 + s k2), with k1 and k2 these two rows times the
    /// stages.
    /// </summary>
    public static ReadOnlySpan<double> DenseWeights =>
    [
        10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662, 0,
        -0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872, 0,
    ];

    /// <inheritdoc/>
    public readonly ReadOnlySpan<double> StartSlope => slope;

    /// <inheritdoc/>
    public void Allocate(ReadOnlySpan<double> scales)
    {
        n = scales.Length;
        this.scales = scales.ToArray();
        slope = new double[n];
        timeSlope = new double[n];
        jacobian = new double[n * n];
        matrix = new double[n * n];
        weights = new double[n];
        pivots = new int[n];
        stages = new double[Stages * n];
        moved = new double[n];
        movedSlope = new double[n];
    }

    /// <inheritdoc/>
    public void Begin<TSystem>(ref TSystem system, double t, ReadOnlySpan<double> y, ref SolverWork work)
        where TSystem : IOdeSystem
    {
        system.Derivative(t, y, slope);
        work = work with { DerivativeCalls = work.DerivativeCalls + 1 };
        slopeKnown = true;
        linearised = false;
    }

    /// <inheritdoc/>
    public void Step<TSystem>(
        ref TSystem system, double t, double h, ReadOnlySpan<double> y, Span<double> yNew, Span<double> error, ref SolverWork work)
        where TSystem : IOdeSystem
    {
        if (!linearised)
            Linearise(ref system, t, h, y, ref work);
        integrals = TSystem.HasJacobian ? system.Integrals : 0;
        if (!FactoriseFor(h, ref work))
        {
            yNew.Fill(double.NaN);
            error.Fill(double.NaN);
            return;
        }

        int row = 0;
        for (int stage = 0; stage < Stages; stage++)
        {
            Span<double> u = stages.AsSpan(stage * n, n);
            ReadOnlySpan<double> f = slope;
            if (stage > 0)
            {
                WeightedRows.AddTo(y, 1, StateWeights.Slice(row, stage), stages, yNew);
                system.Derivative(t + Nodes[stage] * h, yNew, movedSlope);
                WeightedRows.AddTo(movedSlope, 1 / h, StageWeights.Slice(row, stage), stages, moved);
                f = moved;
            }

            double d = TimeWeights[stage] * h;
            for (int i = 0; i < u.Length; i++)
                u[i] = f[i] + d * timeSlope[i];
            SolveFor(h, u);
            row += stage;
        }

        // Stiffly accurate: the last stage is both the correction to the last stage state and the error of what it
        // corrects.
        Span<double> last = stages.AsSpan((Stages - 1) * n, n);
        for (int i = 0; i < n; i++)
        {
            yNew[i] += last[i];
            error[i] = last[i];
        }

        work = work with { DerivativeCalls = work.DerivativeCalls + Stages - 1 };
    }

    /// <inheritdoc/>
    public readonly void Dense(double h, ReadOnlySpan<double> y, ReadOnlySpan<double> yNew, Span<double> c)
    {
        Span<double> c1 = c[..n], k1 = c.Slice(n, n), k2 = c.Slice(2 * n, n);
        WeightedRows.Write(1, DenseWeights[..Stages], stages, k1);
        WeightedRows.Write(1, DenseWeights[Stages..], stages, k2);
        for (int i = 0; i < c1.Length; i++)
        {
            c1[i] = yNew[i] - y[i] + k1[i];
            k1[i] = k2[i] - k1[i];
            k2[i] = -k2[i];
        }
    }

    /// <inheritdoc/>
    public readonly double RateAtEnd(double h, ErrorScale scale, ReadOnlySpan<double> yNew, Span<double> work) => 0;

    /// <inheritdoc/>
    public void Advance()
    {
        slopeKnown = false;
        linearised = false;
    }

    private void Linearise<TSystem>(ref TSystem system, double t, double h, ReadOnlySpan<double> y, ref SolverWork work)
        where TSystem : IOdeSystem
    {
        if (!slopeKnown)
        {
            system.Derivative(t, y, slope);
            work = work with { DerivativeCalls = work.DerivativeCalls + 1 };
        }

        if (TSystem.HasJacobian)
            system.Jacobian(t, y, slope, jacobian, timeSlope);
        else
        {
            FiniteDifferences.ByState(ref system, t, y, slope, scales, moved, movedSlope, jacobian, ref work);
            FiniteDifferences.ByTime(ref system, t, h, y, slope, timeSlope, ref work);
        }

        work = work with { JacobianCalls = work.JacobianCalls + 1 };
        slopeKnown = true;
        linearised = true;
    }

    /// <summary>Factorises I/(gamma h) - J for the states behind the integrals.</summary>
    private readonly bool FactoriseFor(double h, ref SolverWork work)
    {
        double diagonal = 1 / (Gamma * h);
        int m = n - integrals;
        for (int i = 0; i < m; i++)
        {
            Span<double> row = matrix.AsSpan(i * m, m);
            ReadOnlySpan<double> derivatives = jacobian.AsSpan((integrals + i) * n + integrals, m);
            for (int j = 0; j < row.Length; j++)
                row[j] = -derivatives[j];
            row[i] += diagonal;
            weights[i] = 1 / scales[integrals + i];
        }

        work = work with { Factorisations = work.Factorisations + 1 };
        return LuFactors.Factorise(matrix.AsSpan(0, m * m), weights.AsSpan(0, m), pivots.AsSpan(0, m));
    }

    /// <summary>
    /// Solves for one stage: first for what is coupled, then each integral from it, u(i) = gamma h (b(i) + J(i) u).
    /// </summary>
    private readonly void SolveFor(double h, Span<double> u)
    {
        int m = n - integrals;
        Span<double> coupled = u[integrals..];
        LuFactors.Solve(matrix.AsSpan(0, m * m), pivots.AsSpan(0, m), coupled);
        for (int i = 0; i < integrals; i++)
        {
            double sum = u[i];
            ReadOnlySpan<double> row = jacobian.AsSpan(i * n + integrals, m);
            for (int j = 0; j < row.Length; j++)
                sum += row[j] * coupled[j];
            u[i] = Gamma * h * sum;
        }
    }
}
