using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <content>Answers the three questions of a gap over what is unknown.</content>
public static partial class VentSizing
{
    /// <summary>
    /// Solves a gap at both ends of everything that is unknown, in all combinations, and finds the least vent area for
    /// the slowest and the fastest making of gas.
    /// </summary>
    /// <remarks>The cost is at most 37 gap runs for a source with pieces, 4 for any other.</remarks>
    /// <param name="problem">The gap, with its vents as built.</param>
    /// <param name="layout">How vent area would be drilled.</param>
    /// <param name="model">How the gas is modelled; null for the two-zone model.</param>
    /// <param name="options">How to integrate; null for <see cref="SolverOptions.ForStudies"/>.</param>
    /// <param name="cancellationToken">Stops the runs.</param>
    /// <returns>The bracket.</returns>
    /// <exception cref="InvalidModelException">The problem is in error.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static GapBracket Bracket(this GapProblem problem, VentLayout layout, GapModel? model = null, SolverOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(layout);
        SolverOptions each = (options ?? SolverOptions.ForGaps).OfCases;
        GapRun Solve(GapProblem p) => p.Solve(model, each, cancellationToken: cancellationToken);
        ImmutableArray<BracketUnknown> unknowns = BracketEnds.Of(problem);
        ImmutableArray<BracketCase> corners =
            [.. Enumerable.Range(0, 1 << unknowns.Length).Select(k => Corner(problem, unknowns, k, Solve))];
        ImmutableArray<string> names = [.. unknowns.Select(u => u.Name)];
        return problem.Design.Source.EndBurners.Any()
            ? OfPieces(problem, layout, Solve, names, corners)
            : new GapBracket(problem, names, corners);
    }

    /// <summary>Corner number k: bit i of it puts unknown i at its high end.</summary>
    private static BracketCase Corner(GapProblem problem, ImmutableArray<BracketUnknown> unknowns, int k, Func<GapProblem, GapRun> solve)
    {
        GapProblem at = problem;
        for (int i = 0; i < unknowns.Length; i++)
            at = (k >> i & 1) == 0 ? unknowns[i].AtLow(at) : unknowns[i].AtHigh(at);
        return new BracketCase([.. unknowns.Select((u, i) => (k >> i & 1) == 0 ? u.Low : u.High)], solve(at));
    }

    private static GapBracket OfPieces(GapProblem problem, VentLayout layout, Func<GapProblem, GapRun> solve,
        ImmutableArray<string> unknowns, ImmutableArray<BracketCase> corners)
    {
        GapSource.EndBurner motor = problem.Design.Source.EndBurners.First();
        BurnThroughEstimate estimate = new(motor, problem.Surroundings.Pressure.Pascals);
        UpperGrain grain = problem.Design.Grain;
        double length = problem.Design.Tube.Length.Meters, old = 0, all = 0, throats = 0;
        double borne = PressureBorne(problem);
        foreach (GapSource.EndBurner each in problem.Design.Source.EndBurners)
        {
            BurnThroughEstimate broken = new(each, problem.Surroundings.Pressure.Pascals);
            double made = each.Density.KilogramsPerCubicMeter * each.Rate.At(Pressure.FromPascals(borne)).MetersPerSecond;
            old += made * broken.OldFaces;
            all += made * (broken.OldFaces + broken.FreshFaces);
            throats += Math.PI / 4 * Math.Pow(each.NozzleThroatDiameter.Meters, 2);
        }

        Area? steadyOld = Steady(problem, layout, motor, borne, old, throats),
            steadyAll = Steady(problem, layout, motor, borne, all, throats);
        double diffusivity = grain.Conductivity.WattsPerMeterKelvin
            / (grain.Density.KilogramsPerCubicMeter * grain.HeatCapacity.JoulesPerKilogramKelvin);
        return new GapBracket(problem, unknowns, corners)
        {
            GasAlone = solve(BracketEnds.GasAlone(problem)).Outcome,
            OldFacesSteadyVent = steadyOld,
            AllFacesSteadyVent = steadyAll,
            IsSearched = layout.Check(problem.Design).IsEmpty,
            OldFacesVent = LowerEdge.Of(BracketEnds.OldFaces(problem), layout, steadyOld, solve),
            AllFacesVent = LowerEdge.Of(BracketEnds.FreshFaces(problem, 0), layout, steadyAll, solve),
            Arrival = (Duration.FromSeconds(length / estimate.FastSpeed.MetersPerSecond),
                Duration.FromSeconds(length / estimate.SlowSpeed.MetersPerSecond)),
            ContactDelay = Duration.FromSeconds(
                ContactIgnition.Delay(diffusivity, motor.Rate.At(problem.Surroundings.Pressure).MetersPerSecond)),
            Droplets = new DropletBracket(problem, motor, estimate).ToString(),
        };
    }

    /// <summary>Pressure at which the joint just holds [Pa], as far as a burning-rate law goes.</summary>
    private static double PressureBorne(GapProblem problem)
    {
        FrictionJoint coupler = problem.Design.Joint.Coupler;
        double pressed = JointToSi.ReducedMass(problem.Design.Joint, problem.Bodies)
            * problem.Bodies.ClosingAcceleration.MetersPerSecondSquared;
        double borne = SteadyVent.PressureBorne(problem.Surroundings.Pressure.Pascals,
            Math.Max(0, coupler.BreakawayForce.Newtons + pressed), coupler.PressureArea.SquareMeters);
        return Math.Min(borne, BurnRateLaw.MostPressure_Pa);
    }

    /// <summary>
    /// Vent area of a steady flow, in holes as deep as the layout's wall and wide as one of 6 mm; null where the joint
    /// bears no pressure, so that none is enough.
    /// </summary>
    private static Area? Steady(GapProblem problem, VentLayout layout, GapSource.EndBurner motor, double pressure, double made,
        double throats)
    {
        Gases.GasConstants gas = motor.Products.Equivalent().Constants;
        double leak = problem.Design.Joint.Coupler.LeakArea.SquareMeters;
        var gap = new OrificeConditions(pressure, motor.FlameTemperature.Kelvins, problem.Surroundings.Pressure.Pascals, gas.R, gas.Gamma,
            UsualHole, layout.WallThickness.Meters);
        double area = SteadyVent.Area(problem.Design.DischargeLaw, gap, made, throats, leak);
        return double.IsFinite(area) ? Area.FromSquareMeters(area) : null;
    }

    /// <summary>Diameter of a usual hole [m]: it sets the share of the wall in the coefficient only.</summary>
    private const double UsualHole = 0.006;
}
