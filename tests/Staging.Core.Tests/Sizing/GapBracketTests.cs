using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Tests.Discharge;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

/// <summary>Three questions over what is unknown.</summary>
public class GapBracketTests
{
    private static readonly VentLayout Two = new() { HoleCount = 2 };
    private static readonly GapProblem OneHole = Vented(StartingGaps.Bore18mm, 1);
    private static readonly GapBracket Bracket = OneHole.Bracket(Two);

    [Fact]
    public void Every_corner_is_the_gap_with_those_ends()
    {
        Assert.Equal(16, Bracket.Cases.Length);
        Assert.Equal(16, Bracket.Cases.Select(c => string.Join(',', c.Ends)).Distinct().Count());
        GapSource.EndBurner motor = StartingGaps.Booster with { FreshFaceDelay = Duration.Zero, SpeedShare = 1 };
        GapProblem corner = OneHole.With(source: motor);
        corner = corner.With(d => d with
        {
            MixingAndHeat = d.MixingAndHeat with { ParticleEfficiency = 0.6 },
            Grain = d.Grain with { IgnitionTemperature = Temperature.FromKelvins(650) },
        });
        BracketCase found = Assert.Single(Bracket.Cases, c => c.Ends.SequenceEqual(["lit at once", "fast", "0.6", "650 K"]));
        GapRun run = corner.Solve(options: SolverOptions.ForStudies);
        Assert.Equal(run.Outcome.GetType(), found.Outcome.GetType());
        Assert.Equal(run.Outcome.Time, found.Outcome.Time);
        Assert.Equal(run.PeakGaugePressure, found.PeakGaugePressure);
    }

    /// <summary>The estimate of a burn-through is asked for 1 to 200 kPa; a gap may see less, and a bracket answers there too.</summary>
    [Fact]
    public void A_bracket_in_thin_air_answers()
    {
        GapProblem thin = OneHole with { Surroundings = OneHole.Surroundings with { Pressure = Pressure.FromPascals(150) } };
        Assert.Throws<ArgumentOutOfRangeException>(() => StartingGaps.Booster.BurnThrough(thin.Surroundings.Pressure));
        Assert.Equal(16, thin.Bracket(Two).Cases.Length);
    }

    /// <summary>Bodies pressed together by meganewtons bear more than any law of burning is asked for: throat and leak pass all there.</summary>
    [Fact]
    public void A_bracket_of_a_joint_that_bears_gigapascals_answers()
    {
        GapBracket pressed = (OneHole with
        {
            Bodies = new SeparatingBodies
            {
                MassAhead = Mass.FromTonnes(30),
                MassBehind = Mass.FromTonnes(30),
                ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(1000),
            },
        }).Bracket(Two);
        Assert.Equal(BracketVerdict.Throughout, pressed.JointHolds);
        Assert.Equal(0, pressed.AllFacesSteadyVent!.Value.SquareMillimeters);
    }

    [Fact]
    public void One_hole_lights_in_part_of_the_bracket()
    {
        Assert.Equal(BracketVerdict.InPart, Bracket.Lights);
        Assert.Equal(BracketVerdict.InPart, Bracket.JointHolds);
        Assert.Contains(Bracket.Decides!, Bracket.Verdict, StringComparison.Ordinal);
        Assert.All(Bracket.Unknowns, u => Assert.True(Bracket.Turns(u) <= Bracket.Turns(Bracket.Decides!)));
    }

    [Fact]
    public void Heat_does_not_move_the_joint()
    {
        foreach (IGrouping<string, BracketCase> gas in Bracket.Cases.GroupBy(c => $"{c.Ends[0]}, {c.Ends[1]}"))
            Assert.Single(gas.Select(c => c.JointOpens).Distinct());
    }

