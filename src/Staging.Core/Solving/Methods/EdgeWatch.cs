namespace Staging.Core.Solving;

/// <summary>Watches whether stability binds the steps of a phase.</summary>
/// <remarks>
/// It counts as the code DOPRI5 does: E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed.
/// (1996), section IV.2.
/// </remarks>
/// <param name="edge">Rate times step at the edge of stability [-].</param>
internal struct EdgeWatch(double edge)
{
    /// <summary>Share of the edge from which on a step counts as bound by it [-].</summary>
    private const double Near = 0.9;

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
