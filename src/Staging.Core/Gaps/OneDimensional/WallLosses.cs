using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Staging.Core.Gases;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Friction and heat loss at the tube wall, cell by cell. Friction: the greater of Hagen-Poiseuille's 64/Re and
/// Blasius' 0.3164 Re^(-1/4) (H. Blasius 1913, from memory) for a smooth pipe, taken as if developed at once. Heat: the
/// given coefficient and the radiation of the products (<see cref="WallExchange"/>). Both are advanced so that no step
/// can overshoot.
/// </summary>
internal static class WallLosses<L>
    where L : struct, ILane<L>
{
    /// <summary>Sums over every eighth cell: the widest lanes, and the same sums with any others.</summary>
    private const int Partial = 8;

    /// <summary>
    /// Applies both over a time and returns the heat lost, a unit of volume of a cell [J/m3], summed over the cells; in
    /// a tube of several bores with the relative cross-sections as weights.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static double Apply(TubeArrays a, double time, double bore, in WallExchange walls, in GasConstants products,
        in GasConstants air, TubeBore? shape = null)
    {
        ref double rho = ref MemoryMarshal.GetArrayDataReference(a.Density), mom = ref MemoryMarshal.GetArrayDataReference(a.Momentum);
        ref double energy = ref MemoryMarshal.GetArrayDataReference(a.Energy), prod = ref MemoryMarshal.GetArrayDataReference(a.Products);
        a.FillIdle();
        L zero = L.Of(0), one = L.Of(1), half = L.Of(0.5), dt = L.Of(time);
        L wallT = L.Of(walls.Wall), D = L.Of(bore), weight = one;
        L convected = L.Of(4 * walls.Convective / bore), radiated = L.Of(4 * walls.Emittance / bore);
        Span<double> sums = stackalloc double[Partial];
        sums.Clear();
        ref double sum = ref MemoryMarshal.GetReference(sums);
        for (nint i = a.First; i < a.End; i += L.Count)
        {
            if (shape is not null)
            {
                D = L.Load(ref MemoryMarshal.GetArrayDataReference(shape.Diameter), i);
                convected = L.Of(4 * walls.Convective) / D;
                radiated = L.Of(4 * walls.Emittance) / D;
                weight = L.Load(ref MemoryMarshal.GetArrayDataReference(shape.Relative), i);
            }

            L r = L.Load(ref rho, i), m = L.Load(ref mom, i), E = L.Load(ref energy, i), q = L.Load(ref prod, i);
            L rcv = L.Of(air.Cv) * r + L.Of(products.Cv - air.Cv) * q;
            L T = L.Max((E - half * m * m / r) / rcv, zero);

            // Sutherland's law for air, US Standard Atmosphere 1976; friction as a rate 1/u du/dt = -f |u|/(2 D).
            L viscosity = L.Of(1.458e-6) * T * L.Sqrt(T) / (T + L.Of(110.4));
            L mD = L.Abs(m) * D;
            L laminar = L.Of(32) * viscosity / (r * D * D);
            L rough = L.Sqrt(L.Sqrt(viscosity / (mD + viscosity)));
            L turbulent = L.Of(0.3164 / 2) * L.Abs(m) / (r * D) * rough;
            m = m / (one + dt * L.Max(laminar, turbulent));
            T = L.Max((E - half * m * m / r) / rcv, zero);

            // exp(-x) as 1/(1 + x + x^2/2), the coefficient half-way down: second order, and positive for any step.
            L radiant = radiated * (q / r);
            L x = dt * (convected + radiant * ((T * T + wallT * wallT) * (T + wallT))) / rcv;
            L middle = wallT + (T - wallT) / (one + half * x);
            x = dt * (convected + radiant * ((middle * middle + wallT * wallT) * (middle + wallT))) / rcv;
            L loss = rcv * (T - wallT) * (one - one / (one + x + half * x * x));
            L after = E - loss;
            L.Store(ref mom, i, m);
            L.Store(ref energy, i, after);
            L given = weight * (E - after);
            nint at = (i - a.First) % Partial;
            L.Store(ref sum, at, L.Load(ref sum, at) + (i + L.Count <= a.End ? given : L.First(given, (int)(a.End - i))));
        }

        return sums[0] + sums[1] + (sums[2] + sums[3]) + (sums[4] + sums[5] + (sums[6] + sums[7]));
    }
}
