namespace Staging.Core.Studies;

/// <summary>
/// Learns with fewer runs than cases: the first cases of the design are run and stand for themselves; of the others
/// some are drawn that seem worth a run, each with a chance of its own, and stand for more the smaller that chance was.
/// </summary>
/// <remarks>
/// A case that was drawn counts by the inverse of its chance, so that sums over all cases come out right on average,
/// whatever was guessed (D. G. Horvitz and D. J. Thompson, J. Am. Stat. Assoc. 47 (1952) 663-685); a bad guess only
/// leaves a smaller effective number. There are two such draws, the second with a guess from all that was run before,
/// and two sums that are both right on average are right in any proportion that is fixed beforehand.
/// </remarks>
internal static class ChosenRuns
{
    /// <summary>Runs of the first cases and of the first draw, as a share of all: judged by trial.</summary>
    private const double FirstRound = 0.25, SecondRound = 0.25;

    /// <summary>What the first draw counts beside the second [-]: little, because its guess is rough.</summary>
    private const double FirstDraw = 0.15;

    /// <summary>Keeps these draws separate from those of a study.</summary>
    private const uint Purpose = 7;

    /// <summary>Chooses cases, runs them and weighs them.</summary>
    public static Posterior<T> Learn<T>(LearningStudy<T> study, StudyOptions? options, IProgress<StudyProgress>? progress,
        CancellationToken cancel)
    {
        Check(study, options);
        int n = study.Cases, runs = study.Runs!.Value, first = (int)(FirstRound * runs);
        var clock = new StudyClock(runs, (options ?? StudyOptions.Default).Clock, progress);
        var found = new FoundCases<T>(study);
        double[] shares = [.. Enumerable.Range(0, n).Select(i => i < first ? 1.0 : 0)];
        Run(Enumerable.Range(0, first));
        Draw(1, (int)(SecondRound * runs), FirstDraw);
        Draw(2, runs - found.Count, 1 - FirstDraw);
        if (found.Count < runs)
            clock.End(found.Count);
        return new Posterior<T>(study, found.Weighed(new CaseShares(n, first, shares)));

        void Draw(int draw, int wanted, double counts)
        {
            double[] chances = new WorthwhileCases(study.Design, found.Together(), shares).Chances(first, wanted);
            int[] drawn = Drawn(chances, Philox4x32.Unit(Philox4x32.Bits(study.Seed, (ulong)draw, 0, Purpose)));
            Run(drawn);
            foreach (int i in drawn)
                shares[i] += counts / chances[i];
        }

        void Run(IEnumerable<int> cases)
        {
            int before = found.Count;
            found.Run(cases, options, done => clock.Tell(before + done), cancel);
        }
    }

    /// <summary>Runs cases that were chosen before.</summary>
    public static Posterior<T> Of<T>(LearningStudy<T> study, CaseShares given, StudyOptions? options, IProgress<StudyProgress>? progress,
        CancellationToken cancel)
    {
        Check(study, options);
        var clock = new StudyClock(given.Runs, (options ?? StudyOptions.Default).Clock, progress);
        var found = new FoundCases<T>(study);
        found.Run(given.Run, options, clock.Tell, cancel);
        return new Posterior<T>(study, found.Weighed(given));
    }

    private static void Check<T>(LearningStudy<T> study, StudyOptions? options)
    {
        InvalidModelException.ThrowOnError(study.Check());
        PointEvaluator.RefusePart(options);
        StudySize.Check(study.Cases, study.Inputs.Inputs.Length + study.Observations.Length);
    }

    /// <summary>
    /// Draws each case with its chance: those at which the running sum of chances passes a whole number, so that as
    /// many are drawn as the chances sum to, spread over the design.
    /// </summary>
    private static int[] Drawn(double[] chances, double start)
    {
        var drawn = new List<int>();
        double sum = start;
        for (int i = 0; i < chances.Length; i++)
        {
            double next = sum + chances[i];
            if (Math.Floor(next) > Math.Floor(sum))
                drawn.Add(i);
            sum = next;
        }

        return [.. drawn];
    }
}
