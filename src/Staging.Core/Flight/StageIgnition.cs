using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The ignition of the motors of a stage.</summary>
public abstract record StageIgnition
{
    private protected StageIgnition()
    {
    }

    /// <summary>Chooses by case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="atLaunch">The answer for the launch igniter.</param>
    /// <param name="byContact">The answer for motors in contact.</param>
    /// <param name="byGap">The answer for burn-through across a gap.</param>
    /// <param name="byElectronics">The answer for electronics.</param>
    /// <returns>The answer of the case at hand.</returns>
    public T Match<T>(Func<AtLaunch, T> atLaunch, Func<ByContact, T> byContact, Func<ByGap, T> byGap,
        Func<ByElectronics, T> byElectronics) => this switch
        {
            AtLaunch x => atLaunch(x),
            ByContact x => byContact(x),
            ByGap x => byGap(x),
            _ => byElectronics((ByElectronics)this),
        };

    /// <summary>
    /// The launch igniter: thrust histories start at time zero. For the lowest stage only.
    /// </summary>
    public sealed record AtLaunch : StageIgnition;

    /// <summary>
    /// Motor on motor: the burn-through gas goes straight into the upper nozzle. Success is assumed; the unlit case is
    /// computed anyway.
    /// </summary>
    public sealed record ByContact : StageIgnition
    {
        /// <summary>Time from burn-through to ignition and separation [s], 0 to 10 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration Lag { get; init => field = Guard.In(value, 0, 10); }
    }

    /// <summary>
    /// Burn-through gas crosses a gap. <see cref="Gap"/> decides whether and when it lights the stage.
    /// </summary>
    public sealed record ByGap : StageIgnition
    {
        /// <summary>Gives the result for the state at burn-through.</summary>
        public required IGapIgnition Gap { get; init => field = Guard.NotNull(value); }
    }

    /// <summary>A timer fires an igniter, if no guard forbids it.</summary>
    public sealed record ByElectronics : StageIgnition
    {
        /// <summary>Event that starts the timer.</summary>
        /// <exception cref="ArgumentOutOfRangeException">None of those events.</exception>
        public required TimerStart From { get; init => field = Guard.Defined(value); }

        /// <summary>Time from that event until the igniter fires [s], 0 to 1000 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration Timer { get; init => field = Guard.In(value, 0, 1000); }

        /// <summary>Time from the igniter's current to the start of the thrust history [s], 0 to 10 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration IgniterLag { get; init => field = Guard.In(value, 0, 10); }

        /// <summary>Conditions checked when the timer runs out.</summary>
        public required ElectronicsGuards Guards { get; init => field = Guard.NotNull(value); }

        /// <summary>
        /// Time from burnout of the stage below until drag or a charge parts the stages, lit or not [s], 0 to 1000 s;
        /// null where the exhaust of the upper motor pushes them apart, so that without ignition they stay joined.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public Duration? SeparationAfterBurnout { get; init => field = value is { } t ? Guard.In(t, 0, 1000) : null; }
    }
}
