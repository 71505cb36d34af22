using System.Runtime.CompilerServices;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Flux through a face by the approximate Riemann solver with a contact wave (HLLC), written as the flux of the state
/// on the face.
/// </summary>
/// <remarks>
/// E. F. Toro, M. Spruce and W. Speares, Shock Waves 4 (1994) 25; Toro (2009) section 10.4. Wave speeds S_L = min(u_L -
/// a_L, u_R - a_R), S_R = max(u_L + a_L, u_R + a_R) of S. F. Davis, SIAM J. Sci. Stat. Comput. 9 (1988) 445, with which
/// the star states keep positive density and pressure (P. Batten and others, SIAM J. Sci. Comput. 18 (1997) 1553). Each
/// side has the gamma of its own mixture. Where gas is stopped both speeds are widened by a quarter of what it loses: a
/// little more viscosity within shocks, as P. Colella and P. R. Woodward add it, J. Comput. Phys. 54 (1984) 174, and
/// for the same end, to quieten the waves that slow shocks leave behind; here by way of the wave speeds, so that the
/// contact stays sharp and the star states positive. Smooth flow, whose face values differ by the square of the cell,
/// does not notice. At rest the mass and energy fluxes are zero and the momentum flux is the pressure, to the last bit.
/// </remarks>
internal static class Hllc<L, G>
    where L : struct, ILane<L>
    where G : struct, ILaneGas<L>
{
    /// <summary>
    /// Widening of the wave speeds over the drop of velocity at a face [-]: a judgement, 0.2 to 0.5 do as well.
    /// </summary>
    private const double Widening = 0.25;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TubeFlux<L> Flux(in Primitive<L> l, in Primitive<L> r, G gas)
    {
        L zero = L.Of(0), half = L.Of(0.5);
        L gL = gas.GammaMinusOne(l.Y, out L GammaL), gR = gas.GammaMinusOne(r.Y, out L GammaR);
        L aL = L.Sqrt((l.p + gL * l.p) / l.r), aR = L.Sqrt((r.p + gR * r.p) / r.r);
        L wider = L.Of(Widening) * L.Max(l.u - r.u, zero);
        L SL = L.Min(l.u - aL, r.u - aR) - wider, SR = L.Max(l.u + aL, r.u + aR) + wider;
        L mL = l.r * (SL - l.u), mR = r.r * (SR - r.u);
        L SM = (r.p - l.p + mL * l.u - mR * r.u) / (mL - mR);

        // The side of the contact that the face lies on, with its outer wave.
        L rho = L.WhereLess(SM, zero, r.r, l.r), u = L.WhereLess(SM, zero, r.u, l.u), p = L.WhereLess(SM, zero, r.p, l.p);
        L Y = L.WhereLess(SM, zero, r.Y, l.Y), inverse = L.WhereLess(SM, zero, GammaR, GammaL);
        L S = L.WhereLess(SM, zero, SR, SL), m = L.WhereLess(SM, zero, mR, mL);
        L E = p * inverse + half * rho * u * u;

        // Between outer wave and contact: the star state (Toro 2009, equations 10.36, 10.39).
        L pStar = p + m * (SM - u);
        L over = L.Of(1) / (S - SM);
        L rhoStar = m * over;
        L EStar = ((S - u) * E - p * u + pStar * SM) * over;

        // Outside (0 <= S_L or S_R <= 0) the face keeps the state of its side.
        L outer = L.WhereLess(SM, zero, zero - SR, SL);
        rho = L.WhereLess(outer, zero, rhoStar, rho);
        u = L.WhereLess(outer, zero, SM, u);
        p = L.WhereLess(outer, zero, pStar, p);
        E = L.WhereLess(outer, zero, EStar, E);
        L mass = rho * u;
        return new TubeFlux<L>(mass, mass * u + p, u * (E + p), mass * Y);
    }
}
