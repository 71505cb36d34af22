using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

public class GapWindowsTests
{
    private static readonly GapQuestion Nominal = new()
    {
        Problem = StartingGaps.Bore18mm.With(d => d with { Source = Bench.Design.Source }), // a stated pulse, which a long gap cools too far
        Layout = new VentLayout { HoleCount = 4, WallThickness = Length.FromMillimeters(0.5), Land = Length.FromMillimeters(1), Drills = DrillSeries.MetricHalves },
    };

    private static readonly Axis Areas = Axis.Factors("vent area", "mm2", 10, 400, 6);

    [Fact]
    public void The_vent_window_closes_as_the_gap_grows()
    {
        SweepLine<WindowResult> map = Nominal.VentWindows(Axis.Even("gap", "mm", 100, 260, 3), Areas);
        Window near = map.Results[0].Widest!, far = map.Results[1].Widest!;
        Assert.True(far.Low > near.Low && far.High / far.Low < near.High / near.Low);
        Assert.Empty(map.Results[2].Windows);
    }

    [Fact]
    public void An_edge_of_the_vent_window_is_where_the_outcome_turns()
    {
        Window window = Nominal.VentWindow(Length.FromMillimeters(120), Areas).Widest!;
        Assert.True(Runs(120, window.Low).Outcome.IsLit);
        Assert.False(Runs(120, window.Low / 1.025).Outcome.IsLit);
    }

    [Fact]
    public void The_longest_gap_is_the_last_that_lights()
    {
        Window window = Nominal.LongestGap(Area.FromSquareMillimeters(113), Axis.Even("gap", "mm", 100, 400, 4)).Widest!;
        Assert.True(Runs(window.High, 113).Outcome.IsLit);
        Assert.False(Runs(window.High + 1.1, 113).Outcome.IsLit);
    }

    [Fact]
    public void The_least_retention_is_the_first_that_holds()
    {
        // A little below the vent window the joint decides: a firmer one lights what twenty newtons push apart.
        Assert.IsType<GapOutcome.PushedApart>(Runs(120, 34).Outcome);
        Window window = Nominal.MinRetention(Length.FromMillimeters(120), Area.FromSquareMillimeters(34), Axis.Even("breakaway", "N", 5, 60, 5)).Widest!;
        Assert.InRange(window.Low, 20, 60);
        Assert.False(window.LowIsEndOfSearch);
    }

    [Fact]
    public void A_probability_asked_for_narrows_the_window()
    {
        GapQuestion asked = Nominal with { Uncertain = [GapInputs.Breakaway(Distribution.Triangular(10, 20, 30))], Asked = new Assurance { Probability = 0.8, Cases = 20, Confidence = 0.8 } };
        Axis near = Axis.Factors("vent area", "mm2", 25, 60, 3);
        Length gap = Length.FromMillimeters(120);
        Assert.True(asked.VentWindow(gap, near).Widest!.Low > Nominal.VentWindow(gap, near).Widest!.Low);
    }

    [Fact]
    public void Axes_have_to_be_in_the_unit_of_the_answer() =>
        Assert.Throws<ArgumentException>(() => Nominal.LongestGap(Area.FromSquareMillimeters(30), Axis.Even("gap", "m", 0.1, 0.4, 4)));

