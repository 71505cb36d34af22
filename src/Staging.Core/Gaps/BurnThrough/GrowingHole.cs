using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// The ring of propellant that is left when a cap has broken out of the web of an end burner: it burns on in the
/// chamber, and the forward opening grows with it.
/// </summary>
/// <remarks>
/// The burning sphere grows from its radius at rupture, R_c, by b. The forward face of the grain is a plane at the
/// distance Z = R_c + h0 from the ignition point; the sphere has opened it to the radius sqrt((R_c + b)^2 - Z^2), never
/// less than the cap's. The ring burns between the hole and the wall of the grain and is gone at
/// R_c + b = sqrt(Z^2 + R^2).
/// </remarks>
internal sealed class GrowingHole(double grainRadius, double burnt, double faceDistance, double capRadius)
{
    /// <summary>Growth of the sphere at which the ring is gone [m].</summary>
    public double End { get; } = Math.Sqrt(faceDistance * faceDistance + grainRadius * grainRadius) - burnt;

    /// <summary>Volume of the ring at rupture [m3].</summary>
    public double Volume { get; } = RingVolume(grainRadius, burnt, faceDistance, capRadius);

    /// <summary>Volume of what is left of the ring [m3].</summary>
    public double VolumeAt(double growth) =>
        RingVolume(grainRadius, burnt + growth, faceDistance, Math.Max(capRadius, Opened<Real>(growth) * grainRadius));

    /// <summary>Radius of the hole that the growing sphere makes, over that of the grain [-].</summary>
    public T Opened<T>(T growth)
        where T : struct, IReal<T>
    {
        T sphere = burnt + growth;
        return T.Min(1, T.Sqrt(T.Max(0, (sphere - faceDistance) * (sphere + faceDistance))) / grainRadius);
    }

    /// <summary>Burning face of the ring [m2].</summary>
    public T Face<T>(T growth)
        where T : struct, IReal<T>
    {
        T sphere = burnt + growth;
        T inner = T.Min(faceDistance, Height(sphere, capRadius)), outer = Height(sphere, grainRadius);
        return 2 * Math.PI * sphere * T.Max(0, inner - outer);
    }

    /// <summary>Height of a sphere above its equator at a distance from the axis; zero beyond its rim [m].</summary>
    private static T Height<T>(T sphere, double distance)
        where T : struct, IReal<T> => T.Sqrt(T.Max(0, (sphere - distance) * (sphere + distance)));

    /// <summary>
    /// Between the plane and the sphere, from the cap to the wall: Z A - (2 pi/3) (z(cap)^3 - z(wall)^3) [m3].
    /// </summary>
    private static double RingVolume(double wall, double sphere, double plane, double cap)
    {
        double inner = Height<Real>(sphere, cap), outer = Height<Real>(sphere, wall);
        return Math.PI * (wall - cap) * (wall + cap) * plane - 2 * Math.PI / 3 * (inner * inner * inner - outer * outer * outer);
    }
}
