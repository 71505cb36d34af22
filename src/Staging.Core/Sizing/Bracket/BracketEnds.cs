using System.Collections.Immutable;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>What is unknown of a gap, and the gap at either end of it.</summary>
internal static class BracketEnds
{
    /// <summary>Fresh faces that are never lit, for any run [s].</summary>
    private const double Never = 10;

    /// <summary>What is unknown of a gap: how its pieces burn and fly, and how easily the grain is lit.</summary>
    public static ImmutableArray<BracketUnknown> Of(GapProblem problem)
    {
        BracketUnknown[] heat =
        [
            Between("particle efficiency", "", JudgedRanges.MinParticleEfficiency, JudgedRanges.MaxParticleEfficiency, Efficiency),
            Between("ignition temperature", " K", JudgedRanges.MinIgnition, JudgedRanges.MaxIgnition, Ignition),
        ];
        return problem.Design.Source.EndBurners.Any()
            ?
            [
                new("fresh faces of the pieces", "never lit", "lit at once", p => FreshFaces(p, Never), p => FreshFaces(p, 0)),
                new("speed of the pieces", "slow", "fast", p => Speed(p, 0), p => Speed(p, 1)),
                .. heat,
            ]
            : [.. heat];
    }

    /// <summary>The gap with fresh faces lit after a time [s].</summary>
    public static GapProblem FreshFaces(GapProblem problem, double delay) =>
        WithPieces(problem, m => m with { FreshFaceDelay = Duration.FromSeconds(delay) });

    /// <summary>The gap with fresh faces never lit: the least gas that can be made.</summary>
    public static GapProblem OldFaces(GapProblem problem) => FreshFaces(problem, Never);

    /// <summary>The gap with pieces that stay at the booster: gas alone.</summary>
    public static GapProblem GasAlone(GapProblem problem) => WithPieces(problem, m => m with { PieceSpeed = UnitsNet.Speed.Zero });

    private static GapProblem Speed(GapProblem problem, double share) =>
        WithPieces(problem, m => m with { SpeedShare = share, PieceSpeed = null });

    private static GapProblem WithPieces(GapProblem problem, Func<GapSource.EndBurner, GapSource.EndBurner> change) =>
        problem.With(source: problem.Design.Source.Match(
            booster => booster,
            tabulated => tabulated,
            cluster => cluster with { Motors = [.. cluster.Motors.Select(m => m is GapSource.EndBurner grain ? change(grain) : m)] },
            GapSource (motor) => change(motor)));

    private static BracketUnknown Between(string name, string unit, double low, double high, Func<GapProblem, double, GapProblem> with) =>
        new(name, Invariant.Text($"{low}{unit}"), Invariant.Text($"{high}{unit}"), p => with(p, low), p => with(p, high));

    private static GapProblem Efficiency(GapProblem problem, double share) => problem with
    {
        Design = problem.Design with { MixingAndHeat = problem.Design.MixingAndHeat with { ParticleEfficiency = share } },
    };

    private static GapProblem Ignition(GapProblem problem, double kelvins) => problem with
    {
        Design = problem.Design with { Grain = problem.Design.Grain with { IgnitionTemperature = Temperature.FromKelvins(kelvins) } },
    };
}
