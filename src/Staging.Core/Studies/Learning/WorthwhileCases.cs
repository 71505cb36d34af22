namespace Staging.Core.Studies;

/// <summary>Which cases are worth a run, guessed from those that were run.</summary>
internal sealed class WorthwhileCases
{
    /// <summary>
    /// Log-likelihoods further below the greatest count as this far [-]: what is next to impossible is not told apart.
    /// </summary>
    private const double Depth = 40;

    /// <summary>
    /// How much the fit minds a case: by this power of its likelihood, and at least this share of the best one [-].
    /// </summary>
    private const double LeastCare = 0.01, CarePower = 0.25;

    /// <summary>Share of the runs that is spread evenly, so that no case stands for too many.</summary>
    private const double Even = 0.15;

    /// <summary>Halvings of the bracket of the factor that makes the chances sum to the number of runs.</summary>
    private const int Halvings = 50;

    private readonly double[] shares, guess;
    private readonly (int Case, double Log)[] run;

    /// <summary>Guesses the log-likelihood of every case.</summary>
    /// <param name="design">Where the cases lie.</param>
    /// <param name="logs">Log-likelihoods of the cases that were run [-], by their numbers.</param>
    /// <param name="shares">How many cases each case stands for so far; 1 for those that are not to be drawn.</param>
    public WorthwhileCases(SampleDesign design, IReadOnlyDictionary<int, double> logs, double[] shares)
    {
        this.shares = shares;
        double greatest = Math.Max(logs.Values.Max(), double.MinValue);
        run = [.. logs.Select(l => (l.Key, Math.Max(l.Value - greatest, -Depth)))];
        var surface = LikelihoodSurface.Fit([.. run.Select(r => Places(r.Case))], [.. run.Select(r => r.Log)],
            [.. run.Select(r => Math.Max(LeastCare, Math.Exp(CarePower * r.Log)))]);
        guess = [.. Enumerable.Range(0, shares.Length).Select(i => surface.At(Places(i)))];
        double most = guess.Max();
        for (int i = 0; i < guess.Length; i++)
            guess[i] -= most;

        double[] Places(int i) => [.. Enumerable.Range(0, design.Dimensions).Select(d => design.Unit(i, d))];
    }

    /// <summary>Powers of the guessed likelihood that are tried as chances [-].</summary>
    private static ReadOnlySpan<double> Powers => [0.15, 0.25, 0.4, 0.6, 0.8, 1];

    /// <summary>
    /// The chance of each case [-], 0 to 1 and 0 for the first ones: some for all, and the rest in proportion to that
    /// power of the guessed likelihood which leaves the greatest effective number, by the cases that were run.
    /// </summary>
    /// <param name="first">How many cases at the start are not drawn.</param>
    /// <param name="runs">What the chances sum to.</param>
    public double[] Chances(int first, int runs)
    {
        double[] best = [];
        double least = double.PositiveInfinity;
        foreach (double power in Powers)
        {
            double[] chances = InProportion(power, runs);
            double squares = run.Sum(r => shares[r.Case] * Math.Exp(2 * r.Log) / chances[r.Case]);
            if (squares < least)
                (best, least) = (chances, squares);
        }

        best.AsSpan(0, first).Clear();
        return best;
    }

    private double[] InProportion(double power, int runs)
    {
        double even = Even * runs / guess.Length;
        double[] part = [.. guess.Select(g => Math.Exp(power * g))];
        double low = 0, high = 1;
        while (Sum(high) < runs && high < runs * 1e9)
            high *= 2;
        for (int k = 0; k < Halvings; k++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Sum(middle) < runs ? (middle, high) : (low, middle);
        }

        return [.. part.Select(p => Math.Min(1, even + low * p))];

        double Sum(double factor)
        {
            double sum = 0;
            foreach (double p in part)
                sum += Math.Min(1, even + factor * p);
            return sum;
        }
    }
}
