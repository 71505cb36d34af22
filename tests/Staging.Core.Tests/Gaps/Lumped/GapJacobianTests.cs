using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Tests.Gaps.OneDimensional;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Lumped;

/// <summary>The derivatives of a gap's slopes against differences of the slopes, and against what they have to conserve.</summary>
public class GapJacobianTests
{
    private static readonly GapProblem Vented = StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(30));

    public static TheoryData<string> Gaps { get; } = ["end burner", "ring", "stirred", "jackets", "cluster", "plates", "pulse", "fed", "open side", "taped"];

    /// <summary>In every phase of the joint, at moments of a real run: the best of four increments, both ways.</summary>
    [Theory]
    [MemberData(nameof(Gaps))]
    public void Derivatives_are_those_that_differences_tend_to(string name)
    {
        (GapProblem gap, bool stirred) = Gap(name);
        foreach ((GapParameters p, GapPhase phase, double t, double[] y) in Moments(gap, stirred))
        {
            int n = y.Length;
            (double[] jacobian, double[] timeSlope) = Written(p, phase, t, y);
            var system = new GapSystem(p, phase);
            double[] scales = GapToSi.Scales(p);
            for (int j = system.Integrals; j <= p.FirstLayer; j++)
            {
                // A share that is used up, or a way that is done, ends something at once; the stirred model has no cold parcel.
                if ((j >= p.FirstShare && j < p.FirstLayer && y[j] == 0) || (stirred && j is >= StateLayout.Cold and < StateLayout.DeadEnd))
                    continue;
                double[] column = j < p.FirstLayer ? Column(jacobian, n, j) : timeSlope;
                double largest = Enumerable.Range(0, n).Max(i => Math.Abs(column[i]) / scales[i]);
                double worst = double.PositiveInfinity;
                foreach (double share in (double[])[1e-4, 1e-5, 1e-6, 1e-7])
                {
                    double[] differences = j < p.FirstLayer ? ByState(system, t, y, j, share * Held(p, y, j)) : ByTime(system, t, share * 1e-3);
                    worst = Math.Min(worst, Enumerable.Range(0, n).Max(i => Math.Abs(differences[i] - column[i]) / scales[i]));
                }

                Assert.True(worst <= 2e-5 * largest + 1e-9, $"{name}, {phase.Joint} at {t} s, column {j}: {worst} of {largest}");
            }

            double[] ByTime(GapSystem system, double t, double h) => Difference(system, t - h, y, t + h, y, 2 * h);
        }
    }

    [Theory]
    [MemberData(nameof(Gaps))]
    public void Every_column_conserves_mass_and_energy(string name)
    {
        (GapProblem gap, bool stirred) = Gap(name);
        foreach ((GapParameters p, GapPhase phase, double t, double[] y) in Moments(gap, stirred))
        {
            (double[] jacobian, double[] timeSlope) = Written(p, phase, t, y);
            for (int j = 0; j <= p.FirstLayer; j++)
            {
                double[] column = j < p.FirstLayer ? Column(jacobian, y.Length, j) : timeSlope;
                GapTotals held = GapTotals.Of(p, column), sizes = GapTotals.Of(p, [.. column.Select(Math.Abs)]);
                double mass = column[StateLayout.Burnt] - column[StateLayout.MassOut], energy = column[StateLayout.BurntEnergy] - column[StateLayout.EnergyOut];
                Assert.InRange(held.Mass - mass, -1e-13 * (sizes.Mass + Math.Abs(mass)), 1e-13 * (sizes.Mass + Math.Abs(mass)));
                Assert.InRange(held.Energy - energy, -1e-13 * (sizes.Energy + Math.Abs(energy)), 1e-13 * (sizes.Energy + Math.Abs(energy)));
            }
        }
    }

    /// <summary>At rest everything stands at the pressure outside: no flow yet, but all of its derivatives.</summary>
    [Theory]
    [InlineData("end burner")]
    [InlineData("stirred")]
    [InlineData("jackets")]
    public void At_equal_pressures_no_derivative_is_lost(string name)
    {
        (GapProblem gap, bool stirred) = Gap(name);
        GapParameters p = GapToSi.ToSi(gap, stirred);
        var y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        var phase = new GapPhase(JointPhase.Held, 0, 1, -1);
        (double[] jacobian, _) = Written(p, phase, 0, y);
        double[] scales = GapToSi.Scales(p);
        int[] parcels = stirred ? [StateLayout.Hot, StateLayout.DeadEnd] : [StateLayout.Hot, StateLayout.Cold, StateLayout.DeadEnd];
        foreach (int j in (int[])[.. parcels, .. p.Jackets.Select(k => k.At)])
        {
            double[] column = Column(jacobian, y.Length, j + 2), differences = ByState(new GapSystem(p, phase), 0, y, j + 2, 1e-7 * y[j + 2]);
            double largest = Enumerable.Range(0, y.Length).Max(i => Math.Abs(column[i]) / scales[i]);
            for (int i = 0; i < y.Length; i++)
                Assert.InRange((differences[i] - column[i]) / scales[i], -2e-5 * largest, 2e-5 * largest);
            Assert.True(column[StateLayout.MassOut] > 0 || p.Jackets.Length > 0);
        }
    }

    /// <summary>The layers of a tape follow the gas and each other evenly: differences are then exact but for rounding.</summary>
    [Fact]
    public void Layers_of_a_tape_follow_each_other()
    {
        foreach ((GapParameters p, GapPhase phase, double t, double[] y) in Moments(Gap("taped").Gap, false))
        {
            (double[] jacobian, _) = Written(p, phase, t, y);
            for (int j = p.FirstLayer; j < y.Length; j++)
            {
                double[] column = Column(jacobian, y.Length, j), differences = ByState(new GapSystem(p, phase), t, y, j, 10);
                Assert.True(column[j] < 0);
                Assert.All(differences.Zip(column), d => Assert.Equal(d.First, d.Second, 1e-9 * Math.Abs(column[j])));
            }
        }
    }

    /// <summary>When the hole is fully open, the next phase begins: it grows no more.</summary>
    [Fact]
    public void An_open_hole_grows_no_more()
    {
        GapParameters p = GapToSi.ToSi(Bench.Gap);
        var y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        double open = p.Chambers[0].OpeningTime;
        Assert.True(Written(p, new GapPhase(JointPhase.Held, 0, 1, -1), 0.9 * open, y).TimeSlope[StateLayout.Hot] > 0);
        Assert.Equal(0, Written(p, new GapPhase(JointPhase.Held, open, 1, -1), open, y).TimeSlope[StateLayout.Hot]);
    }

    /// <summary>What a step takes along without solving for it rests, or nothing depends on it.</summary>
    [Theory]
    [MemberData(nameof(Gaps))]
    public void Integrals_rest_or_are_what_nothing_depends_on(string name)
    {
        (GapProblem gap, bool stirred) = Gap(name);
        foreach ((GapParameters p, GapPhase phase, double t, double[] y) in Moments(gap, stirred))
        {
            var system = new GapSystem(p, phase);
            Assert.Equal(phase.Joint == JointPhase.Held ? StateLayout.FirstParcel : StateLayout.Slide, system.Integrals);
            double[] slope = new double[y.Length], other = new double[y.Length], moved = [.. y];
            system.Derivative(t, y, slope);
            for (int j = 0; j < StateLayout.Slide; j++)
                moved[j] += 1;
            system.Derivative(t, moved, other);
            Assert.Equal(slope, other);
            Assert.All(slope[StateLayout.Slide..Math.Max(StateLayout.Slide, system.Integrals)], v => Assert.Equal(0, v));
        }
    }

    private static (GapProblem Gap, bool Stirred) Gap(string name)
    {
        var booster = (GapSource.EndBurner)Vented.Design.Source;
        Vent into = Vented.Design.Vents[0] with { To = VentTarget.IntoJacket("sleeve") };
        var hole = new VentHoles { Diameter = Length.FromMillimeters(4), WallThickness = Length.FromMillimeters(1), Count = 2 };
        return name switch
        {
            "ring" => (ThrownGaps.Gap.With(d => d with { Source = ThrownGaps.Strong }), false),
            "stirred" => (Vented, true),
            "jackets" => (Vented.With(d => d with
            {
                Vents = [into],
                Jackets =
                [
                    new Jacket
                    {
                        Name = "sleeve",
                        Volume = Volume.FromCubicCentimeters(5),
                        WallArea = Area.FromSquareCentimeters(20),
                        Openings = [new() { Holes = hole, To = VentTarget.Air }],
                    },
                ],
            }), false),
            "cluster" => (Vented.With(d => d with { Source = new GapSource.Cluster { Motors = [booster, booster with { Delay = Duration.FromMilliseconds(1) }] } }), false),
            "plates" => (Bench.Gap.With(d => d with { Source = d.Motor() with { Web = Bench.Plates(0.3, 0.8, 12, 0.4) } }), false),
            "pulse" => (Bench.Gap, false),
            "fed" => (Bench.Gap.With(d => d with { Source = d.Fed([0, 5e-3, 20e-3], [1e-3, 4e-3, 0], [1500, 1900, 1700]) }), false),
            "open side" => (Vented.With(d => d with { Vents = [new Vent { Station = Length.FromMillimeters(70), Holes = hole with { Count = 60 }, AxialLength = Length.FromMillimeters(40) }] }), false),
            "taped" => (Vented.With(d => d with { Joint = StageJoint.Taped(d.Joint.Coupler, JointTape.PaperTape) }), false),
            _ => (Vented, false),
        };
    }

    /// <summary>States of a run, each as if the joint were held, slid half-way at a metre a second, and had opened by as much.</summary>
    private static IEnumerable<(GapParameters P, GapPhase Phase, double Time, double[] State)> Moments(GapProblem gap, bool stirred)
    {
        GapRun run = gap.Solve(stirred ? new GapModel.WellStirred() : new GapModel.TwoZone());
        var course = (LumpedHistory)run.Course;
        GapParameters p = course.Parameters;
        foreach (double share in (double[])[0.013, 0.17, 0.61])
        {
            double t = share * Math.Min(run.End.Seconds, 0.02);
            foreach (JointPhase joint in Enum.GetValues<JointPhase>())
            {
                var y = new double[p.StateCount];
                course.Track.At(t, y);
                y[StateLayout.Slide] = joint switch { JointPhase.Held => 0, JointPhase.Slides => 0.5 * p.Engagement, _ => 1.05 * p.Engagement };
                y[StateLayout.SlideSpeed] = joint == JointPhase.Held ? 0 : 1;
                yield return (p, new GapPhase(joint, t, 1, p.Feed?.PieceFrom(t) ?? -1), t, y);
            }
        }
    }

    private static (double[] Jacobian, double[] TimeSlope) Written(GapParameters p, GapPhase phase, double t, double[] y)
    {
        double[] slope = new double[y.Length], jacobian = new double[y.Length * y.Length], timeSlope = new double[y.Length];
        var system = new GapSystem(p, phase);
        system.Derivative(t, y, slope);
        system.Jacobian(t, y, slope, jacobian, timeSlope);
        return (jacobian, timeSlope);
    }

    private static double[] Column(double[] jacobian, int n, int j) => [.. Enumerable.Range(0, n).Select(i => jacobian[i * n + j])];

    /// <summary>What an increment is measured by: what the parcel holds, or the state itself.</summary>
    private static double Held(GapParameters p, double[] y, int j)
    {
        if (j < StateLayout.FirstParcel || j >= p.FirstShare)
            return j == StateLayout.Slide ? p.Engagement : Math.Max(Math.Abs(y[j]), 0.1);
        int at = j - (j - StateLayout.FirstParcel) % StateLayout.Parcel;
        return j == at + 2 ? y[j] : y[at] + y[at + 1];
    }

    private static double[] ByState(GapSystem system, double t, double[] y, int j, double h)
    {
        double[] less = [.. y], more = [.. y];
        less[j] -= h;
        more[j] += h;
        return Difference(system, t, less, t, more, more[j] - less[j]);
    }

    private static double[] Difference(GapSystem system, double t, double[] y, double later, double[] moved, double over)
    {
        double[] one = new double[y.Length], other = new double[y.Length];
        system.Derivative(t, y, one);
        system.Derivative(later, moved, other);
        return [.. other.Zip(one, (a, b) => (a - b) / over)];
    }
}
