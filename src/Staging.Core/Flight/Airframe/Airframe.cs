using System.Collections.Immutable;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// The outside of a body in flight, from which drag and stability are computed. Stations count from the nose tip
/// rearwards.
/// </summary>
public sealed record Airframe
{
    /// <summary>Step between two diameters that counts as a mismatch [m].</summary>
    private const double Mismatch = 1e-5;

    /// <summary>
    /// Share of the diameter by which fins and the body under them may differ [-]: half of it enters their
    /// interference.
    /// </summary>
    private const double FinMismatch = 0.01;

    /// <summary>The nose.</summary>
    public required Nose Nose { get; init => field = Guard.NotNull(value); }

    /// <summary>Tubes and transitions behind the nose, fore to aft; none or more.</summary>
    public required EquatableArray<BodyPart> Body { get; init; }

    /// <summary>Groups of fins, in any order; none or more.</summary>
    public required EquatableArray<FinGroup> Fins { get; init; }

    /// <summary>Length from the nose tip to the aft end [m].</summary>
    public Length Length => Length.FromMeters(Nose.Length.Meters + Body.Sum(p => p.Length.Meters));

    /// <summary>
    /// Largest diameter [m]; drag and lift coefficients refer to its area, margins are measured in it.
    /// </summary>
    public Length Diameter => Length.FromMeters(Body.Aggregate(Nose.Diameter.Meters,
        (d, p) => Math.Max(d, Math.Max(p.ForeDiameter.Meters, p.AftDiameter.Meters))));

    /// <summary>Area of the largest cross-section [m2].</summary>
    public Area ReferenceArea => Area.FromSquareMeters(Math.PI / 4 * Diameter.Meters * Diameter.Meters);

    /// <summary>Diameter of the aft end [m].</summary>
    public Length BaseDiameter => Body.Length == 0 ? Nose.Diameter : Body[^1].AftDiameter;

    /// <summary>The same airframe with a lower stage behind it.</summary>
    /// <param name="parts">Its tubes and transitions, fore to aft.</param>
    /// <param name="fins">Its fins, stations from the nose tip of the whole.</param>
    /// <returns>A new airframe.</returns>
    public Airframe With(EquatableArray<BodyPart> parts, EquatableArray<FinGroup> fins) =>
        this with { Body = [.. Body, .. parts], Fins = [.. Fins, .. fins] };

    /// <summary>
    /// Normal force and centre of pressure by the equations of J. S. Barrowman (1967), of the whole and of its parts.
    /// </summary>
    /// <returns>The whole, with its parts.</returns>
    /// <exception cref="InvalidModelException">The parts have no positive normal force together (<c>FLT032</c>), so no
    /// centre of pressure: a body that narrows without fins.</exception>
    /// <remarks>
    /// Holds for attached flow, angles of attack below about 10 degrees, a body long compared with its diameter,
    /// thin flat fins. Tubes carry no normal force in this theory; at larger angles they do, and the centre of pressure
    /// moves forward.
    /// </remarks>
    public NormalForce Stability() => SlenderBody.Of(this);

