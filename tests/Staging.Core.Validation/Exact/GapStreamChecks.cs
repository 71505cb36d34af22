using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Validation.GapCheck;

namespace Staging.Core.Validation.Exact;

/// <summary>
/// Whole runs and parts of the gap models where a gas as cold as the air, or of one temperature, makes them problems of a textbook: a plug, a stirred tank, a
/// vessel that blows down, holes in series, two bodies that part.
/// </summary>
public class GapStreamChecks
{
    private const double T = 288.15, P = 101_325, R = 287.05287;

    private static readonly Provenance Tank = Formula("O. Levenspiel, Chemical Reaction Engineering, flow through a plug and through a stirred tank: "
        + "x = v t and F = 1 - exp(-t/tau)");

    private static readonly Provenance Blowdown = Formula("Choked adiabatic blow-down of a vessel, any textbook of gas dynamics: "
        + "p/p0 = (1 + (g - 1)/2 m t)^(-2 g/(g - 1)), m the first mass flow over the first mass");

    private static readonly Provenance Series = Formula("NACA Report 1135 (1953), isentropic mass flow through both holes from rest to rest, pressures by bisection");

    private static readonly Provenance TwoBodies = Formula("Newton's second law for two bodies, 1/mu = 1/m1 + 1/m2, with friction that falls with the length e "
        + "still engaged: s'' = b + w^2 s, s = b/w^2 (cosh w t - 1), b = a - F/mu, w^2 = F/(mu e)");

