using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// How the gas in a gap is modelled: same inputs, same result. Closed: use <see cref="Match"/> to treat every case.
/// </summary>
public abstract record GapModel
{
    private protected GapModel()
    {
    }

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="twoZone">For two zones.</param>
    /// <param name="wellStirred">For one stirred zone.</param>
    /// <param name="oneDimensional">For flow along the tube.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(Func<TwoZone, T> twoZone, Func<WellStirred, T> wellStirred, Func<OneDimensional, T> oneDimensional) => this switch
    {
        TwoZone x => twoZone(x),
        WellStirred x => wellStirred(x),
        OneDimensional x => oneDimensional(x),
        _ => throw new InvalidOperationException($"Unknown model {GetType().Name}."),
    };

    /// <summary>
    /// Two zones: hot products push the air ahead of a front without mixing. Optimistic for the temperature that
    /// arrives, pessimistic for the moment of arrival.
    /// </summary>
    public sealed record TwoZone : GapModel;

    /// <summary>
    /// One zone: products and air up to the last vent mix at once. Pessimistic for the temperature that arrives,
    /// optimistic for the moment at which the first warm gas arrives.
    /// </summary>
    /// <remarks>
    /// There is no front. In its place stands the station up to which the products in the tube would reach if they were
    /// gathered at its beginning at the temperature of the mixture; and the front is said to be at the last vent when
    /// half of the mass that leaves there is products, as in the two-zone model half of what leaves is. The dead
    /// end beyond the last vent is a stirred pocket of its own in both models.
    /// </remarks>
    public sealed record WellStirred : GapModel;

    /// <summary>
    /// Compressible flow of products and air resolved along the tube: pressure waves, the front as a contact that
    /// spreads over a few cells, friction and heat loss where the gas is. About a hundred times the work of
    /// <see cref="TwoZone"/>, with the number of cells squared.
    /// </summary>
    /// <remarks>
    /// Everything along the tube is resolved: vents where they are, the seam of a tape at the booster's end, the
    /// annulus of a joint that has opened. Chambers and jackets are stirred volumes beside it. Dead end and free jet
    /// keep the closures of the lumped models.
    /// </remarks>
    public sealed record OneDimensional : GapModel
    {
        /// <summary>Fewest cells [-]: a front is spread over three or four.</summary>
        private const int FewestCells = 4;

        /// <summary>
        /// Number of cells along the tube [-], 20 to 100000; fewer where <see cref="CellsPerBore"/> says so. The
        /// default is 400.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public int Cells { get; init => field = Guard.In(value, 20, 100_000); } = 400;

        /// <summary>
        /// Most cells over a length of one bore, the narrowest of the tube [-], 4 to 100000. The default is 64: about
        /// what 400 cells make of the usual gap, on which twice as many change nothing.
        /// </summary>
        /// <remarks>
        /// What differs across the bore is not resolved: waves shorter than 1.7 bores are not plane. So a tube shorter
        /// than its bore, recess included, has fewer cells yet, by the same share; between motors in contact it is one
        /// volume, and cells as fine as it is short would only make steps of nanoseconds. Four there are at least, over
        /// which a front is spread. A refinement that is to go further raises this number too.
        /// </remarks>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public int CellsPerBore { get; init => field = Guard.In(value, 4, 100_000); } = 64;

        /// <summary>
        /// Courant number: share of a cell that the fastest wave crosses in a step [-], 0.05 to 0.9. The default is
        /// 0.8.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public double CourantNumber { get; init => field = Guard.In(value, 0.05, 0.9); } = 0.8;

        /// <summary>
        /// Times since burn-through at which the gas along the tube is kept, see <see cref="GapRun.Profiles"/>. The
        /// default is none.
        /// </summary>
        public EquatableArray<Duration> ProfileTimes { get; init; } = [];

        /// <summary>Cells of a tube of a length in bores [-].</summary>
        internal int CellsOver(double bores) =>
            (int)Math.Ceiling(Math.Min(Cells, Math.Max(FewestCells, CellsPerBore * bores * Math.Min(1, bores))));
    }
}
