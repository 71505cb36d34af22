using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Joints of every kind in whole runs.</summary>
public class JointTests
{
    private static readonly FrictionJoint Coupler = Bench.Joint(5);

    public static TheoryData<GapModel> Models => [new GapModel.TwoZone(), new GapModel.OneDimensional { Cells = 60 }];

    /// <summary>The gas gives the bodies a push and is gone; what rubs on nothing goes on by itself, and parts. One that rubs comes to rest, and the gap is spent then.</summary>
    [Theory]
    [MemberData(nameof(Models))]
    public void A_joint_that_slides_when_the_gas_is_spent_comes_to_its_own_end(GapModel model)
    {
        GapProblem brief = Bench.Gap with { Bodies = Bench.Gap.Bodies with { ClosingAcceleration = Acceleration.Zero }, Horizon = Duration.FromMilliseconds(200) };
        brief = brief.With(d => d with { Source = d.Fed([0, 0.002, 0.0021], [0.01, 0.01, 0], [1800, 1800, 1800]) });
        FrictionJoint loose = Bench.Joint(4, 60) with { SlidingForce = Force.Zero };
        GapRun opens = brief.With(d => d with { Joint = loose }).Solve(model);
        Assert.IsType<GapOutcome.PushedApart>(opens.Outcome);
        Duration opened = opens.TimeOf(GapEventKind.JointOpens)!.Value;
        Assert.True(opens.At(opened).GapPressure.Pascals < 1.01 * Bench.Gap.Surroundings.Pressure.Pascals);

        GapRun rests = brief.With(d => d with { Joint = Bench.Joint(4, 60) }).Solve(model);
        Assert.Null(rests.TimeOf(GapEventKind.JointOpens));
        Assert.True(rests.TimeOf(GapEventKind.JointMoves) < rests.TimeOf(GapEventKind.Spent));
    }

    [Fact]
    public void A_coupler_written_where_a_joint_is_asked_for_is_a_friction_fit()
    {
        StageJoint joint = Coupler;
        Assert.Null(joint.Tape);
        Assert.Null(joint.MovingMass);
        Assert.Same(Coupler, joint.Coupler);
    }

    [Fact]
    public void Tape_without_strength_is_the_coupler_alone()
    {
        JointTape none = JointTape.PaperTape with { Strength = Force.Zero };
        GapRun plain = Bench.Gap.With(d => d with { Joint = Coupler }).Solve(), taped = Solve(none);
        // The film is integrated along, so the steps differ: both to the tolerance of 1e-8 a step, some hundred steps.
        Same(plain, taped, GapEventKind.JointMoves, 1e-6);
        Same(plain, taped, GapEventKind.JointOpens, 1e-6);
    }

    [Fact]
    public void Tape_that_the_gas_never_softens_adds_its_strength_to_the_breakaway_force()
    {
        JointTape cold = JointTape.PaperTape with { Strength = Force.FromNewtons(12), GasContact = HeatTransferCoefficient.Zero };
        GapRun firmer = Bench.Gap.With(d => d with { Joint = Coupler with { BreakawayForce = Force.FromNewtons(17) } }).Solve(), taped = Solve(cold);
        Same(firmer, taped, GapEventKind.JointMoves, 1e-6);
        Same(firmer, taped, GapEventKind.JointOpens, 1e-6);
    }

    /// <summary>A film that the air has already softened holds nothing: the coupler alone does.</summary>
    [Theory]
    [InlineData(320)]
    [InlineData(330)]
    public void Tape_that_is_soft_already_is_the_coupler_alone(double softening)
    {
        GapProblem warm = Bench.Gap with { Surroundings = Bench.Gap.Surroundings with { Temperature = Temperature.FromKelvins(330) } };
        JointTape soft = JointTape.ThinPlasticFilm with { SofteningTemperature = Temperature.FromKelvins(softening) };
        foreach (GapModel model in (GapModel[])[new GapModel.TwoZone(), new GapModel.OneDimensional { Cells = 40 }])
        {
            GapRun plain = warm.With(d => d with { Joint = Coupler }).Solve(model), taped = warm.With(d => d with { Joint = StageJoint.Taped(Coupler, soft) }).Solve(model);
            Same(plain, taped, GapEventKind.JointMoves, 1e-6);
            Same(plain, taped, GapEventKind.JointOpens, 1e-6);
        }
    }

    /// <summary>A joint that has come to rest on its way holds by the length still engaged.</summary>
    [Fact]
    public void Half_out_a_joint_asks_for_half_the_force()
    {
        GapParameters p = GapToSi.ToSi(Bench.Gap.With(d => d with { Joint = Coupler }));
        var held = new JointMechanics(p, JointPhase.Held);
        double[] y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        y[StateLayout.Slide] = 0.5 * p.Engagement;
        Assert.Equal(0.5 * p.Breakaway, held.Breakaway<Real>(0.5 * p.Engagement), 1e-12);
        double threshold = p.OutsidePressure + (0.5 * p.Breakaway + p.ReducedMass * p.ClosingAcceleration) / p.JointArea;
        Assert.True(held.Moving(1.001 * threshold, y) > 0);
        Assert.True(held.Moving(0.999 * threshold, y) < 0);
    }

