using System.Collections.Immutable;

namespace Staging.Core.Flight;

/// <summary>
/// Normal force and centre of pressure of slender finned bodies at small angles of attack and subsonic speed.
/// J. S. Barrowman, The Practical Calculation of the Aerodynamic Characteristics of Slender Finned Vehicles, M.Sc.
/// thesis, Catholic University of America, 1967. Equations recalled; checked against slender-body theory and the mean
/// aerodynamic chord.
/// </summary>
/// <remarks>
/// Holds for attached flow, angles of attack below about 10 degrees, a body long compared with its diameter, thin flat
/// fins. Tubes carry no normal force in this theory; at larger angles they do, and the centre of pressure moves
/// forward.
/// </remarks>
internal static class SlenderBody
{
    /// <summary>
    /// Least slope of the normal force [1/rad] at which a centre of pressure is meaningful: a hundredth of that of
    /// a pointed nose.
    /// </summary>
    private const double MinSlope = 0.02;

    /// <summary>The whole and its parts; throws with FLT032 where there is no centre of pressure.</summary>
    public static NormalForce Of(Airframe airframe)
    {
        double d = airframe.Diameter.Meters;
        var parts = ImmutableArray.CreateBuilder<NormalForce>();
        double noseRatio = airframe.Nose.Diameter.Meters / d;
        parts.Add(Part("nose", 2 * noseRatio * noseRatio, NoseCentre(airframe.Nose.Shape) * airframe.Nose.Length.Meters, d));
        double station = airframe.Nose.Length.Meters;
        for (int i = 0; i < airframe.Body.Length; i++)
        {
            BodyPart part = airframe.Body[i];
            if (part.ForeDiameter.Meters != part.AftDiameter.Meters)
                parts.Add(Transition($"transition {i + 1}", part, station, d));
            station += part.Length.Meters;
        }

        for (int i = 0; i < airframe.Fins.Length; i++)
            parts.Add(Fins($"fins {i + 1}", airframe.Fins[i], d));
        double slope = parts.Sum(p => p.Slope), moment = parts.Sum(p => p.Slope * p.CentreOfPressure.Meters);
        if (!(slope > MinSlope))
        {
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "FLT032", "Airframe",
                Invariant.Text($"The slope of the normal force is {slope:G4} a radian; there is a centre of pressure only above "
                    + $"{MinSlope}. Fins make it positive."))]);
        }

        return new NormalForce("airframe", slope, moment / slope, d, parts.ToImmutable());
    }

    /// <summary>
    /// Centre of pressure of a nose over its length [-]: 2/3 for a cone, 0.466 for an ogive, 1/2 for a paraboloid.
    /// </summary>
    private static double NoseCentre(NoseShape shape) => shape switch
    {
        NoseShape.Cone => 2.0 / 3,
        NoseShape.Ogive => 0.466,
        _ => 0.5,
    };

    /// <summary>
    /// C = 2 [(dR/d)^2 - (dF/d)^2]; X = XP + (L/3) [1 + (1 - dF/dR)/(1 - (dF/dR)^2)], the last fraction being 1/(1 +
    /// dF/dR).
    /// </summary>
    private static NormalForce Transition(string name, BodyPart part, double XP, double d)
    {
        double dF = part.ForeDiameter.Meters / d, dR = part.AftDiameter.Meters / d, ratio = dF / dR;
        return Part(name, 2 * (dR * dR - dF * dF), XP + part.Length.Meters / 3 * (1 + 1 / (1 + ratio)), d);
    }

    /// <summary>
    /// C = [1 + K R/(S + R)] 4 N (S/d)^2/(1 + sqrt(1 + (2 LF/(CR + CT))^2)), K = 1 for 3 or 4 fins and 1/2 for 6;
    /// X = XB + (XR/3)(CR + 2 CT)/(CR + CT) + (CR + CT - CR CT/(CR + CT))/6, LF the length of the mid-chord line.
    /// </summary>
    private static NormalForce Fins(string name, FinGroup fins, double d)
    {
        double CR = fins.RootChord.Meters, CT = fins.TipChord.Meters, S = fins.Span.Meters, XR = fins.Sweep.Meters,
            R = fins.BodyDiameter.Meters / 2;
        double middle = XR + 0.5 * (CT - CR), LF = Math.Sqrt(S * S + middle * middle);
        double interference = 1 + (fins.Count == 6 ? 0.5 : 1) * R / (S + R);
        double aspect = 2 * LF / (CR + CT);
        double slope = interference * 4 * fins.Count * (S / d) * (S / d) / (1 + Math.Sqrt(1 + aspect * aspect));
        double centre = fins.Station.Meters + XR / 3 * (CR + 2 * CT) / (CR + CT) + (CR + CT - CR * CT / (CR + CT)) / 6;
        return Part(name, slope, centre, d);
    }

    private static NormalForce Part(string name, double slope, double station, double d) => new(name, slope, station, d, []);
}
