namespace Staging.Core.Gaps;

/// <summary>Drag and heat transfer of a sphere in a stream.</summary>
internal static class SphereFlow
{
    /// <summary>
    /// Drag over that of Stokes [-], 1 + 0.15 Re^0.687, within 5 % of the standard curve up to Re 800 (L. Schiller and
    /// A. Naumann, Z. VDI 77 (1933) 318, from memory).
    /// </summary>
    /// <param name="reynolds">Reynolds number with the diameter [-].</param>
    public static double DragOverStokes(double reynolds) => 1 + 0.15 * Math.Pow(reynolds, 0.687);

    /// <summary>
    /// Nusselt number with the diameter [-], 2 + 0.6 Re^(1/2) Pr^(1/3) (W. E. Ranz and W. R. Marshall, Chem. Eng. Prog.
    /// 48 (1952) 141, from memory).
    /// </summary>
    /// <param name="reynolds">Reynolds number with the diameter [-].</param>
    /// <param name="prandtl">Prandtl number of the gas [-].</param>
    public static double Nusselt(double reynolds, double prandtl) => 2 + 0.6 * Math.Sqrt(reynolds) * Math.Cbrt(prandtl);
}