    [Fact]
    public void A_point_that_cannot_be_built_is_told_with_its_gap_and_area()
    {
        // Four holes of a ten-thousandth of a square millimetre are 0.006 mm wide.
        ModelFinding finding = Refusal(() => Nominal.VentWindow(Length.FromMillimeters(120), Axis.Factors("vent area", "mm2", 1e-4, 100, 3)));
        Assert.Equal("STU015", finding.Code);
        Assert.Contains("At a gap of 120 mm with 0.0001 mm2 of vents", finding.Message, StringComparison.Ordinal);
        // A gap in error is told with its place too.
        GapDesign design = Nominal.Problem.Design;
        GapQuestion slips = Nominal with { Problem = Nominal.Problem with { Design = design with { Joint = design.Joint.Coupler with { SlidingForce = Force.FromNewtons(30) } } } };
        ModelFinding error = Refusal(() => slips.VentWindows(Axis.Even("gap", "mm", 100, 200, 2), Areas));
        Assert.Equal("GAP004", error.Code);
        Assert.Contains("At a gap of 100 mm with 10 mm2 of vents", error.Message, StringComparison.Ordinal);
        // Asked for a probability it is refused as well: cases that all fail for that are no answer.
        GapQuestion slipsSurely = slips with { Uncertain = [GapInputs.FragmentMass(Distribution.Uniform(0.1, 0.3))], Asked = new Assurance { Probability = 0.5, Confidence = 0.8, Cases = 20 } };
        Assert.Equal(error.Message, Refusal(() => slipsSurely.VentWindows(Axis.Even("gap", "mm", 100, 200, 2), Areas)).Message);
        Assert.Contains("a joint of 5 N", Refusal(() => Nominal.MinRetention(Length.FromMillimeters(120), Area.FromSquareMillimeters(1e-4), Axis.Even("breakaway", "N", 5, 60, 5))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_probability_of_nothing_uncertain_is_refused()
    {
        var asked = new Assurance { Probability = 0.8, Cases = 20, Confidence = 0.8 };
        GapQuestion certain = Nominal with { Asked = asked };
        Length gap = Length.FromMillimeters(120);
        Area total = Area.FromSquareMillimeters(60);
        Axis gaps = Axis.Even("gap", "mm", 100, 400, 4), forces = Axis.Even("breakaway", "N", 5, 60, 5);
        Action[] questions = [() => certain.VentWindow(gap, Areas), () => certain.VentWindows(gaps, Areas), () => certain.LongestGap(total, gaps), () => certain.MinRetention(gap, total, forces)];
        Assert.All(questions, q => Assert.Equal(("STU001", "Uncertain"), (Refusal(q).Code, Refusal(q).Path)));
        // Asked for the retention, an uncertain retention is left out, and nothing remains.
        GapQuestion joint = certain with { Uncertain = [GapInputs.Breakaway(Distribution.Triangular(10, 20, 30))] };
        Assert.Equal("STU001", Refusal(() => joint.MinRetention(gap, total, forces)).Code);
        Assert.Equal("STU008", Refusal(() => (joint with { Asked = asked with { Probability = 0.99 } }).VentWindow(gap, Areas)).Code);
    }

    [Fact]
    public void Judged_inputs_each_change_what_they_name()
    {
        GapProblem start = StartingGaps.Bore18mm;
        InputSet<GapProblem> judged = new(start, GapInputs.Judged);
        GapDesign changed = judged.At([30, 4, 15, 3, 5, 0.2, 40, 0.6, 750, 0.5, 0.3, 300, 0.4, 2, 0.7, 1.2, 6]).Design;
        FrictionJoint joint = changed.Joint.Coupler;
        Assert.Equal((30, 24, 4), (joint.BreakawayForce.Newtons, Math.Round(joint.SlidingForce.Newtons, 9), Math.Round(joint.LeakArea.SquareMillimeters, 9)));
        var motor = Assert.IsType<GapSource.EndBurner>(changed.Source);
        Assert.Equal((15, 3, 5), (Math.Round(motor.Rate.RateAtOneAtmosphere.MillimetersPerSecond, 9), Math.Round(motor.Strength.Megapascals, 9), motor.RadialCracks));
        Assert.Equal((0.2, 40, 0.6), (motor.SpeedShare, Math.Round(motor.FreshFaceDelay.Milliseconds, 9), motor.Products.GasMassFraction));
        Assert.Equal((750, 0.5, 0.3), (changed.Grain.IgnitionTemperature.Kelvins, changed.Grain.Conductivity.WattsPerMeterKelvin, changed.MixingAndHeat.ParticleEfficiency));
        MixingAndHeat closures = changed.MixingAndHeat;
        Assert.Equal((300, 0.4, 2), (closures.WallHeatTransfer.WattsPerSquareMeterKelvin, closures.Emissivity, closures.FrontThicknessInBores));
        Assert.Equal((0.7, 1.2, 6), (closures.DeadEndExchange, closures.StirringReachInBores, closures.FreeJetCoreInBores));
    }

    /// <summary>Taped motors in contact, or a motor tube that slides freely: no force to scatter.</summary>
    [Fact]
    public void A_joint_without_friction_has_no_judged_breakaway()
    {
        GapDesign held = StartingGaps.Bore18mm.Design, loose = StartingGaps.Bore18mm.With(breakaway: Force.Zero).Design;
        string[] all = [.. GapInputs.JudgedFor(held).Select(i => i.Path)];
        Assert.Contains("joint.breakaway", all);
        Assert.Equal(all.Where(path => path != "joint.breakaway"), GapInputs.JudgedFor(loose).Select(i => i.Path));
    }

    [Fact]
    public void Judged_inputs_of_a_stated_pulse_are_its_own()
    {
        GapProblem pulse = Nominal.Problem;
        InputSet<GapProblem> judged = new(pulse, [.. GapInputs.JudgedFor(pulse.Design).Where(i => i.Path.StartsWith("source.", StringComparison.Ordinal))]);
        GapDesign changed = judged.At([0.25, 20, 9, 2, 0.6]).Design;
        Assert.Equal((0.25, 20, 0.6), (Math.Round(changed.Web().Mass.Grams, 9), Math.Round(changed.Web().Time.Milliseconds, 9), changed.Source.Products.GasMassFraction));
        Assert.Equal((9, 2), (Math.Round(changed.Motor().OpeningDiameter.Millimeters, 9), Math.Round(changed.Motor().OpeningTime.Milliseconds, 9)));
        Assert.Equal(900, GapInputs.ChamberPressure(Distribution.Uniform(800, 1000)).With(pulse, 900).Motor().ChamberPressure.Kilopascals, 1e-9);
        // An input of the one kind of source does not belong to the other.
        Assert.Throws<ArgumentException>(() => GapInputs.FragmentMass(Distribution.Uniform(0.1, 0.3)).With(StartingGaps.Bore18mm, 0.2));
        Assert.Throws<ArgumentException>(() => GapInputs.Strength(Distribution.Uniform(2, 10)).With(pulse, 5));
    }

    [Fact]
    public void Judged_inputs_hold_every_closure_and_the_starting_value_of_each()
    {
        string[] numbers = [.. typeof(MixingAndHeat).GetProperties().Where(p => p.PropertyType == typeof(double) || p.PropertyType == typeof(HeatTransferCoefficient)).Select(p => p.Name)];
        Assert.Equal(numbers.Length, GapInputs.Judged.Count(i => i.Path.StartsWith("closures.", StringComparison.Ordinal)));
        // The likeliest value of every triangle is the one of the starting gap: put in, it changes nothing. Only its joint is tight, where some leak is likeliest.
        foreach (StudyInput<GapProblem> input in GapInputs.Judged.Where(i => i.Spread.Shape is DistributionShape.Triangular && i.Path != "joint.leak"))
            Assert.Equal(Told(StartingGaps.Bore18mm), Told(input.With(StartingGaps.Bore18mm, ((DistributionShape.Triangular)input.Spread.Shape).Mode)));

        static string Told(GapProblem p) => string.Join("|", p.Design.MixingAndHeat, p.Design.Source, p.Design.Grain, p.Design.Joint.Coupler);
    }

    private static ModelFinding Refusal(Action act) => Assert.Throws<InvalidModelException>(act).Findings[0];

    private static GapRun Runs(double gap_mm, double area_mm2)
    {
        GuideTube tube = Nominal.Problem.Design.Tube with { Length = Length.FromMillimeters(gap_mm) };
        return (Nominal.Problem with { Design = Nominal.Problem.Design with { Tube = tube } })
            .WithVents(Nominal.Layout, Area.FromSquareMillimeters(area_mm2)).Solve();
    }
}
