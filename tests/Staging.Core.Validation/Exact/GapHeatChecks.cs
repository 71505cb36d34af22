using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Solving;
using static Staging.Core.Validation.GapCheck;

namespace Staging.Core.Validation.Exact;

/// <summary>Heat that a stream brings to a wall, heat that goes through a tape, and what is left of a free jet.</summary>
public class GapHeatChecks
{
    private static readonly Provenance Homann = new()
    {
        Source = "F. Homann, Z. angew. Math. Mech. 16 (1936), axisymmetric stagnation flow: f''' + 2 f f'' - f'^2 + 1 = 0 with "
            + "theta'' + 2 Pr f theta' = 0, integrated apart by a Runge-Kutta method; f''(0) comes out as 1.3119 (1.312 in print)",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance Slab = new()
    {
        Source = "F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, table 5.1, plane wall, first root and coefficient of the series",
        How = Evidence.FromMemory,
    };

    private static readonly Provenance RoundJet = new()
    {
        Source = "S. B. Pope, Turbulent Flows (2000), table 5.1: U/U_J = B d/x with B of 5.8 to 6.1 in three experiments; here 5.9",
        How = Evidence.FromMemory,
    };

    /// <summary>h d/k over sqrt(Re) for a velocity gradient of U/d, at the library's Prandtl number of 0.7: theta'(0) = 0.66538.</summary>
    [Theory]
    [InlineData(20, 1000)]
    [InlineData(150, 1800)]
    public void Heat_of_a_stagnation_flow(double speed, double temperature)
    {
        GapParameters p = GapToSi.ToSi(StartingGaps.Bore18mm);
        double d = p.Grain.ThroatDiameter, density = 101_325 / (p.Air.R * temperature), heat = p.Air.Cp;
        var air = new Zone<Real>(0, density, density * p.Air.Cv * temperature, p.Products, p.Air);
        double viscosity = AirTransport.Viscosity(temperature), conductivity = viscosity * heat / 0.7;
        double ours = new GrainHeating(air, 101_325, speed, p).Convective * d / conductivity / Math.Sqrt(density * speed * d / viscosity);
        Verify($"Nu/sqrt(Re) before a throat, air of {temperature} K at {speed} m/s, Pr 0.7", "-", 0.66538, ours,
            Tolerance.Relative(0.01, "0.763 Pr^0.4 is a fit of the solutions for Prandtl numbers from 0.6 to 1"), Homann);
    }

    /// <summary>C exp(-z^2 Fo) at the insulated face; at a Fourier number of 1 the second term is below the last digit.</summary>
    [Theory]
    [InlineData(0.1, 0.3111, 1.0161)]
    [InlineData(1, 0.8603, 1.1191)]
    [InlineData(5, 1.3138, 1.2403)]
    [InlineData(10, 1.4289, 1.2620)]
    public void Heat_through_a_tape(double biot, double root, double coefficient) =>
        Verify($"excess left at the far face of a tape, Bi {biot}, Fo 1", "-", coefficient * Math.Exp(-root * root), HeatedSlab.FarFace(1, biot),
            Tolerance.Relative(2e-4, "half a unit of the last digit of root and coefficient"), Slab);

    [Theory]
    [InlineData(15)]
    [InlineData(30)]
    public void What_is_left_of_a_free_jet(double diameters) =>
        Verify($"speed on the axis of a round jet of air after {diameters} diameters, over that of the nozzle", "-", 5.9 / diameters,
            FreeJet.Share<Real>(diameters, MixingAndHeat.Judged.FreeJetCoreInBores, 1),
            Tolerance.Relative(0.1, "the judged constant 5.5 stands for speed and temperature, and temperature falls faster: 5.0 to 6.2"), RoundJet);
}
