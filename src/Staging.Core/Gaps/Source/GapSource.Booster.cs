using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

public abstract partial record GapSource
{
    /// <summary>
    /// A booster motor that burns through: its chamber opens forward while the nozzle still flows rearward, and the
    /// last web of propellant breaks up and burns as fragments. A short blowdown is followed by a longer afterburn.
    /// </summary>
    public sealed record Booster : Motor
    {
        /// <inheritdoc/>
        public override required DustyGas Products { get; init => field = Guard.NotNull(value); }

        /// <summary>Free volume of the chamber at burn-through [m3], 0.01 cm3 to 10 litres.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Volume ChamberVolume { get; init => field = Guard.In(value, 1e-8, 0.01); }

        /// <summary>Absolute chamber pressure at burn-through [Pa], 10 kPa to 20 MPa.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Pressure ChamberPressure { get; init => field = Guard.In(value, 1e4, 2e7); }

        /// <summary>Diameter of the forward opening once it is fully open [m], 0.5 mm to 200 mm.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Length OpeningDiameter { get; init => field = Guard.In(value, 5e-4, 0.2); }

        /// <summary>
        /// Time in which the diameter of the opening grows, evenly, from nothing to its full size [s], 1 microsecond to
        /// 1 s.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration OpeningTime { get; init => field = Guard.In(value, 1e-6, 1); }

        /// <summary>Throat diameter of the motor's nozzle [m], 0 (plugged) to 100 mm.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public override required Length NozzleThroatDiameter { get; init => field = Guard.In(value, 0, 0.1); }

        /// <summary>The propellant that is left at burn-through, and how it burns.</summary>
        public required WebBurn Web { get; init => field = Guard.NotNull(value); }

        /// <inheritdoc/>
        internal override double KnownDuration => Delay.Seconds + Math.Max(OpeningTime.Seconds, Web.KnownDuration);
    }
}
