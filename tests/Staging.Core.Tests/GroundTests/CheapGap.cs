using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Solving;
using Staging.Core.Studies;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.GroundTests;

/// <summary>
/// A stand-in for gap runs that answers at once: a joint that opens the sooner the weaker it is, a grain that lights the sooner the lower
/// its ignition temperature, both later in a longer gap. It is to be learned from, not believed.
/// </summary>
internal static class CheapGap
{
    public static readonly StudyInput<GapProblem> Ignition = new("grain.ignition", "K", Distribution.Uniform(650, 920), (p, v) => p with
    {
        Design = p.Design with { Grain = p.Design.Grain with { IgnitionTemperature = Temperature.FromKelvins(v) } },
    });

    public static readonly StudyInput<GapProblem> Joint = GroundTestInputs.BreakawayOverStated(Distribution.Triangular(0.5, 1, 3));

    /// <summary>Both unknowns.</summary>
    public static UnknownInputs Unknown => new([Ignition, Joint], []);

    public static GapProblem Of(double length_mm, double newtons = 20)
    {
        GapProblem gap = Bench.Gap.With(d => d with { Tube = Bench.Tube(length_mm), Vents = [Bench.Hole(Bench.Tube(length_mm), 6)] });
        return gap.With(breakaway: Force.FromNewtons(newtons));
    }

    public static GapAnswer Answer(GapProblem problem, GapModel model, SolverOptions solver, CancellationToken cancel)
    {
        GapDesign d = problem.Design;
        double length = d.Tube.Length.Meters / 0.25, force = d.Joint.Coupler.BreakawayForce.Newtons / 20;
        double lit = 0.02 * Math.Sqrt(length) * Math.Pow((d.Grain.IgnitionTemperature.Kelvins - 288) / 485, 2), opens = 0.018 * force;
        bool burns = lit < opens, parts = !burns && opens < 0.06;
        return new GapAnswer(
            burns ? Ending.Lit : parts ? Ending.Parted : Ending.Together,
            FirstFlame: 0.003 * length,
            JointMoves: parts ? 0.8 * opens : null,
            Parted: parts ? opens : null,
            Lit: burns ? lit : null,
            Gauge: time => 5e4 * force * Math.Sin(Math.Min(Math.PI, 100 * time)));
    }

    public static Learned Learn(GroundTestSeries series, int cases, ulong seed = 0, GapAnswers? answers = null, StudyOptions? options = null) =>
        series.LearnInParts(cases, seed, Unknown, answers ?? Answer).Whole(options, null, CancellationToken.None);
}
