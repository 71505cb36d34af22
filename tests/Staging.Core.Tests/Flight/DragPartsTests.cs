using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

/// <summary>How the laws of drag are put on an airframe: which area each acts on, and what stands beside it.</summary>
public class DragPartsTests
{
    private const double D = 0.0248;

    /// <summary>Areas of surfaces of revolution in closed form: a cone, an arc of a circle, a paraboloid; strips are good to 1e-4.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(80)]
    [InlineData(200)]
    public void Wetted_areas_are_those_of_the_solids(double millimetres)
    {
        double L = millimetres / 1000, R = D / 2, rho = (R * R + L * L) / (2 * R);
        Is(NoseShape.Cone, Math.PI * R * Math.Sqrt(R * R + L * L), 1e-12);
        Is(NoseShape.Ogive, 2 * Math.PI * rho * (L + (R - rho) * Math.Asin(L / rho)), 1e-4);
        Is(NoseShape.Parabola, Math.PI * R / (6 * L * L) * (Math.Pow(R * R + 4 * L * L, 1.5) - R * R * R), 1e-4);

        void Is(NoseShape shape, double nose, double tolerance)
        {
            Airframe airframe = Bare(shape, L, BodyPart.Tube(Length.FromMillimeters(270), Length.FromMeters(D)));
            Assert.Equal(nose + Math.PI * D * 0.270, BodyShape.WettedArea(airframe), tolerance * nose);
        }
    }

    /// <summary>A body has the friction of a plate as long and as large as its surface, times its form factor; a fin that of both its sides, times 1 + 2 t/c.</summary>
    [Fact]
    public void Friction_is_that_of_plates_of_the_same_surface()
    {
        const double M = 0.3, k = 20e-6;
        Airframe upper = TestAirframes.Upper;
        AirSample air = StandardAtmosphere.Us1976.At(300);
        double perMetre = air.Density_kg_per_m3 * M * air.SoundSpeed_m_per_s / AirTransport.Viscosity(air.Temperature_K);
        double l = 0.350, slender = D / l, area = Math.PI / 4 * D * D;
        double body = SkinFriction.Mean(perMetre * l, k / l, M) * (1 + 1.5 * Math.Pow(slender, 1.5) + 7 * slender * slender * slender);
        Assert.Equal(body * BodyShape.WettedArea(upper) / area, upper.Drag(M).BodyFriction, 1e-12);
        double chord = 0.0375, fin = SkinFriction.Mean(perMetre * chord, k / chord, M) * (1 + 2 * 0.0015 / chord);
        Assert.Equal(fin * 3 * 2 * chord * 0.040 / area, upper.Drag(M).FinFriction, 1e-12);
    }

    /// <summary>Each cone presses on its own share of the cross-section: a nose on its base, a shoulder on the ring that it adds.</summary>
    [Fact]
    public void A_nose_and_a_shoulder_share_the_cross_section()
    {
        var shoulder = new BodyPart { Length = Length.FromMillimeters(30), ForeDiameter = Length.FromMillimeters(18), AftDiameter = Length.FromMeters(D) };
        Airframe airframe = Bare(NoseShape.Cone, 0.060, shoulder) with { Nose = Nose(NoseShape.Cone, 0.060, 0.018) };
        double nose = Sine(9, 60), ring = Sine(3.4, 30), share = 18 * 18 / (24.8 * 24.8);
        Assert.Equal(share * 0.8 * nose * nose + (1 - share) * 0.8 * ring * ring, ForebodyDrag.Of(airframe, 0.5), 1e-12);

        static double Sine(double rise, double run) => rise / Math.Sqrt(rise * rise + run * run);
    }

    /// <summary>
    /// Below the speed of sound 0.029/sqrt(C) on the base, C all drag ahead of it on that area, growing as 0.12 + 0.13 M^2; the base of a boat-tail is
    /// smaller, and the same drag ahead of it weighs more on it.
    /// </summary>
    [Theory]
    [InlineData(24.8, 0.2)]
    [InlineData(24.8, 0.6)]
    [InlineData(18, 0.2)]
    [InlineData(18, 0.6)]
    public void Base_drag_below_the_speed_of_sound_by_hand(double aft, double M)
    {
        var tail = new BodyPart { Length = Length.FromMillimeters(20), ForeDiameter = Length.FromMeters(D), AftDiameter = Length.FromMillimeters(aft) };
        DragEstimate drag = TestAirframes.Upper.With([tail], []).Drag(M);
        double share = aft * aft / (24.8 * 24.8), ahead = (drag.BodyFriction + drag.Forebody) / share;
        Assert.Equal(share * 0.029 / Math.Sqrt(ahead) * (0.12 + 0.13 * M * M) / 0.12, drag.Base, 1e-12);
    }

    /// <summary>Above Mach 1.2 a round fin twice as thick has four times the wave of the thin-wing formula, 4 (t/c)^2/sqrt(M^2 - 1), and twice everything else.</summary>
    [Theory]
    [InlineData(1.21)]
    [InlineData(1.3)]
    [InlineData(1.4)]
    [InlineData(2)]
    public void The_wave_of_a_fin_is_that_of_a_thin_wedge(double M)
    {
        FinGroup fin = TestAirframes.Upper.Fins[0];
        double t = fin.Thickness.Meters, chord = 0.0375, area = fin.Count * fin.PlanformArea.SquareMeters;
        double once = 4 * (t / chord) * (t / chord) / Math.Sqrt(M * M - 1);
        double beyond = FinDrag.Pressure(fin with { Thickness = 2 * fin.Thickness }, M) - 2 * FinDrag.Pressure(fin, M);
        Assert.Equal(2 * once, beyond / area, 1e-12);
    }

    private static Airframe Bare(NoseShape shape, double length, BodyPart part) => new() { Nose = Nose(shape, length, D), Body = [part], Fins = [] };

    private static Nose Nose(NoseShape shape, double length, double diameter) =>
        new() { Shape = shape, Length = Length.FromMeters(length), Diameter = Length.FromMeters(diameter) };
}
