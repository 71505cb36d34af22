using UnitsNet;

namespace Staging.Core.Gaps;

public abstract partial record GapSource
{
    /// <summary>
    /// A booster motor whose chamber opens forward: described by its chamber or by its grain. Closed: use
    /// <see cref="Match"/> to treat both.
    /// </summary>
    public abstract record Motor : GapSource
    {
        private protected Motor()
        {
        }

        /// <summary>Temperature of the products in the chamber and of all that burns [K], 800 to 3500.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Temperature FlameTemperature { get; init => field = Guard.In(value, 800, 3500); }

        /// <summary>Throat diameter of the motor's nozzle [m].</summary>
        public abstract Length NozzleThroatDiameter { get; init; }

        /// <summary>Discharge coefficient of the forward opening [-], 0.3 to 1.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required double OpeningCoefficient { get; init => field = Guard.In(value, 0.3, 1); }

        /// <summary>
        /// How long after time zero it burns through [s], 0 to 10 s; 0, the default, for the motor that sets time zero.
        /// Motors lit together burn through some per cent of their burn time apart. Until then it is closed to the gap.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public Duration Delay { get; init => field = Guard.In(value, 0, 10); }

        /// <summary>Where these numbers come from.</summary>
        public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

        /// <summary>Treats both cases.</summary>
        /// <typeparam name="T">Type of the answer.</typeparam>
        /// <param name="booster">For a motor known by its chamber.</param>
        /// <param name="endBurner">For a motor known by its grain.</param>
        /// <returns>The answer of the case that holds.</returns>
        public T Match<T>(Func<Booster, T> booster, Func<EndBurner, T> endBurner) => this switch
        {
            Booster x => booster(x),
            EndBurner x => endBurner(x),
            _ => throw new InvalidOperationException($"Unknown motor {GetType().Name}."),
        };
    }
}
