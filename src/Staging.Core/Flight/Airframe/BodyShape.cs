namespace Staging.Core.Flight;

/// <summary>Outlines and wetted areas.</summary>
internal static class BodyShape
{
    /// <summary>
    /// Strips into which a nose is cut: the area is good to 1e-4, far below the rest of a drag estimate.
    /// </summary>
    private const int Strips = 200;

    /// <summary>Area of nose, tubes and transitions [m2], without the base.</summary>
    public static double WettedArea(Airframe airframe)
    {
        double area = NoseArea(airframe.Nose);
        foreach (BodyPart part in airframe.Body)
            area += Frustum(part.ForeDiameter.Meters / 2, part.AftDiameter.Meters / 2, part.Length.Meters);
        return area;
    }

    private static double NoseArea(Nose nose)
    {
        double L = nose.Length.Meters, R = nose.Diameter.Meters / 2, area = 0;
        for (int i = 0; i < Strips; i++)
            area += Frustum(Radius(nose.Shape, (double)i / Strips, L, R), Radius(nose.Shape, (i + 1.0) / Strips, L, R), L / Strips);
        return area;
    }

    /// <summary>
    /// Radius at a share x of the length from the tip; the ogive is an arc of radius (R^2 + L^2)/(2R).
    /// </summary>
    private static double Radius(NoseShape shape, double x, double L, double R)
    {
        double rho = (R * R + L * L) / (2 * R), behind = L * (1 - x);
        return shape switch
        {
            NoseShape.Cone => R * x,
            NoseShape.Ogive => Math.Sqrt(rho * rho - behind * behind) + R - rho,
            _ => R * Math.Sqrt(x),
        };
    }

    private static double Frustum(double r0, double r1, double length) =>
        Math.PI * (r0 + r1) * Math.Sqrt(length * length + (r1 - r0) * (r1 - r0));
}
