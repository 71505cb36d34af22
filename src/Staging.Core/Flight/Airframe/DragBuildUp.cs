using Staging.Core.Gases;

namespace Staging.Core.Flight;

/// <summary>
/// Drag coefficient from the outside of an airframe, part by part, by published correlations recalled from their
/// sources. Good to perhaps 20 % below Mach 0.8, less across the speed of sound: a measured value, or a flight, is
/// better.
/// </summary>
/// <remarks>
/// Left out: launch lugs, steps between diameters, suction on boat-tails, interference of fins and body, angle of
/// attack.
/// </remarks>
internal static class DragBuildUp
{
    /// <summary>Mach numbers of a table: closely spaced where the coefficient changes.</summary>
    private static readonly double[] TableMach =
        [0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.95, 1, 1.05, 1.1, 1.2, 1.3, 1.5, 1.75, 2, 2.5, 3];

    /// <summary>The drag coefficient by parts at one Mach number.</summary>
    public static DragEstimate At(Airframe airframe, DragConditions conditions, double machNumber)
    {
        double M = Guard.In(machNumber, 0.01, 5, property: nameof(machNumber));
        AirSample air = conditions.Atmosphere.At(conditions.Altitude);
        double mu = AirTransport.Viscosity(air.Temperature_K);
        double unitRe = air.Density_kg_per_m3 * M * air.SoundSpeed_m_per_s / mu;
        double A = airframe.ReferenceArea.SquareMeters, l = airframe.Length.Meters, d = airframe.Diameter.Meters,
            k = conditions.Roughness;

        double bodyFriction = SkinFriction.Mean(unitRe * l, k / l, M) * BodyFormFactor(l / d) * BodyShape.WettedArea(airframe) / A;
        double finFriction = 0, finPressure = 0;
        foreach (FinGroup fins in airframe.Fins)
        {
            double c = 0.5 * (fins.RootChord.Meters + fins.TipChord.Meters);
            double thickness = fins.Thickness.Meters / c;
            finFriction += 2 * SkinFriction.Mean(unitRe * c, k / c, M) * (1 + 2 * thickness) * fins.Count * fins.PlanformArea.SquareMeters
                / A;
            finPressure += FinDrag.Pressure(fins, M) / A;
        }

        double forebody = ForebodyDrag.Of(airframe, M);
        double baseDrag = BaseDrag(airframe, conditions, M, bodyFriction + forebody);
        return new DragEstimate(M, bodyFriction, finFriction, forebody, finPressure, baseDrag);
    }

    /// <summary>A drag table from Mach 0.05 to 3.</summary>
    public static DragTable Table(Airframe airframe, DragConditions conditions) => DragTable.FromColumns(
        airframe.ReferenceArea, TableMach, Array.ConvertAll(TableMach, M => At(airframe, conditions, M).Total));

    /// <summary>
    /// Form factor of a body on its skin friction, 1 + 1.5 (d/l)^1.5 + 7 (d/l)^3 (S. F. Hoerner, Fluid-Dynamic Drag,
    /// 1965, chapter 6; from memory).
    /// </summary>
    /// <param name="fineness">Length over diameter [-], above 1.</param>
    /// <returns>The factor [-].</returns>
    public static double BodyFormFactor(double fineness) => 1 + 1.5 * Math.Pow(fineness, -1.5) + 7 * Math.Pow(fineness, -3);

    /// <summary>
    /// Base drag of a slender body below the speed of sound, 0.029/sqrt(C_fore) (S. F. Hoerner 1965, chapter 3; from
    /// memory).
    /// </summary>
    /// <param name="forebodyDrag">Drag coefficient of all that lies ahead of the base, on the area of the base [-],
    /// above 0.</param>
    /// <returns>Base drag coefficient on the area of the base [-].</returns>
    public static double SubsonicBase(double forebodyDrag) => 0.029 / Math.Sqrt(forebodyDrag);

    /// <summary>
    /// Hoerner's value below Mach 0.8, growing as 0.12 + 0.13 M^2 does; 0.25/M above Mach 1.2; the part of the base
    /// under the jet left out (E. L. Fleeman, Tactical Missile Design, 2001; from memory).
    /// </summary>
    private static double BaseDrag(Airframe airframe, DragConditions conditions, double M, double forebody)
    {
        double dB = airframe.BaseDiameter.Meters, d = airframe.Diameter.Meters, share = dB * dB / (d * d);
        double jet = Math.Min(conditions.JetDiameter / dB, 1);
        double subsonic = SubsonicBase(forebody / share) * (1 + 0.13 / 0.12 * M * M);
        return share * (1 - jet * jet) * TransonicBlend.Of(M, subsonic, 0.25 / Math.Max(M, 1));
    }
}
