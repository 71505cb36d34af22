using System.Runtime.Intrinsics;
using Staging.Core.Solving;
using static Staging.Core.Solving.Tsitouras54;

namespace Staging.Core.Flight;

/// <summary>
/// One step of the Tsitouras pair for height and velocity: seven slopes of each, and the dense output they give.
/// </summary>
/// <remarks>
/// The coefficients are those of <see cref="Tsitouras54"/>; the slope of the height is the climb, velocity times
/// <see cref="Rise"/>.
/// </remarks>
internal struct FlightStep
{
    /// <summary>Accelerations evaluated by a step; the first is the last of the step before.</summary>
    public const int NewCalls = 6;

    private double c1, c2, c3, c4, c5, c6, c7, a2, a3, a4, a5, a6, a7;
    private double h1, h2, h3, h4, w1, w2, w3, w4;
    private bool dense;

    public double Time { get; private set; }

    /// <summary>Size of the step [s].</summary>
    public double H { get; private set; }

    public double Height0 { get; private set; }

    public double Velocity0 { get; private set; }

    /// <summary>Acceleration at the start [m/s2].</summary>
    public double A1 { get; private set; }

    /// <summary>Acceleration at the end [m/s2].</summary>
    public readonly double AEnd => a7;

    public double Rise { get; private set; }

    public double HeightEnd { get; private set; }

    public double VelocityEnd { get; private set; }

    public double HeightError { get; private set; }

    public double VelocityError { get; private set; }

    /// <summary>
    /// Largest |b_i(s)| of stages 2 to 7 of the dense output, s from 0 to 1 [-], rounded up; a test computes them.
    /// </summary>
    public const double B2 = 0.0125, B3 = 0.494, B4 = 1.38, B5 = 3.30, B6 = 2.33, B7 = 0.068;

    /// <summary>
    /// Bounds on the distance of height [m] and velocity [m/s] of the dense output from their start, anywhere on the
    /// step.
    /// </summary>
    public readonly (double Height, double Velocity) Reach()
    {
        double c = c1, a = A1;
        double dc = B2 * Math.Abs(c2 - c) + B3 * Math.Abs(c3 - c) + B4 * Math.Abs(c4 - c) + B5 * Math.Abs(c5 - c) + B6 * Math.Abs(c6 - c)
            + B7 * Math.Abs(c7 - c);
        double da = B2 * Math.Abs(a2 - a) + B3 * Math.Abs(a3 - a) + B4 * Math.Abs(a4 - a) + B5 * Math.Abs(a5 - a) + B6 * Math.Abs(a6 - a)
            + B7 * Math.Abs(a7 - a);
        return (H * (Math.Abs(c) + dc), H * (Math.Abs(a) + da));
    }

    /// <summary>
    /// Lowest and highest height [m] and velocity [m/s] that the dense output can take on the step: the ends of its
    /// Bernstein coefficients, whose hull holds the curve (G. Farin, Curves and Surfaces for Computer Aided Geometric
    /// Design, 5th ed., 2002, section 5.2).
    /// </summary>
    public (double LowestHeight, double HighestHeight, double Slowest, double Fastest) Hull()
    {
        PrepareDense();
        (double lowest, double highest) = Hull(Height0, h1, h2, h3, HeightEnd);
        (double slowest, double fastest) = Hull(Velocity0, w1, w2, w3, VelocityEnd);
        return (lowest, highest, slowest, fastest);
    }

    private static (double Low, double High) Hull(double c0, double c1, double c2, double c3, double end)
    {
        double b1 = c0 + c1 / 4, b2 = c0 + c1 / 2 + c2 / 6, b3 = c0 + 3 * c1 / 4 + c2 / 2 + c3 / 4;
        return (Math.Min(Math.Min(Math.Min(c0, b1), Math.Min(b2, b3)), end), Math.Max(Math.Max(Math.Max(c0, b1), Math.Max(b2, b3)), end));
    }

    /// <summary>Whether the step was taken by another method, and is known by its dense output alone.</summary>
    public bool IsDrawn { get; private init; }

    /// <summary>A step of another method, as its dense output of up to degree four tells it.</summary>
    public static FlightStep Of(in DenseStep drawn, ref TrajectorySystem system)
    {
        Span<double> c = stackalloc double[2 * DenseDegree];
        c.Clear();
        drawn.Coefficients.CopyTo(c);
        var step = new FlightStep { IsDrawn = true };
        step.Start(drawn.Start, drawn.Initial[0], drawn.Initial[1], ref system);
        (step.H, step.dense) = (drawn.Step, true);
        (step.h1, step.h2, step.h3, step.h4) = (c[0], c[2], c[4], c[6]);
        (step.w1, step.w2, step.w3, step.w4) = (c[1], c[3], c[5], c[7]);
        double end = drawn.Start + drawn.Step;
        (step.HeightEnd, step.VelocityEnd) = step.At(end);
        step.a7 = system.Acceleration(end, step.HeightEnd, step.VelocityEnd);
        return step;
    }

    /// <summary>Begins a segment.</summary>
    public void Start(double t, double h, double v, ref TrajectorySystem system)
    {
        (Time, Height0, Velocity0, Rise) = (t, h, v, system.Rise);
        (c1, A1) = (v * system.Rise, system.Acceleration(t, h, v));
    }

