using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>How the gas between the motors is described. Every model takes the same problem and gives the same kind of result.</summary>
public abstract record GapModel
{
    private protected GapModel()
    {
    }

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="displacement">For two zones with a front between them.</param>
    /// <param name="resolved">For flow resolved along the tube.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(Func<Displacement, T> displacement, Func<Resolved, T> resolved) => this switch
    {
        Displacement x => displacement(x),
        Resolved x => resolved(x),
        _ => throw new InvalidOperationException($"Unknown model {GetType().Name}."),
    };

    /// <summary>
    /// Hot products push the air ahead of a front without mixing; beyond the last vent a stirred dead end; one pressure in the whole gap.
    /// Microseconds of a processor's time a millisecond of the gap's.
    /// </summary>
    public sealed record Displacement : GapModel;

    /// <summary>
    /// Compressible flow of products and air resolved along the tube: pressure waves, the front as a contact that spreads over a few cells,
    /// friction and heat loss where the gas is. About a hundred times the work of <see cref="Displacement"/>, with the number of cells squared.
    /// </summary>
    public sealed record Resolved : GapModel
    {
        /// <summary>Number of cells along the tube [-], 20 to 100000. The default is 400.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public int Cells { get; init => field = Guard.In(value, 20, 100_000); } = 400;

        /// <summary>Courant number: share of a cell that the fastest wave crosses in a step [-], 0.05 to 0.9. The default is 0.8.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public double CourantNumber { get; init => field = Guard.In(value, 0.05, 0.9); } = 0.8;

        /// <summary>Times since burn-through at which the gas along the tube is kept, see <see cref="GapRun.Profiles"/>. The default is none.</summary>
        public ImmutableArray<Duration> ProfileTimes { get; init => field = Guard.Set(value); } = [];
    }
}
