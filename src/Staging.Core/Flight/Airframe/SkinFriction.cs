namespace Staging.Core.Flight;

/// <summary>
/// Mean skin friction coefficient of a flat plate, on its wetted area. All functions are dimensionless.
/// </summary>
internal static class SkinFriction
{
    /// <summary>
    /// Reynolds number of transition on a smooth plate [-]: the usual value; published values range from 3e5 to 3e6.
    /// </summary>
    public const double Transition = 5e5;

    /// <summary>Laminar: C_f = 1.328/sqrt(Re) (H. Blasius, 1908).</summary>
    /// <param name="Re">Reynolds number of the length [-], above 0.</param>
    /// <returns>C_f [-].</returns>
    public static double Laminar(double Re) => 1.328 / Math.Sqrt(Re);

    /// <summary>Fully turbulent: C_f = 0.455/(log10 Re)^2.58 (L. Prandtl and H. Schlichting, 1932).</summary>
    /// <param name="Re">Reynolds number of the length [-], above 1.</param>
    /// <returns>C_f [-].</returns>
    public static double Turbulent(double Re) => 0.455 / Math.Pow(Math.Log10(Re), 2.58);

    /// <summary>
    /// Rough wall, independent of the Reynolds number: C_f = 0.032 (k/L)^0.2 (J. S. Barrowman 1967 after S. F. Hoerner;
    /// from memory).
    /// </summary>
    /// <param name="roughnessToLength">Height of the roughness over the length [-], above 0.</param>
    /// <returns>C_f [-].</returns>
    public static double Rough(double roughnessToLength) => 0.032 * Math.Pow(roughnessToLength, 0.2);

    /// <summary>
    /// Laminar up to transition. Above it the larger of two turbulent values: a smooth wall, Prandtl-Schlichting less
    /// 1700/Re for the laminar length ahead of transition at 5e5 (H. Schlichting, Boundary-Layer Theory), and a rough
    /// wall, also laminar up to transition. Both are corrected for compressibility by 1/(1 + 0.15 M^2)^0.58 (J. S.
    /// Barrowman 1967; from memory); below the speed of sound this is within 2.5 % of the usual 1 - 0.1 M^2. The
    /// laminar value has no correction and is a lower bound above transition too, so that the curve has no step down.
    /// </summary>
    /// <param name="Re">Reynolds number of the length [-], above 1.</param>
    /// <param name="roughnessToLength">Height of the roughness over the length [-], 0 or more.</param>
    /// <param name="M">Mach number [-].</param>
    /// <returns>C_f [-].</returns>
    public static double Mean(double Re, double roughnessToLength, double M)
    {
        if (Re <= Transition)
            return Laminar(Re);
        double rough = roughnessToLength > 0 ? Rough(roughnessToLength) : 0;
        rough -= Transition / Re * (rough - Laminar(Transition));
        double turbulent = Math.Max(Turbulent(Re) - 1700 / Re, rough) * Math.Pow(1 + 0.15 * M * M, -0.58);
        return Math.Max(Laminar(Re), turbulent);
    }
}
