using Staging.Core.Gases;

namespace Staging.Core.Flight;

/// <summary>
/// Fast air and gravity above one site: density and reciprocal speed of sound as polynomials of degree 7 in
/// cells of height, fitted to the atmosphere at Chebyshev points when a cell is first entered and checked between them,
/// and gravity as its Taylor cubic. A cell that fails the check (a kink of the profile lies in it) evaluates the
/// atmosphere itself every time.
/// </summary>
/// <param name="atmosphere">The air.</param>
/// <param name="siteElevation">Height of the site above sea level [m].</param>
/// <param name="seaLevelGravity">Gravity at sea level [m/s2].</param>
/// <param name="earthRadius">Distance of sea level from the centre of the Earth [m]; infinite for uniform
/// gravity.</param>
internal sealed class SiteColumn(IAtmosphere atmosphere, double siteElevation, double seaLevelGravity, double earthRadius)
{
    /// <summary>
    /// Height of a cell [m]: small compared with the 8 km over which air changes, so degree 7 is exact to round-off.
    /// </summary>
    public const double CellHeight = 1024;

    /// <summary>
    /// Coefficients of the polynomial of density, and of the one of the reciprocal speed of sound that follows it.
    /// </summary>
    public const int Terms = 8;

    /// <summary>Where in a cell the coefficients of gravity begin.</summary>
    public const int GravityAt = 2 * Terms;

    /// <summary>Coefficients of a cell.</summary>
    public const int CellLength = GravityAt + 4;

    /// <summary>
    /// How far the lowest cell reaches below the site [m]: a landing stays in its cell. Below it the atmosphere
    /// itself is evaluated.
    /// </summary>
    private const double BelowSite = 256;

    private const int MaxCells = 96;

    /// <summary>Relative deviation between the points above which a cell is rejected.</summary>
    private const double Tolerance = 1e-11;

    private static readonly double[] Nodes = [.. Enumerable.Range(0, Terms).Select(j => Math.Cos((2 * j + 1) * Math.PI / (2 * Terms)))];
    private static readonly double[] MonomialFromNodes = InverseVandermonde();
    private static readonly double[] Refused = [];
    private readonly double perRadius = 1 / earthRadius;
    private readonly double[]?[] cells = new double[]?[MaxCells];

    /// <summary>Top of the atmosphere above the site [m].</summary>
    public double Ceiling { get; } = atmosphere.Ceiling_m - siteElevation;

    /// <summary>Index of the cell that holds a height above the site [m]; cell 0 holds the site.</summary>
    public static int CellOf(double height) => (int)Math.Clamp(Math.Floor((height + BelowSite) / CellHeight), -1, MaxCells);

    /// <summary>Height of the middle of a cell above the site [m].</summary>
    public static double MiddleOf(int cell) => (cell + 0.5) * CellHeight - BelowSite;

    /// <summary>
    /// The three polynomials of a cell in u = 2 (h - middle)/CellHeight: density, reciprocal speed of sound, gravity;
    /// empty where the cell has none.
    /// </summary>
    public double[] Cell(int cell)
    {
        if (cell < 0 || cell >= MaxCells)
            return Refused;
        return cells[cell] ??= Fit(cell);
    }

    /// <summary>
    /// The air at a height above the site [m]; beyond the ends of the atmosphere, the air at the end.
    /// </summary>
    public AirSample At(double height) => atmosphere.At(Math.Clamp(height + siteElevation, atmosphere.Floor_m, atmosphere.Ceiling_m));

    /// <summary>g = g0 (R/(R + z))^2 at a height above the site [m].</summary>
    public double Gravity(double height)
    {
        double q = 1 / (1 + (siteElevation + height) * perRadius);
        return seaLevelGravity * q * q;
    }

    /// <summary>
    /// Reciprocal distance from the centre of the Earth [1/m] at a height above the site [m]; zero for uniform gravity.
    /// </summary>
    public double PerDistance(double height) => perRadius / (1 + (siteElevation + height) * perRadius);

    private double[] Fit(int cell)
    {
        double middle = MiddleOf(cell);
        double low = middle - 0.5 * CellHeight + siteElevation;
        if (low < atmosphere.Floor_m || low + CellHeight > atmosphere.Ceiling_m)
            return Refused;
        Span<double> rho = stackalloc double[Terms];
        Span<double> reciprocalSound = stackalloc double[Terms];
        for (int j = 0; j < Terms; j++)
        {
            AirSample air = At(middle + 0.5 * CellHeight * Nodes[j]);
            (rho[j], reciprocalSound[j]) = (air.Density_kg_per_m3, 1 / air.SoundSpeed_m_per_s);
        }

        double[] c = new double[CellLength];
        for (int power = 0; power < Terms; power++)
        {
            for (int j = 0; j < Terms; j++)
            {
                double weight = MonomialFromNodes[power * Terms + j];
                c[power] += weight * rho[j];
                c[Terms + power] += weight * reciprocalSound[j];
            }
        }

        // g/g_middle = (1 + e u)^-2: the next term is 5 e^4, 2e-16 on the Earth.
        double g = Gravity(middle), e = 0.5 * CellHeight * PerDistance(middle);
        (c[GravityAt], c[GravityAt + 1], c[GravityAt + 2], c[GravityAt + 3]) = (g, -2 * e * g, 3 * e * e * g, -4 * e * e * e * g);
        foreach (double u in (ReadOnlySpan<double>)[-1, -0.57, 0.03, 0.71, 1])
        {
            AirSample air = At(middle + 0.5 * CellHeight * u);
            if (!Near(Value(c, u), air.Density_kg_per_m3) || !Near(Value(c.AsSpan(Terms), u), 1 / air.SoundSpeed_m_per_s))
                return Refused;
        }

        return c;
    }

    private static bool Near(double fitted, double exact) => Math.Abs(fitted - exact) <= Tolerance * Math.Abs(exact);

    private static double Value(ReadOnlySpan<double> c, double u)
    {
        double sum = 0;
        for (int i = Terms - 1; i >= 0; i--)
            sum = sum * u + c[i];
        return sum;
    }

    /// <summary>
    /// Monomial coefficients of the interpolant through the Chebyshev points: T_k in powers of u, times the discrete
    /// cosine sums.
    /// </summary>
    private static double[] InverseVandermonde()
    {
        double[] inverse = new double[Terms * Terms];
        double[] previous = new double[Terms], current = new double[Terms];
        current[0] = 1;
        for (int k = 0; k < Terms; k++)
        {
            for (int j = 0; j < Terms; j++)
            {
                double weight = (k == 0 ? 1.0 : 2.0) / Terms * Math.Cos(k * (2 * j + 1) * Math.PI / (2 * Terms));
                for (int power = 0; power <= k; power++)
                    inverse[power * Terms + j] += weight * current[power];
            }

            double[] following = new double[Terms];
            for (int power = 0; power < Terms - 1; power++)
                following[power + 1] = (k == 0 ? 1 : 2) * current[power];
            for (int power = 0; power < Terms; power++)
                following[power] -= k == 0 ? 0 : previous[power];
            (previous, current) = (current, following);
        }

        return inverse;
    }
}
