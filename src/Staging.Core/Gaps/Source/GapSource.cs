using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>Where the hot gas of a gap comes from. Closed: use <see cref="Match"/> to treat every case.</summary>
public abstract partial record GapSource
{
    private protected GapSource()
    {
    }

    /// <summary>
    /// Products of combustion: gas and particles in equilibrium; one kind for all motors of a cluster.
    /// </summary>
    public abstract DustyGas Products { get; init; }

    /// <summary>
    /// Time from burn-through for which it is sure to act [s]; for a web that burns by a rate law, until
    /// the chamber is open.
    /// </summary>
    internal abstract double KnownDuration { get; }

    /// <summary>The motors known by their grain, whose webs break into pieces.</summary>
    internal IEnumerable<EndBurner> EndBurners => Match<IEnumerable<EndBurner>>(
        _ => [], _ => [], cluster => cluster.Motors.OfType<EndBurner>(), motor => [motor]);

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="booster">For one motor.</param>
    /// <param name="tabulated">For a known history.</param>
    /// <param name="cluster">For several motors.</param>
    /// <param name="endBurner">For one motor known by its grain.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(Func<Booster, T> booster, Func<Tabulated, T> tabulated, Func<Cluster, T> cluster,
        Func<EndBurner, T> endBurner) => this switch
        {
            Booster x => booster(x),
            Tabulated x => tabulated(x),
            Cluster x => cluster(x),
            EndBurner x => endBurner(x),
            _ => throw new InvalidOperationException($"Unknown source {GetType().Name}."),
        };

    /// <summary>
    /// Two or more booster motors that feed one gap. Each may burn through at a time of its own; their products must be
    /// equal.
    /// </summary>
    public sealed record Cluster : GapSource
    {
        /// <summary>The motors, 2 to 8.</summary>
        /// <exception cref="ArgumentException">Fewer or more.</exception>
        public required EquatableArray<Motor> Motors
        {
            get;
            init => field = value.Length is < 2 or > 8
                ? throw new ArgumentException($"Motors has {value.Length} members; it must have between 2 and 8.", nameof(Motors))
                : value;
        }

        /// <summary>Products of the first motor; set, those of all.</summary>
        /// <exception cref="InvalidOperationException">Set before <see cref="Motors"/>.</exception>
        public override DustyGas Products
        {
            get => Motors[0].Products;
            init => Motors = Motors.IsEmpty
                ? throw new InvalidOperationException("Products is set before Motors; give Motors first, each with its products.")
                : [.. Motors.Select(m => m with { Products = value })];
        }

        /// <inheritdoc/>
        internal override double KnownDuration => Motors.Max(m => m.KnownDuration);
    }
}