    /// <summary>
    /// The drag coefficient by parts at one Mach number, by published correlations recalled from their sources. Good to
    /// perhaps 20 % below Mach 0.8, less across the speed of sound: a measured value, or a flight, is better.
    /// </summary>
    /// <param name="machNumber">Mach number [-], 0.01 to 5.</param>
    /// <param name="atmosphere">The air.</param>
    /// <param name="altitude">Altitude above sea level [m], -500 m to 30 km.</param>
    /// <param name="roughness">Height of the surface roughness [m], 0 to 1 mm.</param>
    /// <param name="jetDiameter">Diameter of the jet in the base [m], 0 to 2 m; zero for a coasting body.</param>
    /// <returns>The parts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public DragEstimate DragAt(
        double machNumber, IAtmosphere atmosphere, Length altitude, Length roughness, Length jetDiameter = default) =>
        DragBuildUp.At(this, Conditions(atmosphere, altitude, roughness, jetDiameter), machNumber);

    /// <summary>A drag table from Mach 0.05 to 3, built up part by part: see <see cref="DragAt"/>.</summary>
    /// <param name="atmosphere">The air; its density and viscosity set the Reynolds number.</param>
    /// <param name="altitude">
    /// A typical altitude of the flight above sea level [m], -500 m to 30 km. One table holds for the whole flight, so
    /// take the middle.
    /// </param>
    /// <param name="roughness">
    /// Height of the surface roughness [m], 0 to 1 mm. Orders of magnitude: polished paint 2 um, sprayed paint 20 um,
    /// bare paper or balsa 50 to 100 um (S. F. Hoerner, Fluid-Dynamic Drag, 1965; from memory).
    /// </param>
    /// <param name="jetDiameter">
    /// Diameter over which the jet of burning motors fills the base [m], 0 to 2 m; about the case diameter, for
    /// <see cref="Stage.DragWhileBurning"/>. Zero, the default, is a coasting body.
    /// </param>
    /// <returns>The table, on the largest cross-section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public DragTable DragTable(IAtmosphere atmosphere, Length altitude, Length roughness, Length jetDiameter = default) =>
        DragBuildUp.Table(this, Conditions(atmosphere, altitude, roughness, jetDiameter));

    /// <summary>Checks that the parts fit together.</summary>
    /// <returns>
    /// Warnings <c>FLT030</c> where diameters do not meet, <c>FLT031</c> where a fin reaches beyond the aft end and
    /// <c>FLT033</c> where fins state another diameter than that of the body under them; empty when all is consistent.
    /// </returns>
    public ImmutableArray<ModelFinding> Check()
    {
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        double diameter = Nose.Diameter.Meters;
        for (int i = 0; i < Body.Length; i++)
        {
            if (Math.Abs(Body[i].ForeDiameter.Meters - diameter) > Mismatch)
            {
                findings.Add(new ModelFinding(FindingSeverity.Warning, "FLT030", $"Body[{i}].ForeDiameter", Invariant.Text(
                    $"The part begins with {Body[i].ForeDiameter.Millimeters:F2} mm, the one before it ends with {diameter * 1e3:F2} "
                        + $"mm; the step is left out of drag and lift.")));
            }

            diameter = Body[i].AftDiameter.Meters;
        }

        for (int i = 0; i < Fins.Length; i++)
        {
            double end = Fins[i].Station.Meters + Fins[i].RootChord.Meters;
            if (end > Length.Meters + Mismatch)
            {
                findings.Add(new ModelFinding(FindingSeverity.Warning, "FLT031", $"Fins[{i}].Station", Invariant.Text(
                    $"The root chord ends at {end * 1e3:F1} mm, the body at {Length.Millimeters:F1} mm; the root should lie on the "
                        + $"body.")));
            }

            double named = Fins[i].BodyDiameter.Meters, under = DiameterAt(0.5 * (Fins[i].Station.Meters + end));
            if (Math.Abs(named - under) > FinMismatch * under)
            {
                findings.Add(new ModelFinding(FindingSeverity.Warning, "FLT033", $"Fins[{i}].BodyDiameter", Invariant.Text(
                    $"The fins state a body diameter of {named * 1e3:F2} mm; under the middle of their root it is {under * 1e3:F2} mm. "
                        + $"Interference uses the value of the fins.")));
            }
        }

        return findings.ToImmutable();
    }

    private static DragConditions Conditions(IAtmosphere atmosphere, Length altitude, Length roughness, Length jetDiameter) => new(
        Guard.NotNull(atmosphere, nameof(atmosphere)), Guard.In(altitude, -500, 30_000, nameof(altitude)).Meters,
        Guard.In(roughness, 0, 1e-3, nameof(roughness)).Meters, Guard.In(jetDiameter, 0, 2, nameof(jetDiameter)).Meters);

    /// <summary>
    /// Diameter of the body at a station behind the nose [m]; beyond the ends, that of the end. A nose counts with
    /// its base diameter: its outline is not straight.
    /// </summary>
    private double DiameterAt(double station)
    {
        double start = Nose.Length.Meters, diameter = Nose.Diameter.Meters;
        foreach (BodyPart part in Body)
        {
            if (station < start)
                break;
            double share = Math.Min(1, (station - start) / part.Length.Meters);
            diameter = part.ForeDiameter.Meters + share * (part.AftDiameter.Meters - part.ForeDiameter.Meters);
            start += part.Length.Meters;
        }

        return diameter;
    }
}
