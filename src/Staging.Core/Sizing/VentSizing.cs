using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Puts a vent area into a gap, finds the areas that light the upper motor, and says what to build.</summary>
public static partial class VentSizing
{
    /// <summary>
    /// The gap with another vent area: the same total area in the guide tube and in every jacket on the way out, since
    /// holes in one of two nested walls vent little.
    /// </summary>
    /// <remarks>
    /// The vents of the problem are replaced; of them only the place where the uppermost leads is kept. A jacket keeps
    /// the number and the places of its holes. A gap with jackets and without vents is taken to vent into the first of
    /// them.
    /// </remarks>
    /// <param name="problem">The gap.</param>
    /// <param name="layout">How the area is drilled in the tube.</param>
    /// <param name="total">Total area of the holes in each wall.</param>
    /// <returns>A changed copy.</returns>
    /// <exception cref="InvalidModelException">The layout cannot be drilled (<see cref="VentLayout.Check"/>), or not to
    /// that area (<c>SIZ003</c>, with the areas that can).</exception>
    public static GapProblem WithVents(this GapProblem problem, VentLayout layout, Area total)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(layout);
        InvalidModelException.ThrowOnError(layout.Check(problem.Design));
        VentRange range = VentRange.Of(layout, problem.Design);
        if (!range.Holds(total.SquareMeters))
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "SIZ003", nameof(total), Invariant.Text(
                $"A total vent area of {total.SquareMillimeters:G4} mm2 cannot be drilled; it must be between "
                + $"{range.Smallest.Area * 1e6:G4} mm2 ({range.Smallest.Reason}) and {range.Largest.Area * 1e6:G4} mm2 "
                + $"({range.Largest.Reason})."))]);
        return problem with { Design = VentPath.Vented(problem.Design, layout, total) };
    }

    /// <summary>
    /// Tries total vent areas in place of the vents of the problem, from a pinhole to a side wide open, refines the
    /// edges, and takes the nearest drills for every wall. Where the vents lead into a jacket, every wall on the way
    /// out is given the same total area.
    /// </summary>
    /// <remarks>
    /// The cost is some 35 to 45 gap runs: the areas of the scan, 32 for the starting gap, five for each edge, and the
    /// drilled gap. Areas that cannot be drilled are not tried; the reason says what bounded the areas where that
    /// matters. A run that was not solved counts neither as lit nor as unlit.
    /// </remarks>
    /// <param name="problem">The gap; of its own vents only the place they lead to is used, of its jackets all but the
    /// size of the holes.</param>
    /// <param name="layout">How the area is drilled.</param>
    /// <param name="model">How the gas is modelled; null for the two-zone model.</param>
    /// <param name="options">How to integrate; null for <see cref="SolverOptions.ForStudies"/> in the search and
    /// <see cref="SolverOptions.ForGaps"/> for the drilled gap.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The advice; it says so when no area lights, or none can be drilled.</returns>
    /// <exception cref="InvalidModelException">The problem is in error with every area.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static VentAdvice SizeVents(
        this GapProblem problem, VentLayout layout, GapModel? model = null, SolverOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(layout);
        if (layout.Check(problem.Design) is { IsEmpty: false } findings)
            return new VentAdvice(layout, findings);
        SolverOptions searching = (options ?? SolverOptions.ForGaps).OfCases;
        var scan = new VentScan(VentRange.Of(layout, problem.Design), area =>
        {
            Area total = Area.FromSquareMeters(area);
            return new VentTrial(total, problem.WithVents(layout, total).Solve(model, searching, cancellationToken: cancellationToken));
        });
        if (scan.Windows.MaxBy(w => w.FactorToEdges) is not { } widest)
            return new VentAdvice(layout, scan);
        Area asked = widest.AboveLowerEdge(VentAdvice.Margin);
        (ImmutableArray<WallHoles> walls, GapProblem drilled) = VentDrilling.Of(problem, layout, asked);
        GapRun run = drilled.Solve(model, options, cancellationToken: cancellationToken);
        return new VentAdvice(layout, scan, asked, AdviceText.Why(scan, widest, asked), walls, run);
    }

    /// <summary>
    /// Sizes the vents in the layout of common practice: a wall of 0.5 mm, a land of 1 mm, drills in half millimetres.
    /// See the other overload.
    /// </summary>
    /// <param name="problem">The gap.</param>
    /// <param name="holes">Number of equal holes round the tube, 1 to 100.</param>
    /// <returns>The advice; it says so when no area lights, or none can be drilled.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number of holes is outside its range.</exception>
    /// <exception cref="InvalidModelException">The problem is in error with every area.</exception>
    public static VentAdvice SizeVents(this GapProblem problem, int holes) => problem.SizeVents(new VentLayout { HoleCount = holes });

    /// <summary>
    /// Sizes the vents for a joint of any engagement, and finds how far the joint must engage for the drilled holes to
    /// light the motor with time to spare. The advice has it in <see cref="VentAdvice.Engagement"/>.
    /// </summary>
    /// <remarks>The cost is that of sizing and a dozen gap runs more.</remarks>
    /// <param name="problem">The gap; the sizes of its own holes and the engagement of its joint are not used.</param>
    /// <param name="layout">How the holes of the tube are drilled; those of jackets keep their number and
    /// walls.</param>
    /// <param name="model">How the gas is modelled; null for the two-zone model.</param>
    /// <param name="options">How to integrate; null for <see cref="SolverOptions.ForStudies"/> in the search and
    /// <see cref="SolverOptions.ForGaps"/> for the drilled gap.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The advice; it says so when no area lights, or none can be drilled.</returns>
    /// <exception cref="InvalidModelException">The problem is in error with every area.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static VentAdvice Recommend(
        this GapProblem problem, VentLayout layout, GapModel? model = null, SolverOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        VentAdvice advice = EngagementSearch.Longest(problem).SizeVents(layout, model, options, cancellationToken);
        return advice.Run is { } run ? EngagementSearch.Add(advice, run, cancellationToken) : advice;
    }

    /// <summary>
    /// Sizes vents and joint in the layout of common practice: a wall of 0.5 mm, a land of 1 mm, drills in half
    /// millimetres. See the other overload.
    /// </summary>
    /// <param name="problem">The gap.</param>
    /// <param name="holes">Number of equal holes round the tube, 1 to 100.</param>
    /// <returns>The advice; it says so when no area lights, or none can be drilled.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number of holes is outside its range.</exception>
    /// <exception cref="InvalidModelException">The problem is in error with every area.</exception>
    public static VentAdvice Recommend(this GapProblem problem, int holes) => problem.Recommend(new VentLayout { HoleCount = holes });
}
