using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// Elementary effects: with a few runs per input, which inputs matter, and which interact or are not linear.
/// </summary>
/// <remarks>
/// M. D. Morris, "Factorial sampling plans for preliminary computational experiments", Technometrics 33 (1991) 161-174;
/// the mean of the absolute effects after F. Campolongo, J. Cariboni and A. Saltelli, Environ. Model. Softw. 22 (2007)
/// 1509-1518. Paths start at random on a grid in the unit cube of the quantiles and change one input after the other,
/// each by <c>levels/(2 (levels - 1))</c>. An effect is the change of the result over that of the quantile.
/// </remarks>
internal static class Morris
{
    private const uint Purpose = 4;

    public static PartitionedStudy<ImmutableArray<MorrisEffect>> Study<T>(SensitivityStudy<T> study, int paths, int levels, ulong seed)
    {
        Guard.In(paths, 2, 100_000, nameof(paths));
        Guard.In(levels, 4, 100, nameof(levels));
        if (levels % 2 != 0)
            throw new ArgumentOutOfRangeException(nameof(levels), levels,
                "levels must be even: then every level is visited equally often.");
        StudyHeading heading = study.Heading(paths, seed, Invariant.Text($"screening on {levels} levels"),
            study.Inputs.Inputs.Select(i => i.Path));
        return new PartitionedStudy<ImmutableArray<MorrisEffect>>(
            heading,
            (path, cancel) => Effects(study, path, levels, seed, cancel),
            effects => [.. heading.Inputs.Select((input, d) => new MorrisEffect(input, [.. effects.Select(e => e[d])]))]);
    }

    /// <summary>The effects along one path, by input.</summary>
    private static ImmutableArray<double> Effects<T>(SensitivityStudy<T> study, long path, int levels, ulong seed, CancellationToken cancel)
    {
        int k = study.Inputs.Inputs.Length;
        double delta = levels / (2.0 * (levels - 1));
        uint draw = 0;
        double Next() => Philox4x32.Unit(Philox4x32.Bits(seed, (ulong)path, draw++, Purpose));

        // The lower half of the levels, from where a step up stays on the grid; half of the inputs start at the upper
        // end of that step.
        double[] at = new double[k], step = new double[k], effects = new double[k];
        int[] order = [.. Enumerable.Range(0, k)];
        for (int d = 0; d < k; d++)
        {
            double low = Math.Floor(Next() * (levels / 2)) / (levels - 1);
            bool up = Next() < 0.5;
            (at[d], step[d]) = up ? (low, delta) : (low + delta, -delta);
        }

        for (int d = k - 1; d > 0; d--)
        {
            int other = (int)(Next() * (d + 1));
            (order[d], order[other]) = (order[other], order[d]);
        }

        double before = study.At(study.Values(at), cancel);
        foreach (int d in order)
        {
            cancel.ThrowIfCancellationRequested();
            at[d] += step[d];
            double after = study.At(study.Values(at), cancel);
            effects[d] = (after - before) / step[d];
            before = after;
        }

        return [.. effects];
    }
}
