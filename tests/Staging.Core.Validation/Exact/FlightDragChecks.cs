using Staging.Core.Flight;
using UnitsNet;

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
        Check("form factor of a body of fineness 10", 1.0544342, DragBuildUp.BodyFormFactor(10), "S. F. Hoerner, Fluid-Dynamic Drag, 1965, 1 + 1.5 (d/l)^1.5 + 7 (d/l)^3", Evidence.FromMemory);
        Check("base drag behind a forebody of 0.06", 0.1183920, DragBuildUp.SubsonicBase(0.06), "S. F. Hoerner, Fluid-Dynamic Drag, 1965, 0.029/sqrt(C)", Evidence.FromMemory);
    }

    /// <summary>The exact solution of a cone without incidence, which the correlation of the library stands for.</summary>
    [Theory]
    [InlineData(5, 2, 0.033959)]
    [InlineData(10, 1.5, 0.123818)]
    [InlineData(10, 2, 0.104471)]
    [InlineData(10, 3, 0.087481)]
    [InlineData(15, 2, 0.202248)]
    [InlineData(20, 3, 0.284270)]
    public void Wave_drag_of_a_cone(double degrees, double M, double expected)
    {
        var cone = new Airframe
        {
            Nose = new Nose { Shape = NoseShape.Cone, Length = Length.FromMeters(0.01 / Math.Tan(degrees * Math.PI / 180)), Diameter = Length.FromMeters(0.02) },
            Body = [],
            Fins = [],
        };
        FlightCheck.Verify($"pressure drag of a cone of {degrees} degrees at Mach {M}", "-", expected, ForebodyDrag.Of(cone, M),
            Tolerance.Relative(0.08, "a power law for cones of all angles; the exact solution needs none"), new Provenance
            {
                Source = "G. I. Taylor and J. W. Maccoll, Proc. R. Soc. A 139 (1933): equation of conical flow behind the oblique shock of NACA Report 1135, gamma 1.4, integrated apart",
                How = Evidence.ComputedFromFormula,
            });
    }

    /// <summary>What presses on a flat leading edge is 0.85 of the pressure at a stagnation point.</summary>
    [Theory]
    [InlineData(0.4, 1.0406426, 1e-4)]
    [InlineData(0.8, 1.1704018, 3e-4)]
    [InlineData(1.5, 1.5322379, 5e-3)]
    [InlineData(2, 1.6573003, 5e-3)]
    [InlineData(3, 1.7557087, 5e-3)]
    public void Stagnation_pressure_on_a_fin(double M, double expected, double relative)
    {
        FinGroup fins = Fins(round: false) with { TaperedTrailingEdge = true };
        FlightCheck.Verify($"pressure coefficient at a stagnation point at Mach {M}", "-", expected, FinDrag.Pressure(fins, M) / (3 * 0.040 * 0.0015) / 0.85,
            Tolerance.Relative(relative, M < 1 ? "series of the isentropic relation to the fourth power" : "series of the relation behind a normal shock"), new Provenance
            {
                Source = M < 1 ? "NACA Report 1135 (1953), isentropic relation" : "NACA Report 1135 (1953), pitot formula of Rayleigh",
                How = Evidence.ComputedFromFormula,
            });
    }

    [Theory]
    [InlineData(1.5, 0.0057243340)]
    [InlineData(2, 0.0036950417)]
    [InlineData(3, 0.0022627417)]
    public void Wave_drag_of_a_fin(double M, double expected)
    {
        // What a round fin drags beyond its edge is its wave: the edge is the same whatever the chord, the wave goes with the square of t/c.
        FinGroup fins = Fins(round: true) with { TaperedTrailingEdge = true }, twice = fins with { RootChord = 2 * fins.RootChord, TipChord = 2 * fins.TipChord };
        double wave = (FinDrag.Pressure(fins, M) - FinDrag.Pressure(twice, M)) / (3 * 0.040 * 0.0375) * 2;
        Check($"wave drag of a double wedge 4 % thick at Mach {M}, both sides, on one side", expected, wave, "J. Ackeret, Z. Flugtechnik 16 (1925), 4 (t/c)^2/sqrt(M^2 - 1)");
    }

    private static FinGroup Fins(bool round) => new()
    {
        Count = 3,
        RootChord = Length.FromMillimeters(50),
        TipChord = Length.FromMillimeters(25),
        Span = Length.FromMillimeters(40),
        Sweep = Length.Zero,
        Thickness = Length.FromMillimeters(1.5),
        RoundLeadingEdge = round,
        TaperedTrailingEdge = false,
        Station = Length.FromMillimeters(300),
        BodyDiameter = Length.FromMillimeters(25),
    };

    private static void Check(string quantity, double expected, double ours, string source, Evidence how = Evidence.ComputedFromFormula) =>
        FlightCheck.Verify(quantity, "-", expected, ours, Tolerance.Relative(1e-7, "expected value given to eight digits"), new Provenance { Source = source, How = how });
}
