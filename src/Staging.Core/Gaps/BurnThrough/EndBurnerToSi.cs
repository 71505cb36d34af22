namespace Staging.Core.Gaps;

/// <summary>Turns the pieces and the ring of a broken web into plain SI numbers.</summary>
internal static class EndBurnerToSi
{
    public static PieceParameters Pieces(BurnThroughEstimate estimate, GapProblem problem, int unburnt, int way)
    {
        GapSource.EndBurner motor = estimate.Motor;
        double start = motor.Delay.Seconds, speed = estimate.PieceSpeed.MetersPerSecond, size = estimate.PieceSize.Meters;
        var losses = new PieceLosses(problem.Design, size);
        return new PieceParameters
        {
            Mass = estimate.PieceMass.Kilograms,
            Density = motor.Density.KilogramsPerCubicMeter,
            OldFaces = estimate.OldFaces,
            FreshFaces = estimate.FreshFaces,
            FreshAt = start + motor.FreshFaceDelay.Seconds,
            Rate = motor.Rate.RateAtOneAtmosphere.MetersPerSecond,
            PressureExponent = motor.Rate.PressureExponent,
            Speed = speed,
            Size = size,
            Kept = losses.Kept,
            LostAt = speed > 0 ? start + losses.Station / speed : double.PositiveInfinity,
            Unburnt = unburnt,
            Way = way,
        };
    }

    public static RingParameters Ring(BurnThroughEstimate estimate, int left)
    {
        GapSource.EndBurner motor = estimate.Motor;
        return new RingParameters(estimate.Ring!, estimate.OpeningDiameter / motor.GrainDiameter, motor.Density.KilogramsPerCubicMeter,
            motor.Rate.RateAtOneAtmosphere.MetersPerSecond, motor.Rate.PressureExponent, left);
    }
}