    /// <summary>Continues from the end of the step just taken.</summary>
    public void Continue(double t) => (Time, Height0, Velocity0, c1, A1) = (t, HeightEnd, VelocityEnd, c7, a7);

    /// <summary>Takes a step of a size [s] from the start.</summary>
    public void Advance(ref TrajectorySystem system, double dt)
    {
        double t = Time, h = Height0, v = Velocity0, rise = Rise, s1 = c1, a1 = A1;
        double u2 = (A21 * a1).Over(dt, v), s2 = u2 * rise;
        double b2 = system.Acceleration(t + C2 * dt, (A21 * s1).Over(dt, h), u2);
        double u3 = (A31 * a1).And(A32, b2).Over(dt, v), s3 = u3 * rise;
        double b3 = system.Acceleration(t + C3 * dt, (A31 * s1).And(A32, s2).Over(dt, h), u3);
        double u4 = (A41 * a1).And(A42, b2).And(A43, b3).Over(dt, v), s4 = u4 * rise;
        double b4 = system.Acceleration(t + C4 * dt, (A41 * s1).And(A42, s2).And(A43, s3).Over(dt, h), u4);
        double u5 = (A51 * a1).And(A52, b2).And(A53, b3).And(A54, b4).Over(dt, v), s5 = u5 * rise;
        double b5 = system.Acceleration(t + C5 * dt, (A51 * s1).And(A52, s2).And(A53, s3).And(A54, s4).Over(dt, h), u5);
        double u6 = (A61 * a1).And(A62, b2).And(A63, b3).And(A64, b4).And(A65, b5).Over(dt, v), s6 = u6 * rise;
        double b6 = system.Acceleration(t + dt, (A61 * s1).And(A62, s2).And(A63, s3).And(A64, s4).And(A65, s5).Over(dt, h), u6);
        double vEnd = (A71 * a1).And(A72, b2).And(A73, b3).And(A74, b4).And(A75, b5).And(A76, b6).Over(dt, v), s7 = vEnd * rise;
        double hEnd = (A71 * s1).And(A72, s2).And(A73, s3).And(A74, s4).And(A75, s5).And(A76, s6).Over(dt, h),
            b7 = system.Acceleration(t + dt, hEnd, vEnd);
        VelocityError = dt * (E1 * a1).And(E2, b2).And(E3, b3).And(E4, b4).And(E5, b5).And(E6, b6).And(E7, b7);
        HeightError = dt * (E1 * s1).And(E2, s2).And(E3, s3).And(E4, s4).And(E5, s5).And(E6, s6).And(E7, s7);
        (H, HeightEnd, VelocityEnd, dense) = (dt, hEnd, vEnd, false);
        (c2, c3, c4, c5, c6, c7) = (s2, s3, s4, s5, s6, s7);
        (a2, a3, a4, a5, a6, a7) = (b2, b3, b4, b5, b6, b7);
    }

    /// <summary>Height and velocity at a time within the step [s].</summary>
    public (double Height, double Velocity) At(double time)
    {
        PrepareDense();
        double s = (time - Time) / H;
        return (Height0 + s * (h1 + s * (h2 + s * (h3 + s * h4))), Velocity0 + s * (w1 + s * (w2 + s * (w3 + s * w4))));
    }

    /// <summary>Slopes of height and velocity on the dense output at a time within the step [s].</summary>
    public (double Height, double Velocity) SlopeAt(double time)
    {
        PrepareDense();
        double s = (time - Time) / H;
        return ((h1 + s * (2 * h2 + s * (3 * h3 + s * 4 * h4))) / H, (w1 + s * (2 * w2 + s * (3 * w3 + s * 4 * w4))) / H);
    }

    /// <summary>The dense output as the general form: four rows of height and velocity, lowest power first.</summary>
    public void CopyDense(Span<double> initial, Span<double> coefficients)
    {
        PrepareDense();
        (initial[0], initial[1]) = (Height0, Velocity0);
        (coefficients[0], coefficients[2], coefficients[4], coefficients[6]) = (h1, h2, h3, h4);
        (coefficients[1], coefficients[3], coefficients[5], coefficients[7]) = (w1, w2, w3, w4);
    }

    private void PrepareDense()
    {
        if (dense)
            return;
        dense = true;
        Vector256<double> height = H * (Powers(0) * c1).And(c2, Powers(1)).And(c3, Powers(2)).And(c4, Powers(3)).And(c5, Powers(4))
            .And(c6, Powers(5)).And(c7, Powers(6));
        Vector256<double> velocity = H * (Powers(0) * A1).And(a2, Powers(1)).And(a3, Powers(2)).And(a4, Powers(3)).And(a5, Powers(4))
            .And(a6, Powers(5)).And(a7, Powers(6));
        (h1, h2, h3, h4) = (height[0], height[1], height[2], height[3]);
        (w1, w2, w3, w4) = (velocity[0], velocity[1], velocity[2], velocity[3]);
    }

    /// <summary>What a stage adds to the four powers of the dense output.</summary>
    private static Vector256<double> Powers(int stage) => Vector256.Create(DenseWeights.Slice(4 * stage, 4));
}
