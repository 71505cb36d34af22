using Staging.Core.Gaps;
using static Staging.Core.Validation.GapCheck;

namespace Staging.Core.Validation.Published;

/// <summary>Drag and heat transfer of spheres against other correlations of measurements.</summary>
public class DropletChecks
{
    private static readonly Provenance Clift = new()
    {
        Source = "R. Clift, J. R. Grace and M. E. Weber, Bubbles, Drops, and Particles (1978), table 5.2, standard drag curve, as quoted alike by several public "
            + "programs; computed from its formulas",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance Whitaker = new()
    {
        Source = "S. Whitaker, AIChE J. 18 (1972) 361, Nu = 2 + (0.4 Re^(1/2) + 0.06 Re^(2/3)) Pr^0.4 for a sphere, as quoted alike by several public programs; "
            + "computed from its formula for Pr 0.7 and one viscosity",
        How = Evidence.ComputedFromFormula,
    };

    /// <summary>Re 1 and 10: 24/Re (1 + 0.1315 Re^(0.82 - 0.05 w)); 100: 24/Re (1 + 0.1935 Re^0.6305); 500: log10 C = 1.6435 - 1.1242 w + 0.1558 w^2; w = log10 Re.</summary>
    [Theory]
    [InlineData(0.1, 244.26)]
    [InlineData(1, 27.156)]
    [InlineData(10, 4.2584)]
    [InlineData(100, 1.0870)]
    [InlineData(500, 0.5549)]
    public void Drag_of_a_sphere(double reynolds, double expected) =>
        Verify($"drag coefficient of a sphere, Re {reynolds}", "-", expected, 24 / reynolds * SphereFlow.DragOverStokes(reynolds),
            Tolerance.Relative(0.05, "Schiller and Naumann are known to keep within 5 % of the standard curve up to Re 800"), Clift);

    [Theory]
    [InlineData(10, 3.338)]
    [InlineData(100, 6.589)]
    [InlineData(1000, 18.17)]
    [InlineData(6510, 48.12)]
    public void Heat_transfer_of_a_sphere(double reynolds, double expected) =>
        Verify($"Nusselt number of a sphere, Re {reynolds}, Pr 0.7", "-", expected, SphereFlow.Nusselt(reynolds, 0.7),
            Tolerance.Relative(0.3, "Whitaker's formula is given to 30 %, the scatter of the measurements behind it"), Whitaker);
}