    [Fact]
    public void A_joint_that_cannot_open_holds_throughout_and_a_closed_gap_lights_nowhere()
    {
        Assert.Equal(BracketVerdict.Throughout, OneHole.With(breakaway: Force.FromNewtons(500)).Bracket(Two).JointHolds);
        GapBracket closed = StartingGaps.Bore18mm.Bracket(Two);
        Assert.Equal(BracketVerdict.Nowhere, closed.Lights);
        Assert.Equal(BracketVerdict.Nowhere, closed.JointHolds);
        Assert.Null(closed.Decides);
    }

    /// <summary>What lights has an upper edge too, which a bracket does not look for.</summary>
    [Fact]
    public void The_least_area_is_not_said_to_have_no_upper_bound()
    {
        Assert.StartsWith(FormattableString.Invariant($"Vents: {Bracket.OldFacesVent!.Value.SquareMillimeters:F0} mm2 is the least seen to light where "),
            BracketText.Vents(Bracket), StringComparison.Ordinal);
        Assert.DoesNotContain("or more", BracketText.Vents(Bracket), StringComparison.Ordinal);
    }

    [Fact]
    public void More_gas_asks_for_more_vent_area()
    {
        Assert.True(Bracket.AllFacesVent > Bracket.OldFacesVent);
        Assert.True(Bracket.AllFacesSteadyVent > Bracket.OldFacesSteadyVent);
    }

    [Fact]
    public void The_steady_area_does_not_depend_on_the_length_of_the_gap()
    {
        GapBracket far = Vented(StartingGaps.Bore18mm.With(length: Length.FromMillimeters(400)), 1).Bracket(Two);
        Assert.Equal(Bracket.OldFacesSteadyVent, far.OldFacesSteadyVent);
        Assert.True(far.Arrival!.Value.Fast > Bracket.Arrival!.Value.Fast);
    }

    /// <summary>Two motors make twice the gas of one and let it out through two throats: without a leak, twice the area is left for vents.</summary>
    [Fact]
    public void Two_motors_ask_for_twice_the_steady_area_of_one()
    {
        GapProblem one = OneHole.With(d => d with { Joint = d.Joint.Coupler with { LeakArea = Area.Zero } });
        GapBracket single = one.Bracket(Two);
        GapBracket pair = one.With(source: new GapSource.Cluster { Motors = [StartingGaps.Booster, StartingGaps.Booster] }).Bracket(Two);
        Assert.Equal(2 * single.OldFacesSteadyVent!.Value.SquareMeters, pair.OldFacesSteadyVent!.Value.SquareMeters, 1e-15);
        Assert.Equal(2 * single.AllFacesSteadyVent!.Value.SquareMeters, pair.AllFacesSteadyVent!.Value.SquareMeters, 1e-15);
    }

    [Fact]
    public void A_joint_that_bears_no_pressure_has_no_steady_area()
    {
        GapProblem pulled = OneHole with { Bodies = OneHole.Bodies with { ClosingAcceleration = -OneHole.Bodies.ClosingAcceleration } };
        GapBracket loose = pulled.With(breakaway: Force.Zero).Bracket(Two);
        Assert.Null(loose.OldFacesSteadyVent);
        Assert.Null(loose.AllFacesSteadyVent);
        Assert.NotNull(loose.Arrival);
        Assert.EndsWith("no area keeps a joint closed that bears no pressure.", BracketText.Vents(loose));
    }

    /// <summary>The least area was seen to light, and 8 % less of it was seen not to: three halvings of a factor of 1.5.</summary>
    [Fact]
    public void The_least_area_is_an_edge()
    {
        GapProblem old = OneHole.With(source: StartingGaps.Booster with { FreshFaceDelay = Duration.FromSeconds(10) });
        Assert.True(old.WithVents(Two, Bracket.OldFacesVent!.Value).Solve().Outcome.IsLitBeforeParting);
        Assert.False(old.WithVents(Two, 0.92 * Bracket.OldFacesVent.Value).Solve().Outcome.IsLitBeforeParting);
    }

