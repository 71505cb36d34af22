using System.Runtime.CompilerServices;
using Staging.Core.Gases;

namespace Staging.Core.Validation;

/// <summary>
/// The orifice of <see cref="TwoVesselGap"/>, which is not one of the library's: psi^2 times d/(d + 1e-3) with d = 1 - r, r the pressure ratio held at its critical value.
/// The library blends within <see cref="Discharge.Orifice.BlendWidth"/> only, and changes nothing beyond it.
/// </summary>
/// <remarks>
/// With p = (gamma - 1) U/V and R T = (gamma - 1) U/m the flow is CdA sqrt(m U) / V sqrt(F), F = (gamma - 1) psi^2 d/(d + 1e-3): one root a flow. What a choked hole
/// passes depends on gamma alone and is taken from a polynomial.
/// </remarks>
internal static class TwoVesselOrifice
{
    public const double Width = 1e-3;

    /// <summary>Above this ratio no mixture of the two gases is choked.</summary>
    private const double AlwaysSubsonicAbove = 0.56;

    private static readonly GammaPolynomial CriticalRatio = new(IsentropicFlow.CriticalPressureRatio);
    private static readonly GammaPolynomial Choked = new(gamma => Subsonic(IsentropicFlow.CriticalPressureRatio(gamma), gamma, 1 / gamma));

    /// <summary>F of the text above at a pressure ratio [-].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Square(double r, double gamma) =>
        r < AlwaysSubsonicAbove && r <= CriticalRatio.At(gamma) ? Choked.At(gamma) : Subsonic(r, gamma, 1 / gamma);

    /// <summary>The same without a limit: 2 gamma s (s - r) d/(d + 1e-3) with s = r^(1/gamma).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Subsonic(double r, double gamma, double perGamma)
    {
        double s = Math.Exp(Math.Log(r) * perGamma), d = 1 - r, square = 2 * gamma * s * (s - r);
        return square > 0 ? square * (d / (d + Width)) : 0;
    }
}