    /// <summary>Products that are air in all but name, fed cold and evenly: nothing but the gas they push aside counts.</summary>
    private static readonly DustyGas Marked = new()
    {
        Name = "marked air",
        Gas = PerfectGas.DryAir with { Name = "marked air" },
        GasMassFraction = 1,
        ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1000),
        Provenance = Given("given with the check"),
    };

    private static readonly GapProblem Plain = Gap(d => d with
    {
        MixingAndHeat = MixingAndHeat.Judged with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0, DeadEndExchange = 0, FrontThicknessInBores = 0.05 },
    });

    [Theory]
    [InlineData(0.25)]
    [InlineData(0.75)]
    public void Displacement_is_a_plug(double share)
    {
        GapProblem gap = Fed(2e-4, 6, 8);
        double speed = 2e-4 * R * T / P / (Math.PI / 4 * 18e-3 * 18e-3), time = share * 0.12 / speed;
        Verify($"front of a cold feed of 0.2 g/s in 18 mm after {time * 1e3:F0} ms, two zones", "mm", 1e3 * speed * time,
            gap.Solve().At(Duration.FromSeconds(time)).Front.Millimeters,
            Tolerance.FixedAmount(0.05, "the front begins 0.018 mm ahead, and the gap stands some pascals above the outside"), Tank);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_stirred_gap_is_a_stirred_tank(double taus)
    {
        GapProblem gap = Fed(2e-4, 6, 8);
        GapRun run = gap.Solve(new GapModel.WellStirred());
        double tau = GapToSi.ToSi(gap, stirred: true).TubeVolume / (2e-4 * R * T / P);
        Verify($"share of the feed in a stirred gap after {taus} times its volume", "-", 1 - Math.Exp(-taus), run.Course.At(taus * tau).HotProducts,
            Tolerance.FixedAmount(3e-4, "the gap stands some pascals above the outside; its last gas goes through the dead end"), Tank);
    }

    [Theory]
    [InlineData(800e3, 1e-4)]
    [InlineData(800e3, 3e-4)]
    [InlineData(400e3, 1e-4)]
    public void A_resolved_cell_blows_down(double pressure, double time)
    {
        const double volume = 5e-6, area = 5e-6, hot = 1000, g = 1.4;
        GapParameters p = GapToSi.ToSi(Plain);
        var parcel = new Parcel(0, pressure * volume / (R * hot), pressure * volume / (g - 1));
        for (int s = 0; s < 200; s++)
            VesselVent.Pass(ConstantCoefficientLaw.Ideal, new OrificeSize(area, Math.Sqrt(4 / Math.PI * area), 0), ref parcel, volume, time / 200, P, p);
        double rate = area / volume * Math.Sqrt(g * R * hot) * Math.Pow(2 / (g + 1), (g + 1) / (2 * (g - 1)));
        double expected = pressure * Math.Pow(1 + 0.5 * (g - 1) * rate * time, -2 * g / (g - 1));
        Assert.True(expected > 1.9 * P, "choked to the end");
        Verify($"vent of the resolved tube: {pressure / 1e3:F0} kPa of 1000 K after {time * 1e6:F0} us, 5 mm2 on 5 cm3", "Pa", expected,
            parcel.Zone(p).PressureVolume / volume, Tolerance.Relative(1e-5, "second order in the substep"), Blowdown);
    }

    /// <summary>A steady cold feed through two walls, in all three models; with 1.5 g/s and 10 and 15 mm2 both pressures are well above the outside.</summary>
    [Theory]
    [InlineData("two zones")]
    [InlineData("stirred")]
    [InlineData("resolved")]
    public void A_jacket_and_its_holes_are_holes_in_series(string name)
    {
        GapModel model = name switch { "two zones" => new GapModel.TwoZone(), "stirred" => new GapModel.WellStirred(), _ => new GapModel.OneDimensional { Cells = 20 } };
        GapProblem gap = Fed(1.5e-3, 1, 1) with { Horizon = Duration.FromMilliseconds(60) };
        Vent inner = Vent.BelowNozzle(gap.Design.Tube, Holes(10), Length.FromMillimeters(0.5)) with { To = VentTarget.IntoJacket("outer") };
        var outer = new Jacket { Name = "outer", Volume = Volume.FromCubicCentimeters(15), WallArea = Area.Zero, Openings = [new JacketOpening { Holes = Holes(15), To = VentTarget.Air }] };
        gap = gap with { Design = gap.Design with { DischargeLaw = ConstantCoefficientLaw.Ideal, Vents = [inner], Jackets = [outer] } };
        GapSnapshot end = gap.Solve(model).At(Duration.FromMilliseconds(59));
        double jacket = Upstream(1.5e-3, 15e-6, P), tube = Upstream(1.5e-3, 10e-6, jacket);
        var within = Tolerance.Relative(2e-3, "the speed along the tube is left out: its dynamic pressure is a few ten-thousandths; after 60 ms it is not quite steady");
        Verify($"pressure in a jacket, 1.5 g/s through 15 mm2, {name}", "Pa", jacket, end.JacketPressures[0].Pascals, within, Series);
        Verify($"pressure in the tube, 1.5 g/s through 10 and 15 mm2 in series, {name}", "Pa", tube, end.GapPressure.Pascals, within, Series);
    }

    /// <summary>Drag behind pulls two bodies apart that nothing holds and no gas pushes.</summary>
    [Theory]
    [InlineData("two zones", 60)]
    [InlineData("resolved", 60)]
    [InlineData("resolved", 200)]
    public void A_joint_opens_as_two_bodies_part(string name, double acceleration)
    {
        GapModel model = name == "two zones" ? new GapModel.TwoZone() : new GapModel.OneDimensional { Cells = 20 };
        GapProblem gap = Fed(1e-9, 6, 8);
        gap = gap with
        {
            Bodies = gap.Bodies with { ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(-acceleration) },
            Design = gap.Design with { Joint = gap.Design.Joint.Coupler with { BreakawayForce = Force.FromNewtons(0.5), SlidingForce = Force.FromNewtons(0.3) } },
        };
        double mu = 0.0585 * 0.030 / 0.0885, b = acceleration - 0.3 / mu, w = Math.Sqrt(0.3 / mu / 0.020);
        double expected = Math.Acosh(1 + 0.020 * w * w / b) / w;
        Verify($"time over 20 mm of engagement, pulled apart at {acceleration} m/s2 against 0.3 N, {name}", "ms", 1e3 * expected,
            gap.Solve(model).TimeOf(GapEventKind.JointOpens)!.Value.Milliseconds,
            Tolerance.Relative(5e-3, "air that is drawn in holds back by some thousandths of the pull"), TwoBodies);
    }

    /// <summary>The pressure from which a mass flow comes through an ideal hole.</summary>
    private static double Upstream(double m, double area, double behind)
    {
        double low = behind, high = 3 * behind;
        for (int i = 0; i < 100; i++)
        {
            double middle = 0.5 * (low + high), r = Math.Max(behind / middle, Math.Pow(2 / 2.4, 3.5));
            double flow = area * middle / Math.Sqrt(R * T) * Math.Sqrt(7 * (Math.Pow(r, 2 / 1.4) - Math.Pow(r, 2.4 / 1.4)));
            (low, high) = flow < m ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static GapProblem Fed(double flow, double diameter, int count) => Gap(Plain, d => d with
    {
        Source = GapSource.Tabulated.FromColumns(Marked, [0, 1], [flow, flow], [T, T], Given("given with the check")),
        Vents = [Vent.BelowNozzle(d.Tube, new VentHoles { Diameter = Length.FromMillimeters(diameter), WallThickness = Length.FromMillimeters(0.5), Count = count }, Length.FromMillimeters(0.5))],
        Joint = d.Joint.Coupler with { BreakawayForce = Force.FromNewtons(2000), SlidingForce = Force.FromNewtons(2000) },
    }) with
    { Horizon = Duration.FromSeconds(0.5) };

    private static GapProblem Gap(Func<GapDesign, GapDesign> change) => Gap(StartingGaps.Bore18mm, change);

    private static GapProblem Gap(GapProblem gap, Func<GapDesign, GapDesign> change) => gap with { Design = change(gap.Design) };

    private static VentHoles Holes(double squareMillimetres) => new()
    {
        Diameter = Length.FromMillimeters(Math.Sqrt(4 / Math.PI * squareMillimetres / 2)),
        WallThickness = Length.FromMillimeters(0.5),
        Count = 2,
    };

    private static Provenance Formula(string source) => new() { Source = source, How = Evidence.ComputedFromFormula };

    private static Provenance Given(string source) => new() { Source = source, How = Evidence.Invented };
}