    [Fact]
    public void Where_no_corner_was_solved_nothing_is_claimed()
    {
        GapBracket none = OneHole.Bracket(Two, options: new SolverOptions { MaxSteps = 1 });
        Assert.Equal("None of 16 corners of what is unknown was solved.", none.Verdict);
        Assert.Equal((BracketVerdict.Nowhere, BracketVerdict.Nowhere), (none.Lights, none.JointHolds));
        Assert.Null(none.Decides);
        Assert.Equal("Joint of 20 N: not known.", BracketText.Joint(none));
        Assert.Contains("gas alone was not solved", BracketText.Fire(none), StringComparison.Ordinal);
        Assert.Contains("none was seen to light where fresh faces of the pieces are never lit", BracketText.Vents(none), StringComparison.Ordinal);
    }

    /// <summary>A law that knows nothing above the middle of the peaks leaves the corners with the higher ones unsolved: the answers are those of the others.</summary>
    [Fact]
    public void A_corner_that_was_not_solved_neither_holds_nor_lights()
    {
        double[] peaks = [.. Bracket.Cases.Select(c => c.PeakGaugePressure.Pascals).Order()];
        GapBracket part = OneHole.With(d => d with { DischargeLaw = new UndefinedAbove(0.5 * (peaks[7] + peaks[8])) }).Bracket(Two);
        BracketCase[] solved = [.. part.Cases.Where(c => c.Outcome is not GapOutcome.NotSolved)];
        Assert.Equal(8, solved.Length);
        Assert.Equal(Over(solved.Count(c => c.JointOpens is null)), part.JointHolds);
        Assert.Equal(Over(solved.Count(c => c.Outcome.IsLitBeforeParting)), part.Lights);
        Assert.Contains("of 8 corners of what is unknown", part.Verdict, StringComparison.Ordinal);
        Assert.EndsWith("; 8 more were not solved.", part.Verdict, StringComparison.Ordinal);
        Assert.Equal(0, part.Turns("fresh faces of the pieces"));

        static BracketVerdict Over(int holding) =>
            holding == 0 ? BracketVerdict.Nowhere : holding == 8 ? BracketVerdict.Throughout : BracketVerdict.InPart;
    }

    [Fact]
    public void A_source_without_pieces_has_the_unknowns_of_the_grain_alone()
    {
        GapBracket stated = Bench.Gap.Bracket(Two);
        Assert.Equal(["particle efficiency", "ignition temperature"], stated.Unknowns);
        Assert.Equal(4, stated.Cases.Length);
        Assert.Null(stated.GasAlone);
        Assert.Null(stated.Arrival);
        Assert.Null(stated.OldFacesVent);
    }

    [Fact]
    public void Pieces_that_come_light_it_and_the_outcome_says_so()
    {
        GapOutcome.Lit thrown = Assert.IsType<GapOutcome.Lit>(Vented(StartingGaps.Bore18mm, 2).Solve().Outcome);
        Assert.Equal(IgnitionPath.Pieces, thrown.Path);
        Assert.Contains("by burning pieces before the nozzle", thrown.Cause, StringComparison.Ordinal);
        GapProblem gas = Vented(StartingGaps.Bore18mm, 2).With(source: StartingGaps.Booster with { PieceSpeed = Speed.Zero });
        Assert.Equal(IgnitionPath.Gas, Assert.IsType<GapOutcome.Lit>(gas.Solve().Outcome).Path);
    }

    [Fact]
    public void The_text_answers_each_question_in_lines_of_100()
    {
        string text = Bracket.ToString();
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 1, 100));
        foreach (string word in new[] { "Lights in", "Joint of 20 N", "Burning pieces come after", "Vents:", "steady flow", "Droplets" })
            Assert.Contains(word, text, StringComparison.Ordinal);
    }

    private static GapProblem Vented(GapProblem gap, int holes) => gap.With(vents:
    [
        Vent.BelowNozzle(gap.Design.Tube,
            new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = holes }, Length.FromMillimeters(1)),
    ]);
}
