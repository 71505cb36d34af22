using Staging.Core.Flight;

namespace Staging.Core.Validation.Exact;

public class FlightDragChecks
{
    [Theory]
    [InlineData(1e5, 0.0041995047, 0.0071559745)]
    [InlineData(1e6, 0.001328, 0.0044707581)]
    [InlineData(1e7, 0.00041995047, 0.0030037131)]
    public void Skin_friction(double Re, double laminar, double turbulent)
    {
        Check($"laminar skin friction, Re {Re:0e0}", laminar, SkinFriction.Laminar(Re), "H. Blasius 1908, 1.328/sqrt(Re)");
        Check($"turbulent skin friction, Re {Re:0e0}", turbulent, SkinFriction.Turbulent(Re), "L. Prandtl and H. Schlichting 1932, 0.455/(log10 Re)^2.58");
    }

    [Theory]
    [InlineData(1e6, 0.0027707581)]
    [InlineData(2e6, 0.0030903029)]
    [InlineData(1e7, 0.0028337131)]
    public void Skin_friction_with_transition(double Re, double expected) =>
        Check($"skin friction with transition, Re {Re:0e0}", expected, SkinFriction.Mean(Re, 0, 0), "Prandtl-Schlichting less 1700/Re (H. Schlichting, Boundary-Layer Theory)");

    [Fact]
    public void Forms_and_base()
    {
        Check("form factor of a body of fineness 10", 1.0544342, DragBuildUp.BodyFormFactor(10), "S. F. Hoerner, Fluid-Dynamic Drag, 1965, 1 + 1.5 (d/l)^1.5 + 7 (d/l)^3, recalled");
        Check("base drag behind a forebody of 0.06", 0.1183920, DragBuildUp.SubsonicBase(0.06), "S. F. Hoerner, Fluid-Dynamic Drag, 1965, 0.029/sqrt(C), recalled");
    }

    private static void Check(string quantity, double expected, double ours, string source) =>
        FlightCheck.Verify(quantity, "-", expected, ours, Tolerance.Relative(1e-7, "expected value given to eight digits"), new Provenance { Source = source, How = Evidence.ComputedFromFormula });
}
