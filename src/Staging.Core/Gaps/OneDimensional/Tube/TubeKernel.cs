using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// The passes over a tube: primitives, face values half a step ahead (MUSCL-Hancock with the slopes of
/// <see cref="SlopeLimiter{L}"/>), fluxes (<see cref="Hllc{L,G}"/>) and the conservative update.
/// </summary>
/// <remarks>
/// B. van Leer, J. Comput. Phys. 32 (1979) 101; E. F. Toro, Riemann Solvers and Numerical Methods for Fluid Dynamics
/// (3rd ed. 2009), sections 14.4 (MUSCL-Hancock, here on primitive variables) and 10.4 (HLLC). A face value needs two
/// cells either side of its own.
/// </remarks>
internal static class TubeKernel<L, G>
    where L : struct, ILane<L>
    where G : struct, ILaneGas<L>
{
    /// <summary>
    /// Least share of its cell's density or pressure that a face may have [-]; below, the cell counts as uniform: a
    /// guard, never met in smooth flow.
    /// </summary>
    private const double MinFaceShare = 0.01;

    /// <summary>
    /// Velocities [m/s] and mass fractions below this count as zero. The foot of a wave fades by orders of magnitude a
    /// cell; without a floor it would reach the range of subnormal numbers, in which a processor is a hundred times
    /// slower.
    /// </summary>
    private const double Nothing = 1e-100;

    /// <summary>u, p and Y of all cells, and the greatest |u| + a, least density and least pressure.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static TubeExtremes Primitives(TubeArrays a, G gas)
    {
        a.FillIdle();
        ref double rho = ref At(a.Density), mom = ref At(a.Momentum), energy = ref At(a.Energy), prod = ref At(a.Products);
        ref double vel = ref At(a.Velocity), pre = ref At(a.Pressure), fra = ref At(a.Fraction);
        L one = L.Of(1), half = L.Of(0.5), zero = L.Of(0);
        L fastest = zero, sound = zero, thinnest = L.Of(double.MaxValue), lowest = thinnest;
        for (nint i = a.First; i < a.End; i += L.Count)
        {
            L r = L.Load(ref rho, i), m = L.Load(ref mom, i);
            L inverse = one / r;
            L u = Flush(m * inverse);
            L Y = Flush(L.Load(ref prod, i) * inverse);
            L g = gas.GammaMinusOne(Y);
            L p = g * (L.Load(ref energy, i) - half * m * u);
            L.Store(ref vel, i, u);
            L.Store(ref pre, i, p);
            L.Store(ref fra, i, Y);
            L speed = L.Abs(u) + L.Sqrt((g + one) * p * inverse);
            fastest = L.Max(speed, fastest);
            sound = sound + zero * speed; // stays zero unless a speed is infinite or not a number
            thinnest = L.Min(r, thinnest);
            lowest = L.Min(p, lowest);
        }

        return new TubeExtremes(L.Max(fastest) + L.Sum(sound), L.Min(thinnest), L.Min(lowest));
    }

    /// <summary>
    /// Face values of the cells from <paramref name="from"/> to before <paramref name="to"/>, half a step ahead; h =
    /// dt/(2 dx).
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Faces(TubeArrays a, int from, int to, double h, G gas)
    {
        ref double rho = ref At(a.Density), vel = ref At(a.Velocity), pre = ref At(a.Pressure), fra = ref At(a.Fraction);
        ref double s = ref At(a.Scratch);
        L H = L.Of(h);
        for (nint i = from; i < to; i += L.Count)
        {
            FacePair<L> f = At(ref rho, ref vel, ref pre, ref fra, i, H, gas);
            f.Store(ref s, i - from);
        }
    }

    /// <summary>
    /// The same without slopes: first order, for a step that must keep density and pressure positive.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void UniformFaces(TubeArrays a, int from, int to)
    {
        ref double rho = ref At(a.Density), vel = ref At(a.Velocity), pre = ref At(a.Pressure), fra = ref At(a.Fraction);
        ref double s = ref At(a.Scratch);
        for (nint i = from; i < to; i += L.Count)
        {
            var w = new Primitive<L>(L.Load(ref rho, i), L.Load(ref vel, i), L.Load(ref pre, i), L.Load(ref fra, i));
            new FacePair<L>(w, w).Store(ref s, i - from);
        }
    }

    /// <summary>Face values of one cell, or of the cells of one register.</summary>
    public static FacePair<L> FacesOf(TubeArrays a, int cell, double h, G gas) =>
        At(ref At(a.Density), ref At(a.Velocity), ref At(a.Pressure), ref At(a.Fraction), cell, L.Of(h), gas);

    /// <summary>
    /// Fluxes through the faces of a tile, between the right value of one cell and the left value of the next.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Fluxes(TubeArrays a, int faces, G gas)
    {
        ref double s = ref At(a.Scratch);
        for (nint i = 0; i < faces; i += L.Count)
        {
            Primitive<L> left = FacePair<L>.LoadRight(ref s, i), right = FacePair<L>.LoadLeft(ref s, i + 1);
            Hllc<L, G>.Flux(left, right, gas).Store(ref s, i);
        }
    }

    /// <summary>U - dt/dx (F right - F left) for the cells of a tile; k = dt/dx.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Update(TubeArrays a, int from, int to, double k)
    {
        ref double rho = ref At(a.Density), mom = ref At(a.Momentum), energy = ref At(a.Energy), prod = ref At(a.Products);
        ref double rho1 = ref At(a.NextDensity), mom1 = ref At(a.NextMomentum), energy1 = ref At(a.NextEnergy),
            prod1 = ref At(a.NextProducts);
        ref double s = ref At(a.Scratch);
        L K = L.Of(k);
        for (nint i = from; i < to; i += L.Count)
        {
            TubeFlux<L> l = TubeFlux<L>.Load(ref s, i - from), r = TubeFlux<L>.Load(ref s, i - from + 1);
            L.Store(ref rho1, i, L.Load(ref rho, i) - K * (r.Mass - l.Mass));
            L.Store(ref mom1, i, L.Load(ref mom, i) - K * (r.Momentum - l.Momentum));
            L.Store(ref energy1, i, L.Load(ref energy, i) - K * (r.Energy - l.Energy));
            L.Store(ref prod1, i, L.Load(ref prod, i) - K * (r.Products - l.Products));
        }
    }

    /// <summary>
    /// The same where the bore changes: a face is as wide as the narrower of its cells, and the annulus of the wider
    /// cell carries that cell's own pressure at the face. At rest both cancel to the last bit.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void UpdateStepped(TubeArrays a, TubeBore bore, int from, int to, double k)
    {
        ref double rho = ref At(a.Density), mom = ref At(a.Momentum), energy = ref At(a.Energy), prod = ref At(a.Products);
        ref double rho1 = ref At(a.NextDensity), mom1 = ref At(a.NextMomentum), energy1 = ref At(a.NextEnergy),
            prod1 = ref At(a.NextProducts);
        ref double open = ref At(bore.OpenLeft), openRight = ref At(bore.OpenRight);
        ref double s = ref At(a.Scratch);
        L K = L.Of(k);
        for (nint i = from; i < to; i += L.Count)
        {
            TubeFlux<L> l = TubeFlux<L>.Load(ref s, i - from), r = TubeFlux<L>.Load(ref s, i - from + 1);
            L al = L.Load(ref open, i), ar = L.Load(ref openRight, i);
            L pl = FacePair<L>.LoadLeft(ref s, i - from + 1).p, pr = FacePair<L>.LoadRight(ref s, i - from + 1).p;
            L.Store(ref rho1, i, L.Load(ref rho, i) - K * (ar * r.Mass - al * l.Mass));
            L.Store(ref mom1, i, L.Load(ref mom, i) - K * (pr + ar * (r.Momentum - pr) - (pl + al * (l.Momentum - pl))));
            L.Store(ref energy1, i, L.Load(ref energy, i) - K * (ar * r.Energy - al * l.Energy));
            L.Store(ref prod1, i, L.Load(ref prod, i) - K * (ar * r.Products - al * l.Products));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static FacePair<L> At(ref double rho, ref double vel, ref double pre, ref double fra, nint i, L h, G gas)
    {
        L r = L.Load(ref rho, i), u = L.Load(ref vel, i), p = L.Load(ref pre, i), Y = L.Load(ref fra, i);
        L rL = L.Load(ref rho, i - 1), uL = L.Load(ref vel, i - 1), pL = L.Load(ref pre, i - 1), YL = L.Load(ref fra, i - 1);
        L rR = L.Load(ref rho, i + 1), uR = L.Load(ref vel, i + 1), pR = L.Load(ref pre, i + 1), YR = L.Load(ref fra, i + 1);
        L du = SlopeLimiter<L>.Smooth(u - uL, uR - u), dp = SlopeLimiter<L>.Smooth(p - pL, pR - p);
        L dr = SlopeLimiter<L>.Carried(
            rL - L.Load(ref rho, i - 2), r - rL, rR - r, L.Load(ref rho, i + 2) - rR, SlopeLimiter<L>.DensityJump(r, p, rR - rL, pR - pL));
        L dY = SlopeLimiter<L>.Carried(
            YL - L.Load(ref fra, i - 2), Y - YL, YR - Y, L.Load(ref fra, i + 2) - YR, SlopeLimiter<L>.FractionJump(YR - YL));
        L g = gas.GammaMinusOne(Y);

        // Half a step of the primitive equations (Toro 2009, equation 14.41 with the matrix of 3.1).
        L zero = L.Of(0), half = L.Of(0.5), share = L.Of(MinFaceShare);
        L hr = zero - h * (u * dr + r * du), hu = zero - h * (u * du + dp / r), hp = zero - h * (u * dp + (p + g * p) * du),
            hY = zero - h * u * dY;
        dr = half * dr;
        du = half * du;
        dp = half * dp;
        dY = half * dY;

        // A face that would lose nearly all density or pressure, or a strong shock: the cell counts as uniform.
        L min = L.Min(hr - L.Abs(dr) + (r - share * r), hp - L.Abs(dp) + (p - share * p));
        L keep = L.WhereLess(zero, min, L.WhereLess(zero, SlopeLimiter<L>.Shock(pL, pR, uL - uR), zero, L.Of(1)), zero);
        L br = r + keep * hr, bu = u + keep * hu, bp = p + keep * hp, bY = Y + keep * hY;
        dr = keep * dr;
        du = keep * du;
        dp = keep * dp;
        dY = keep * dY;
        return new FacePair<L>(
            new Primitive<L>(br - dr, bu - du, bp - dp, bY - dY),
            new Primitive<L>(br + dr, bu + du, bp + dp, bY + dY));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static L Flush(L x) => L.WhereLess(L.Abs(x), L.Of(Nothing), L.Of(0), x);

    private static ref double At(double[] array) => ref MemoryMarshal.GetArrayDataReference(array);
}
