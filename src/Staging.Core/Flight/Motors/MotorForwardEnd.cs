using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The behaviour of the forward end of a motor when its propellant is used up.</summary>
public abstract record MotorForwardEnd
{
    private protected MotorForwardEnd()
    {
    }

    /// <summary>Chooses by case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="burnsThrough">The answer for a booster motor.</param>
    /// <param name="ejects">The answer for a motor with delay and ejection charge.</param>
    /// <param name="plugged">The answer for a closed end.</param>
    /// <returns>The answer of the case at hand.</returns>
    public T Match<T>(Func<BurnsThrough, T> burnsThrough, Func<Ejects, T> ejects, Func<Plugged, T> plugged) => this switch
    {
        BurnsThrough x => burnsThrough(x),
        Ejects x => ejects(x),
        _ => plugged((Plugged)this),
    };

    /// <summary>
    /// A booster motor (delay code 0): no delay and no cap; the last web breaks and hot gas leaves forwards.
    /// </summary>
    public sealed record BurnsThrough : MotorForwardEnd
    {
        /// <summary>
        /// When the last web breaks, from ignition [s], 1 ms to 1000 s; null takes the end of the thrust history, when
        /// the booster no longer pushes.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public Duration? After { get; init => field = value is { } t ? Guard.In(t, 1e-3, 1000) : null; }
    }

    /// <summary>A delay burns after burnout, then an ejection charge fires forwards.</summary>
    public sealed record Ejects : MotorForwardEnd
    {
        /// <summary>Time from burnout to the ejection charge [s], 0 to 100 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration Delay { get; init => field = Guard.In(value, 0, 100); }
    }

    /// <summary>Closed forwards: no gas leaves that way.</summary>
    public sealed record Plugged : MotorForwardEnd;
}
