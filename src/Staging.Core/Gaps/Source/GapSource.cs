using System.Collections.Immutable;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Where the hot gas of a gap comes from. Closed: use <see cref="Match"/> to treat every case.</summary>
public abstract record GapSource
{
    private protected GapSource()
    {
    }

    /// <summary>Products of combustion; those of the first motor in a cluster.</summary>
    public DustyGas Products => Match(
        afterburn => afterburn.Motor.Products,
        fragments => fragments.Chamber.Products,
        tabulated => tabulated.Gas,
        cluster => cluster.Motors[0].Source.Products);

    /// <summary>
    /// Time from burn-through for which it is known beforehand to last [s]; for fragments whose burning follows the
    /// pressure, until the chamber is open.
    /// </summary>
    internal double KnownDuration => Match(
        afterburn => Math.Max(afterburn.Motor.OpeningTime.Seconds, afterburn.Motor.FragmentBurnTime.Seconds),
        fragments => fragments.Chamber.OpeningTime.Seconds,
        tabulated => tabulated.Feed.Time_s.Span[^1],
        cluster => cluster.Motors.Max(m => m.Delay.Seconds + m.Source.KnownDuration));

    /// <summary>A motor with its afterburn is a source.</summary>
    /// <param name="motor">The motor.</param>
    /// <returns>The source.</returns>
    public static implicit operator GapSource(BurnThroughSource motor) => FromBurnThroughSource(motor);

    /// <summary>A motor with its afterburn as a source.</summary>
    /// <param name="motor">The motor.</param>
    /// <returns>The source.</returns>
    public static GapSource FromBurnThroughSource(BurnThroughSource motor) => new Afterburn { Motor = motor };

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="afterburn">For a motor whose fragments burn over a stated time.</param>
    /// <param name="fragments">For a motor whose fragments burn at a rate that follows the pressure.</param>
    /// <param name="tabulated">For a known history.</param>
    /// <param name="cluster">For several motors.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(Func<Afterburn, T> afterburn, Func<Fragments, T> fragments, Func<Tabulated, T> tabulated, Func<Cluster, T> cluster) =>
        this switch
        {
            Afterburn x => afterburn(x),
            Fragments x => fragments(x),
            Tabulated x => tabulated(x),
            Cluster x => cluster(x),
            _ => throw new InvalidOperationException($"Unknown source {GetType().Name}."),
        };

    /// <summary>One motor whose fragments burn over a stated time.</summary>
    public sealed record Afterburn : GapSource
    {
        /// <summary>The motor.</summary>
        public required BurnThroughSource Motor { get; init => field = Guard.NotNull(value); }
    }

    /// <summary>
    /// One motor whose fragments burn on both sides at a rate r = a p^n that follows the chamber pressure.
    /// </summary>
    /// <remarks>
    /// Plates of one thickness h: the burnt share grows by 2 r/h, the faces stay as large as they are, so the mass flow
    /// is M 2 r(p)/h until the last of it. Fragments of several thicknesses end less abruptly.
    /// </remarks>
    public sealed record Fragments : GapSource
    {
        /// <summary>The chamber that the fragments burn in.</summary>
        public required BoosterChamber Chamber { get; init => field = Guard.NotNull(value); }

        /// <summary>Mass of propellant that burns as fragments after burn-through [kg], 0 to 100 g.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Mass Mass { get; init => field = Guard.In(value, 0, 0.1); }

        /// <summary>Thickness of the fragments [m], 0.01 mm to 20 mm.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Length Thickness { get; init => field = Guard.In(value, 1e-5, 0.02); }

        /// <summary>How fast a face recedes.</summary>
        public required BurnRateLaw Rate { get; init => field = Guard.NotNull(value); }

        /// <summary>Where mass and thickness come from.</summary>
        public required Provenance Provenance { get; init => field = Guard.NotNull(value); }
    }

    /// <summary>
    /// A known history of mass flow and temperature into the tube at station 0, whatever the pressure there: a
    /// measurement, or another model.
    /// </summary>
    public sealed record Tabulated : GapSource
    {
        /// <summary>The gas: products and particles in equilibrium.</summary>
        public required DustyGas Gas { get; init => field = Guard.NotNull(value); }

        /// <summary>The history.</summary>
        public required FeedTable Feed { get; init => field = Guard.NotNull(value); }

        /// <summary>Where the history comes from.</summary>
        public required Provenance Provenance { get; init => field = Guard.NotNull(value); }
    }

    /// <summary>Two or more booster motors that feed one gap. Their products must be equal.</summary>
    public sealed record Cluster : GapSource
    {
        /// <summary>The motors, 2 to 8.</summary>
        /// <exception cref="ArgumentException">Fewer or more.</exception>
        public required ImmutableArray<ClusterMotor> Motors
        {
            get;
            init => field = Guard.Set(value).Length is < 2 or > 8
                ? throw new ArgumentException($"Motors has {value.Length} members; it must have between 2 and 8.", nameof(Motors))
                : value;
        }
    }
}
