using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Mass and balance of a plan, with the airframe of each body that can fly by itself.</summary>
public sealed record StackStability
{
    /// <summary>The plan.</summary>
    public required FlightPlan Plan { get; init => field = Guard.NotNull(value); }

    /// <summary>Positions of the masses, one entry per stage, lowest first.</summary>
    public required EquatableArray<StageBalance> Balance { get; init; }

    /// <summary>
    /// Airframe of the stack while stage i is its lowest, one entry per stage, lowest first: the whole stack, ..., the
    /// uppermost stage alone.
    /// </summary>
    public required EquatableArray<Airframe> Airframes { get; init; }

    /// <summary>Checks that the lists match the plan and that each airframe is consistent.</summary>
    /// <returns>Errors <c>FLT040</c> for lists of the wrong length, and the findings of plan and airframes.</returns>
    public ImmutableArray<ModelFinding> Check()
    {
        int n = Plan.Stages.Length;
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        findings.AddRange(Plan.Check());
        if (Balance.Length != n || Airframes.Length != n)
        {
            findings.Add(new ModelFinding(FindingSeverity.Error, "FLT040", "Balance", Invariant.Text($"The plan has {n} stages; there "
                + $"are {Balance.Length} balances and {Airframes.Length} airframes, and there must be one of each per stage.")));
        }

        foreach (Airframe airframe in Airframes)
            findings.AddRange(airframe.Check());
        return findings.ToImmutable();
    }

    /// <summary>
    /// Margins where they matter: each body with its own motors full and burnt, motors above it full. Those of the
    /// failure cases are in <see cref="FailureMargins"/>.
    /// </summary>
    /// <returns>Two margins a stage, lowest first.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports an error.</exception>
    public ImmutableArray<StaticMargin> Margins()
    {
        InvalidModelException.ThrowOnError(Check());
        var margins = ImmutableArray.CreateBuilder<StaticMargin>();
        for (int k = 0; k < Plan.Stages.Length; k++)
        {
            margins.Add(MarginOf(k, burnt: false, failure: null));
            margins.Add(MarginOf(k, burnt: true, failure: null));
        }

        return margins.ToImmutable();
    }

    /// <summary>
    /// Margins of the bodies that fly on in each failure case of <see cref="FailureCase"/>: for every staging the burnt
    /// booster with the cold stage on it, the cold stage alone, and the stage that lights late, full and burnt; for the
    /// uppermost stage, burnt, with nothing ejected.
    /// </summary>
    /// <returns>The margins, lowest staging first.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports an error.</exception>
    /// <remarks>
    /// Mass and outline only: a body that tumbles, or is suspended from a device, has no margin. A dropped booster is
    /// taken to tumble.
    /// </remarks>
    public ImmutableArray<StaticMargin> FailureMargins()
    {
        InvalidModelException.ThrowOnError(Check());
        var margins = ImmutableArray.CreateBuilder<StaticMargin>();
        int top = Plan.Stages.Length - 1;
        for (int k = 1; k <= top; k++)
        {
            margins.Add(MarginOf(k - 1, burnt: true, FailureKind.UnlitAndJoined));
            margins.Add(MarginOf(k, burnt: false, FailureKind.UnlitAndParted));
            margins.Add(MarginOf(k, burnt: false, FailureKind.LitLate));
            margins.Add(MarginOf(k, burnt: true, FailureKind.LitLate));
        }

        margins.Add(MarginOf(top, burnt: true, FailureKind.EjectionFailure));
        return margins.ToImmutable();
    }

    private StaticMargin MarginOf(int lowest, bool burnt, FailureKind? failure)
    {
        string body = string.Join(" + ", Plan.Stages.Skip(lowest).Select(s => s.Name));
        return new StaticMargin(body, burnt, Balanced(lowest, burnt ? 0 : 1), Airframes[lowest].Stability(), failure);
    }

    /// <summary>Centre of gravity of the stack while a stage is its lowest, motors above full.</summary>
    /// <param name="lowest">Index of the lowest stage.</param>
    /// <param name="propellantLeft">Share of the propellant of that stage left [-], 0 to 1.</param>
    /// <returns>Station from the nose tip [m].</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports an error.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No such stage, or a share outside its range.</exception>
    public Length CentreOfGravity(int lowest, double propellantLeft)
    {
        InvalidModelException.ThrowOnError(Check());
        Guard.In(lowest, 0, Plan.Stages.Length - 1, nameof(lowest));
        Guard.In(propellantLeft, 0, 1, property: nameof(propellantLeft));
        return Balanced(lowest, propellantLeft);
    }

    /// <summary>Centre of gravity against time from ignition, until the propellant of a stage is gone.</summary>
    /// <param name="lowest">Index of the stage that burns, the lowest of its body.</param>
    /// <param name="sinceIgnition">Time from its ignition [s].</param>
    /// <returns>Station from the nose tip [m].</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports an error.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No such stage.</exception>
    public Length CentreOfGravityAt(int lowest, Duration sinceIgnition)
    {
        InvalidModelException.ThrowOnError(Check());
        Guard.In(lowest, 0, Plan.Stages.Length - 1, nameof(lowest));
        Stage stage = Plan.Stages[lowest];
        double propellant = stage.PropellantMass.Kilograms;
        return Balanced(lowest, propellant > 0 ? Math.Max(0, 1 - stage.PropellantBurntBy(sinceIgnition).Kilograms / propellant) : 0);
    }

    private Length Balanced(int lowest, double propellantLeft)
    {
        double mass = 0, moment = 0;
        for (int k = lowest; k < Plan.Stages.Length; k++)
        {
            Stage stage = Plan.Stages[k];
            double propellant = stage.PropellantMass.Kilograms;
            double motorCase = stage.LoadedMass.Kilograms - stage.StructureMass.Kilograms - propellant;
            double structure = stage.StructureMass.Kilograms + (k == Plan.Stages.Length - 1 ? Plan.Payload.Kilograms : 0);
            double left = propellant * (k == lowest ? propellantLeft : 1);
            mass += structure + motorCase + left;
            moment += structure * Balance[k].Structure.Meters + motorCase * Balance[k].MotorCase.Meters
                + left * Balance[k].Propellant.Meters;
        }

        return Length.FromMeters(moment / mass);
    }
}
