namespace Staging.Core.Flight;

/// <summary>
/// Pressure drag of noses and of widening transitions. Below the speed of sound 0.8 sin^2(phi) on a cone of half-angle
/// phi, nothing on an outline without a corner (S. F. Hoerner 1965); above it (0.083 + 0.096/M^2)(phi/10 deg)^1.69 with
/// phi from the fineness (E. A. Bonney, Engineering Supersonic Aerodynamics, 1950), the same for rounded outlines,
/// which is slightly high. Both from memory.
/// </summary>
internal static class ForebodyDrag
{
    public static double Of(Airframe airframe, double M)
    {
        double d = airframe.Diameter.Meters, noseShare = airframe.Nose.Diameter.Meters / d;
        double phi = Math.Atan2(0.5 * airframe.Nose.Diameter.Meters, airframe.Nose.Length.Meters);
        double drag = noseShare * noseShare * Cone(phi, M, airframe.Nose.Shape == NoseShape.Cone);
        foreach (BodyPart part in airframe.Body)
        {
            double fore = part.ForeDiameter.Meters, aft = part.AftDiameter.Meters;
            if (aft > fore)
                drag += (aft * aft - fore * fore) / (d * d) * Cone(Math.Atan2(0.5 * (aft - fore), part.Length.Meters), M, hasCorner: true);
        }

        return drag;
    }

    private static double Cone(double phi, double M, bool hasCorner)
    {
        double sine = Math.Sin(phi), degrees = phi * 180 / Math.PI, m = Math.Max(M, 1);
        return TransonicBlend.Of(M, hasCorner ? 0.8 * sine * sine : 0, (0.083 + 0.096 / (m * m)) * Math.Pow(degrees / 10, 1.69));
    }
}