    /// <summary>Passages into the wake vent against its pressure.</summary>
    [Fact]
    public void Rear_passages_see_the_pressure_of_the_wake()
    {
        GapProblem Flying(double coefficient) => Bench.Gap.With(d => d with
        {
            Joint = StageJoint.FreeMotorTube(Bench.Joint(2000), Mass.FromGrams(20), Holes(2, 4), coefficient),
        }) with
        { DynamicPressure = Pressure.FromKilopascals(10), Horizon = Duration.FromMilliseconds(15) };
        foreach (GapModel model in (GapModel[])[new GapModel.TwoZone(), new GapModel.OneDimensional { Cells = 40 }])
            Assert.InRange(Flying(-0.2).Solve(model).PeakGaugePressure / Flying(0).Solve(model).PeakGaugePressure, 0.9, 0.999);
        // Air that blows in at the booster's end before it has opened, in a tube of next to no length.
        GapProblem ram = Flying(1).With(d => d with { Tube = Bench.Tube(2), Vents = [] });
        Assert.All((GapModel[])[new GapModel.TwoZone(), new GapModel.WellStirred()], m => Assert.IsNotType<GapOutcome.NotSolved>(ram.Solve(m).Outcome));
        Assert.Contains((Flying(-1.5) with { DynamicPressure = Pressure.FromKilopascals(80) }).Check(), f => f.Code == "GAP030" && f.Path == "Joint.RearPressureCoefficient");
    }

    [Fact]
    public void Thin_plastic_film_goes_in_milliseconds_and_paper_tape_does_not()
    {
        // From their inputs alone, gas of 1900 K. Nominal, and with every input at the favourable or the adverse end of its stated range.
        Temperature gas = Temperature.FromKelvins(1900), air = Temperature.FromKelvins(288);
        double Ms(JointTape tape) => tape.TimeToSoften(gas, air)!.Value.Milliseconds;
        Assert.InRange(Ms(JointTape.ThinPlasticFilm), 5, 20);
        Assert.InRange(Ms(Film(40, 0.25, 900, 1300, 355, 2000)), 0.5, 5);
        Assert.InRange(Ms(Film(60, 0.12, 1400, 1900, 435, 250)), 40, 80);
        Assert.InRange(Ms(JointTape.PaperTape), 60, 150);
        Assert.InRange(Ms(Paper(110, 0.16, 700, 1300, 500, 2000)), 15, 60);
        Assert.InRange(Ms(Paper(180, 0.06, 950, 1600, 600, 250)), 200, 500);
        Assert.True(Ms(JointTape.PaperTape) > 5 * Ms(JointTape.ThinPlasticFilm));
    }

    [Fact]
    public void In_a_run_plastic_film_lets_go_while_paper_tape_still_holds()
    {
        // Tapes too strong for the gap pressure to tear cold: what lets go has been softened.
        GapRun cold = Solve(JointTape.ThinPlasticFilm with { GasContact = HeatTransferCoefficient.Zero });
        Assert.Null(cold.TimeOf(GapEventKind.JointMoves));
        GapRun film = Solve(JointTape.ThinPlasticFilm), paper = Solve(JointTape.PaperTape);
        Assert.InRange(film.TimeOf(GapEventKind.JointMoves)!.Value.Milliseconds, 1, 20);
        Assert.Null(paper.TimeOf(GapEventKind.JointMoves));
    }

    [Fact]
    public void A_free_motor_tube_that_weighs_as_the_booster_is_the_booster()
    {
        GapRun whole = Bench.Gap.With(d => d with { Joint = Coupler }).Solve();
        GapRun tube = Bench.Gap.With(d => d with { Joint = Tube(Bench.Gap.Bodies.MassBehind.Grams, null) }).Solve();
        Same(whole, tube, GapEventKind.JointMoves, 1e-12);
        Same(whole, tube, GapEventKind.JointOpens, 1e-12);
    }

    [Fact]
    public void A_lighter_motor_tube_slides_out_sooner_and_rear_passages_delay_it()
    {
        GapRun heavy = Solved(Tube(40, null)), light = Solved(Tube(15, null)), vented = Solved(Tube(15, Holes(4, 4)));
        double Opens(GapRun run) => run.TimeOf(GapEventKind.JointOpens)!.Value.Seconds;
        Assert.True(Opens(light) < Opens(heavy));
        Assert.True(Opens(vented) > Opens(light));
        Assert.True(vented.PeakGaugePressure < light.PeakGaugePressure);
        Assert.InRange(vented.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(vented.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    [Fact]
    public void A_motor_tube_as_heavy_as_both_bodies_is_refused()
    {
        GapProblem gap = Bench.Gap.With(d => d with { Joint = Tube(100, null) });
        ModelFinding finding = Assert.Single(gap.Check(), f => f.Severity == FindingSeverity.Error);
        Assert.Equal(("GAP040", "Joint.MovingMass"), (finding.Code, finding.Path));
    }

    private static JointTape Film(double micrometres, double k, double rho, double c, double soft, double h) => JointTape.ThinPlasticFilm with
    {
        Thickness = Length.FromMicrometers(micrometres),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(k),
        Density = Density.FromKilogramsPerCubicMeter(rho),
        HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(c),
        SofteningTemperature = Temperature.FromKelvins(soft),
        GasContact = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(h),
    };

    private static JointTape Paper(double micrometres, double k, double rho, double c, double soft, double h) => Film(micrometres, k, rho, c, soft, h);

    private static StageJoint Tube(double grams, VentHoles? rear) =>
        StageJoint.FreeMotorTube(Coupler, Mass.FromGrams(grams), rear);

    private static VentHoles Holes(int count, double millimetres) =>
        new() { Count = count, Diameter = Length.FromMillimeters(millimetres), WallThickness = Length.FromMillimeters(1) };

    private static GapRun Solve(JointTape tape) => Solved(StageJoint.Taped(Coupler, tape));

    private static GapRun Solved(StageJoint joint) => Bench.Gap.With(d => d with { Joint = joint }).Solve();

    private static void Same(GapRun a, GapRun b, GapEventKind kind, double relative) =>
        Assert.Equal(a.TimeOf(kind)!.Value.Seconds, b.TimeOf(kind)!.Value.Seconds, relative * a.TimeOf(kind)!.Value.Seconds);
}
