using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// How the last web of a booster burns, once it has broken into fragments. Closed: use <see cref="Match"/> to treat
/// every case.
/// </summary>
public abstract record WebBurn
{
    private protected WebBurn()
    {
    }

    /// <summary>Mass of propellant that burns as fragments after burn-through [kg], 0 to 100 g.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass Mass { get; init => field = Guard.In(value, 0, 0.1); }

    /// <summary>Time over which it is known beforehand to burn [s]; 0 where that follows from the pressure.</summary>
    internal double KnownDuration => Match(over => over.Time.Seconds, _ => 0);

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="overTime">For fragments that burn over a stated time.</param>
    /// <param name="byRateLaw">For fragments that burn at a rate that follows the pressure.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(Func<OverTime, T> overTime, Func<ByRateLaw, T> byRateLaw) => this switch
    {
        OverTime x => overTime(x),
        ByRateLaw x => byRateLaw(x),
        _ => throw new InvalidOperationException($"Unknown burning {GetType().Name}."),
    };

    /// <summary>Over a stated time.</summary>
    /// <remarks>
    /// The fragments release <c>m(t) = M pi/(2 tau) sin(pi t/tau)</c> for <c>t</c> up to the burn time <c>tau</c>: a
    /// half-sine pulse, an engineering judgement for the rise and fall of the burning surface. Nothing firmer is
    /// published.
    /// </remarks>
    public sealed record OverTime : WebBurn
    {
        /// <summary>Time over which the fragments burn [s], 0.1 ms to 10 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration Time { get; init => field = Guard.In(value, 1e-4, 10); }
    }

    /// <summary>On both sides, at a rate r = a p^n that follows the chamber pressure.</summary>
    /// <remarks>
    /// Plates of one thickness h: the burnt share grows by 2 r/h, the faces stay as large as they are, so the mass flow
    /// is M 2 r(p)/h until the last of it. Fragments of several thicknesses end less abruptly.
    /// </remarks>
    public sealed record ByRateLaw : WebBurn
    {
        /// <summary>Thickness of the fragments [m], 0.01 mm to 20 mm.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Length Thickness { get; init => field = Guard.In(value, 1e-5, 0.02); }

        /// <summary>How fast a face recedes.</summary>
        public required BurnRateLaw Rate { get; init => field = Guard.NotNull(value); }
    }
}
