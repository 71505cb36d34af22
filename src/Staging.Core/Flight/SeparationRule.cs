using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>When the stage below lets go under electronic ignition.</summary>
public abstract record SeparationRule
{
    private protected SeparationRule()
    {
    }

    /// <summary>Chooses by case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="afterBurnout">The answer where it goes a time after burnout.</param>
    /// <param name="atIgnition">The answer where the upper motor pushes it off.</param>
    /// <returns>The answer of the case at hand.</returns>
    public T Match<T>(Func<AfterBurnout, T> afterBurnout, Func<AtIgnition, T> atIgnition) =>
        this is AfterBurnout x ? afterBurnout(x) : atIgnition((AtIgnition)this);

    /// <summary>
    /// Drag pulls the stages apart, or a charge does, a time after the lower stage burnt out, lit or not.
    /// </summary>
    public sealed record AfterBurnout : SeparationRule
    {
        /// <summary>Time from burnout of the stage below [s], 0 to 1000 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration Lag { get; init => field = Guard.In(value, 0, 1000); }
    }

    /// <summary>The exhaust of the upper motor pushes it off; without ignition the stages stay joined.</summary>
    public sealed record AtIgnition : SeparationRule;
}
