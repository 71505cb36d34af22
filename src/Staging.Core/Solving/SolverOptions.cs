using UnitsNet;

namespace Staging.Core.Solving;

/// <summary>
/// How a run is integrated. What is left out is as in <see cref="Default"/>; gaps take <see cref="ForGaps"/> where no
/// options are given.
/// </summary>
public sealed record SolverOptions
{
    /// <summary>The defaults.</summary>
    public static SolverOptions Default { get; } = new();

    /// <summary>
    /// What gap runs take where nothing else is asked: tolerances of 1e-6 and 1e-8. Moments and peaks come out within
    /// one part in 20,000 of what they tend to, far finer than any source is known, at three tenths of the work.
    /// Searches and studies take it as nothing asked, and use <see cref="ForStudies"/>; for these tolerances there,
    /// change any other value.
    /// </summary>
    public static SolverOptions ForGaps { get; } = new() { RelativeTolerance = 1e-6, ScaledAbsoluteTolerance = 1e-8 };

    /// <summary>
    /// What each case of a study and each gap of a search takes where nothing else is asked: tolerances of 1e-3 and
    /// 1e-7. The surface of a grain comes out within some kelvins of what it tends to, most often within a tenth, where
    /// the inputs of a study move it by hundreds; the work is a third of that of <see cref="ForGaps"/>. The second
    /// tolerance is what a parcel of gas needs that a vent has almost emptied.
    /// </summary>
    public static SolverOptions ForStudies { get; } = new() { RelativeTolerance = 1e-3, ScaledAbsoluteTolerance = 1e-7 };

    /// <summary>Local error allowed per step relative to the state [-], 1e-13 to 1e-2. The default is 1e-8.</summary>
    public double RelativeTolerance { get; init => field = Guard.In(value, 1e-13, 1e-2); } = 1e-8;

    /// <summary>
    /// Local error allowed per step, as a fraction of each state's natural scale [-], 1e-16 to 1e-5. The default is
    /// 1e-10. A gap takes 1e-12 to 1e-7 of it: less is rounding of what parcels exchange, more may be all one holds.
    /// </summary>
    public double ScaledAbsoluteTolerance { get; init => field = Guard.In(value, 1e-16, 1e-5); } = 1e-10;

    /// <summary>
    /// Parts into which each step is divided when the event functions are scanned for sign changes, 1 to 100. The
    /// default is 4. Two crossings of one event function within one part may be missed.
    /// </summary>
    /// <remarks>
    /// Within a step the solution is a polynomial of degree 3 or 4: parts finer than a hundredth find nothing that it
    /// tells, and every part costs an evaluation, so that the time of a run would no longer go with its steps.
    /// </remarks>
    public int EventScanParts { get; init => field = Guard.In(value, 1, 100); } = 4;

    /// <summary>Width of the bracket at which an event counts as located, 1 ps to 1 ms. The default is 1 ns.</summary>
    public Duration EventTimeTolerance { get; init => field = Guard.In(value, 1e-12, 1e-3); } = Duration.FromSeconds(1e-9);

    /// <summary>Longest step, 1 ns to 1 h. The default is 1 s.</summary>
    public Duration LongestStep { get; init => field = Guard.In(value, 1e-9, 3600); } = Duration.FromSeconds(1);

    /// <summary>Accepted and rejected steps allowed in one run, 1 to 100 million. The default is 1 million.</summary>
    public int MaxSteps { get; init => field = Guard.In(value, 1, 100_000_000); } = 1_000_000;

    /// <summary>These, for each of many runs: <see cref="ForStudies"/> where they are what single runs take.</summary>
    internal SolverOptions OfCases => this == ForGaps ? ForStudies : this;
}
