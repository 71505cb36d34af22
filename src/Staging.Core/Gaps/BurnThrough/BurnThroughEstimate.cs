using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// What becomes of an end burner at burn-through. Made by <see cref="GapSource.EndBurner.BurnThrough()"/>.
/// </summary>
/// <remarks>Immutable; may be read from any thread. Every number is derived from the motor's data.</remarks>
public sealed class BurnThroughEstimate
{
    internal BurnThroughEstimate(GapSource.EndBurner motor, double outside)
    {
        InvalidModelException.ThrowOnError(EndBurnerChecks.OfPressure(motor, outside, "Source"));
        Motor = motor;
        double radius = 0.5 * motor.GrainDiameter.Meters, burnt = motor.BurntLength.Meters, density = motor.Density.KilogramsPerCubicMeter;
        double pressure = PressureOf(motor, outside), over = pressure - outside, volume = ChamberBalance.Volume(burnt, radius);
        ChamberPressure = Pressure.FromPascals(pressure);
        ChamberVolume = Volume.FromCubicMeters(volume);
        Rupture = new WebRupture(radius, burnt, over, motor.Strength.Pascals, motor.PlateFactor);
        double mass = density * Rupture.Volume, gamma = motor.Products.Equivalent().Constants.Gamma;
        double fast = PieceThrow.Fast(pressure, outside, volume, gamma, mass);
        double slow = Math.Min(PieceThrow.Slow(over, Rupture.Radius, density, Rupture.Mean), fast);
        PieceMass = Mass.FromKilograms(mass);
        (SlowSpeed, FastSpeed) = (Speed.FromMetersPerSecond(slow), Speed.FromMetersPerSecond(fast));
        PieceSpeed = motor.PieceSpeed ?? Speed.FromMetersPerSecond(slow * Math.Pow(fast / slow, motor.SpeedShare));
        OpeningTime = Duration.FromSeconds(Rupture.Radius / slow);
        RecoilForce = Force.FromNewtons(over * OldFaces);
        Ring = Rupture.IsWhole ? null : new GrowingHole(radius, burnt, burnt + Rupture.Axis, Rupture.Radius);
    }

    /// <summary>
    /// Absolute chamber pressure just before, from the balance between what burns and what the throat passes.
    /// </summary>
    public Pressure ChamberPressure { get; }

    /// <summary>Free volume of the chamber: that of the grain that has burnt.</summary>
    public Volume ChamberVolume { get; }

    /// <summary>Burning rate in the chamber.</summary>
    public Speed BurningRate => Motor.Rate.At(ChamberPressure);

    /// <summary>Thickness at which the web breaks, at the edge of what breaks out.</summary>
    public Length WebThickness => Length.FromMeters(Rupture.Edge);

    /// <summary>Diameter of the hole that opens at once.</summary>
    public Length OpeningDiameter => Length.FromMeters(2 * Rupture.Radius);

    /// <summary>
    /// Time in which it opens: that in which the pieces come a half radius away at the slow bound of their speed.
    /// </summary>
    public Duration OpeningTime { get; }

    /// <summary>Mass of the pieces.</summary>
    public Mass PieceMass { get; }

    /// <summary>Size of a piece: the diameter of a disc of its area. Holes wider than this can lose pieces.</summary>
    public Length PieceSize => OpeningDiameter / Math.Sqrt(Motor.RadialCracks);

    /// <summary>
    /// Mass of the ring that stays in the chamber and burns there; zero where the whole web breaks off.
    /// </summary>
    public Mass RingMass => Mass.FromKilograms(Motor.Density.KilogramsPerCubicMeter * (Ring?.Volume ?? 0));

    /// <summary>
    /// Slow bound of the speed of the pieces: the pressure acts over half a radius; never more than the fast bound.
    /// </summary>
    public Speed SlowSpeed { get; }

    /// <summary>
    /// Fast bound: all the work of the chamber's gas, beyond pushing back the air, goes into the pieces.
    /// </summary>
    public Speed FastSpeed { get; }

    /// <summary>The speed that the motor's data ask for.</summary>
    public Speed PieceSpeed { get; }

    /// <summary>
    /// Momentum that the pieces take with them at that speed; the booster gets as much the other way. None of the
    /// models has it.
    /// </summary>
    public Impulse PieceMomentum => Impulse.FromNewtonSeconds(PieceMass.Kilograms * PieceSpeed.MetersPerSecond);

    /// <summary>Force with which the chamber pushes the booster back while the pieces fly out of it.</summary>
    public Force RecoilForce { get; }

    internal GapSource.EndBurner Motor { get; }

    internal WebRupture Rupture { get; }

    /// <summary>The ring that burns on; null where the whole web breaks off.</summary>
    internal GrowingHole? Ring { get; }

    /// <summary>Faces of the pieces that burnt already [m2].</summary>
    internal double OldFaces => Math.PI * Rupture.Radius * Rupture.Radius;

    /// <summary>
    /// Faces of the pieces that the rupture made: the forward side, the rim and both sides of every crack [m2].
    /// </summary>
    internal double FreshFaces =>
        OldFaces + 2 * (Math.PI + Motor.RadialCracks) * Rupture.Radius * Rupture.Mean;

    /// <summary>Absolute chamber pressure of a motor at the end of its burning, in air of a pressure [Pa].</summary>
    internal static double PressureOf(GapSource.EndBurner motor, double outside)
    {
        double throat = motor.NozzleThroatDiameter.Meters;
        GasConstants gas = motor.Products.Equivalent().Constants;
        double choked = ChamberBalance.ChokedPressure(
            motor.Density.KilogramsPerCubicMeter,
            ChamberBalance.Face(motor.BurntLength.Meters, 0.5 * motor.GrainDiameter.Meters),
            motor.Rate.RateAtOneAtmosphere.MetersPerSecond,
            motor.Rate.PressureExponent,
            ChamberBalance.CharacteristicVelocity(gas, motor.FlameTemperature.Kelvins),
            Math.PI / 4 * throat * throat);
        return ChamberBalance.Pressure(choked, motor.Rate.PressureExponent, gas.Gamma, outside);
    }

    /// <summary>The estimate in words.</summary>
    /// <returns>Three lines.</returns>
    public override string ToString()
    {
        string ring = Ring is null ? "" : Invariant.Text($", {RingMass.Grams:F2} g stay as a ring");
        return Invariant.Text($"Chamber {ChamberPressure.Kilopascals:F0} kPa, burning {BurningRate.MillimetersPerSecond:F1} mm/s.\n"
            + $"{(Ring is null ? "The whole web" : "A cap of the web")} breaks at {WebThickness.Millimeters:F2} mm, "
            + $"{OpeningDiameter.Millimeters:F1} mm wide: {PieceMass.Grams:F2} g in pieces of {PieceSize.Millimeters:F1} mm{ring}.\n"
            + $"Pieces fly at {SlowSpeed.MetersPerSecond:F0} to {FastSpeed.MetersPerSecond:F0} m/s; taken, "
            + $"{PieceSpeed.MetersPerSecond:F0} m/s.");
    }
}
