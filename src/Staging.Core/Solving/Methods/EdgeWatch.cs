namespace Staging.Core.Solving;

/// <summary>Watches whether stability binds the steps of a phase.</summary>
/// <remarks>
/// The counts are those of the code DOPRI5 (E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd
/// ed., 1996, section IV.2; from memory), here from the first step on.
/// </remarks>
/// <param name="edge">Rate times step at the edge of stability [-].</param>
internal struct EdgeWatch(double edge)
{
    /// <summary>
    /// Share of the edge from which on a step counts as bound by it [-]; a judgement: controlled steps keep within a
    /// tenth of the edge, and a phase that goes on implicitly too early only takes other steps.
    /// </summary>
    private const double Near = 0.85;

    /// <summary>Bound steps that show that a phase is, and free ones in a row that show that it is no more.</summary>
    private const int ManyBound = 15, ManyFree = 6;

    private int bound;
    private int free;

    /// <summary>Takes note of a step by its rate times its size [-]; true once stability binds the phase.</summary>
    public bool Sees(double rateTimesStep)
    {
        if (rateTimesStep >= Near * edge)
            (bound, free) = (bound + 1, 0);
        else if (++free == ManyFree)
            bound = 0;
        return bound == ManyBound;
    }
}
