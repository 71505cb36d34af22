using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

public abstract partial record GapSource
{
    /// <summary>
    /// A booster motor known by its grain: an end burner whose last web breaks under the chamber's own pressure. Its
    /// pieces are thrown up the tube and burn where they are. Pressure, opening, mass and size of the pieces and the
    /// bounds of their speed follow; <see cref="BurnThrough()"/> says what they are.
    /// </summary>
    /// <remarks>
    /// For a motor without delay train and forward closure: one that has them does not burn through. What is not known
    /// stands here as an input with its range: strength, speed of the pieces, lighting of their fresh faces.
    /// </remarks>
    public sealed record EndBurner : Motor
    {
        /// <inheritdoc/>
        public override required DustyGas Products { get; init => field = Guard.NotNull(value); }

        /// <summary>Diameter of the grain [m], 3 mm to 150 mm.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Length GrainDiameter { get; init => field = Guard.In(value, 0.003, 0.15); }

        /// <summary>
        /// Length burnt at burn-through [m], 3 mm to 0.5 m: along the axis, from where the grain was lit to the web.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Length BurntLength { get; init => field = Guard.In(value, 0.003, 0.5); }

        /// <summary>Throat diameter of the motor's nozzle [m], 0.3 mm to 100 mm; sets the chamber pressure.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public override required Length NozzleThroatDiameter { get; init => field = Guard.In(value, 3e-4, 0.1); }

        /// <summary>Density of the propellant [kg/m3], 500 to 3000.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Density Density { get; init => field = Guard.In(value, 500, 3000); }

        /// <summary>How fast a burning face recedes; an exponent of pressure below 0.9.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Its exponent is 0.9 or more.</exception>
        public required BurnRateLaw Rate
        {
            get;
            init
            {
                Guard.In(Guard.NotNull(value).PressureExponent, 0, MaxExponent, property: "Rate.PressureExponent");
                field = value;
            }
        }

        /// <summary>
        /// Modulus of rupture of the pressed propellant [Pa], 0.2 to 100 MPa. 2 to 10 MPa is a bounded judgement:
        /// no measurement of black powder was found.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Pressure Strength { get; init => field = Guard.In(value, 2e5, 1e8); }

        /// <summary>
        /// Factor k of the bending stress k dp (s/h)^2 of the web [-], 0.5 to 1.5: 0.75 clamped at the wall, 1.24
        /// simply supported. The default is 1.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public double PlateFactor { get; init => field = Guard.In(value, 0.5, 1.5); } = 1;

        /// <summary>
        /// Radial cracks, each from the axis to the edge [-], 1 to 20: they make as many pieces. The default is 4; 3 to
        /// 6 is a judgement.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public double RadialCracks { get; init => field = Guard.In(value, 1, 20); } = 4;

        /// <summary>
        /// Where the speed of the pieces lies between its slow bound (0) and its fast one (1), by factors [-]. The
        /// default is 0.5.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public double SpeedShare { get; init => field = Guard.In(value, 0, 1); } = 0.5;

        /// <summary>
        /// A stated speed of the pieces instead [m/s], 0 to 500; 0 keeps them at the booster. Null, the default, takes
        /// <see cref="SpeedShare"/>.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public Speed? PieceSpeed { get; init => field = value is { } v ? Guard.In(v, 0, 500) : null; }

        /// <summary>
        /// Time after which the fresh faces of the pieces burn as well [s], 0 to 10 s. They are cold and have to be lit
        /// like any grain: 5 to 80 ms in products of 1000 to 1800 K.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration FreshFaceDelay { get; init => field = Guard.In(value, 0, 10); }

        /// <summary>What becomes of it at burn-through, in air of one standard atmosphere.</summary>
        /// <returns>Pressure, rate, web and pieces.</returns>
        public BurnThroughEstimate BurnThrough() => BurnThrough(Pressure.FromPascals(BurnRateLaw.ReferencePressure_Pa));

        /// <summary>What becomes of it at burn-through.</summary>
        /// <param name="outside">Pressure beyond the web [Pa], 1 kPa to 200 kPa.</param>
        /// <returns>Pressure, rate, web and pieces.</returns>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        /// <exception cref="InvalidModelException">The balance gives no pressure that breaks a web.</exception>
        public BurnThroughEstimate BurnThrough(Pressure outside) => new(this, Guard.In(outside, 1e3, 2e5, nameof(outside)).Pascals);

        /// <summary>Largest exponent of pressure at which the balance is well conditioned [-].</summary>
        private const double MaxExponent = 0.9;

        /// <inheritdoc/>
        internal override double KnownDuration => Delay.Seconds;
    }
}
