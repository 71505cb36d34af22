using System.Collections.Immutable;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>The flow through an opening between two gases at rest.</summary>
public sealed class OrificeFlow
{
    internal OrificeFlow(MassFlow massFlow, GasState upstream, double pressureRatio, double criticalRatio, bool answersToDownstream,
        double coefficient, Speed jetSpeed, ImmutableArray<ModelFinding> findings)
    {
        (MassFlow, Upstream, PressureRatio, CriticalPressureRatio) = (massFlow, upstream, pressureRatio, criticalRatio);
        (AnswersToDownstream, DischargeCoefficient, JetSpeed, Findings) = (answersToDownstream, coefficient, jetSpeed, findings);
    }

    /// <summary>Mass flow from side one to side two; negative the other way.</summary>
    public MassFlow MassFlow { get; }

    /// <summary>The side of the higher pressure, whose gas flows; side one at equal pressures.</summary>
    public GasState Upstream { get; }

    /// <summary>Lower over higher pressure [-].</summary>
    public double PressureRatio { get; }

    /// <summary>The ratio [-] at and below which the jet is sonic.</summary>
    public double CriticalPressureRatio { get; }

    /// <summary>
    /// Whether the pressure ratio is at or below the critical one: the jet is sonic where it is narrowest. Behind a
    /// nozzle, a rounded or a long hole the flow no longer depends on the downstream pressure. Behind a sharp edge it
    /// still does: the jet contracts less as the downstream pressure falls, so the flow keeps rising past the critical
    /// ratio (<see cref="IDischargeLaw.LevelsOffWhenChoked"/> tells the two apart).
    /// </summary>
    public bool IsChoked => PressureRatio <= CriticalPressureRatio;

    /// <summary>
    /// Whether the flow changes with the lower pressure: always when subsonic; when choked only for a law that does not
    /// level off, such as the sharp edge.
    /// </summary>
    public bool AnswersToDownstream { get; }

    /// <summary>Flow over the ideal isentropic flow through the whole hole area [-]; zero without flow.</summary>
    public double DischargeCoefficient { get; }

    /// <summary>
    /// Speed of the jet where it is narrowest, isentropic from rest; at most the speed of sound there.
    /// </summary>
    public Speed JetSpeed { get; }

    /// <summary>
    /// How the case lies outside the range of the law: warnings <c>DIS001</c> and <c>DIS003</c> and, at equal
    /// pressures, the error <c>DIS002</c>.
    /// </summary>
    public ImmutableArray<ModelFinding> Findings { get; }

    /// <summary>Flow, jet and coefficient on one line.</summary>
    /// <returns>For example <c>5.21 g/s, choked, Cd 0.733, jet 317 m/s</c>.</returns>
    public override string ToString() => Invariant.Text($"{MassFlow.GramsPerSecond:G4} g/s, {(IsChoked ? "choked" : "subsonic")}, Cd "
        + $"{DischargeCoefficient:F3}, jet {JetSpeed.MetersPerSecond:F0} m/s");
}
