using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies.Learning;

/// <summary>Two coins whose probabilities of heads are not known: a model whose answers have closed forms.</summary>
internal sealed record Coin(double First, double Second)
{
    public static InputSet<Coin> Inputs { get; } = new(
        new Coin(0.5, 0.5),
        new StudyInput<Coin>("first", "-", Distribution.Uniform(0, 1), (c, v) => c with { First = v }),
        new StudyInput<Coin>("second", "-", Distribution.Triangular(0, 0.3, 1), (c, v) => c with { Second = v }));

    /// <summary>Log-likelihood of heads and tails in one order.</summary>
    public static double Log(double p, int heads, int tails) => heads * Math.Log(p) + tails * Math.Log(1 - p);

    /// <summary>A study of some tosses of the first coin; each is an observation of its own.</summary>
    public static LearningStudy<Coin> Tossed(int cases, params (string Name, int Heads, int Tails)[] tosses) => new()
    {
        Inputs = Inputs,
        Observations = [.. tosses.Select(t => t.Name)],
        LogLikelihoods = (coin, _) => [.. tosses.Select(t => Log(coin.First, t.Heads, t.Tails))],
        Cases = cases,
        Seed = 3,
    };
}
