using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>
/// Which total vent areas light the upper motor, what to drill into every wall, and what the drilled gap does.
/// </summary>
/// <remarks>
/// It is as good as the source, the joint and the grain that it was computed from, which are uncertain by tens of per
/// cent. Local codes, the range safety officer and licensed practice decide; plan for a stage that does not light.
/// </remarks>
public sealed class VentAdvice
{
    /// <summary>
    /// Factor from the lower edge of the areas that light to the area asked for [-]: 1.5. The least area grows in
    /// proportion to the gas that is made, and published burning rates differ by 42 % at one atmosphere.
    /// </summary>
    public const double Margin = 1.5;

    private readonly string? joint;

    /// <summary>Nothing can be drilled.</summary>
    internal VentAdvice(VentLayout layout, ImmutableArray<ModelFinding> findings) =>
        (Layout, Findings, Trials, Windows, Walls, Reason) = (layout, findings, [], [], [], AdviceText.WhyNothing(findings));

    /// <summary>No area lights.</summary>
    internal VentAdvice(VentLayout layout, VentScan scan) =>
        (Layout, Findings, Trials, Windows, Walls, Reason) = (layout, [], scan.Trials, [], [], AdviceText.WhyNone(scan));

    /// <summary>An area to drill.</summary>
    internal VentAdvice(VentLayout layout, VentScan scan, Area recommended, string reason, ImmutableArray<WallHoles> walls, GapRun run)
    {
        (Layout, Findings, Trials, Windows) = (layout, [], scan.Trials, scan.Windows);
        (Recommended, Reason, Walls, Run) = (recommended, reason, walls, run);
    }

    private VentAdvice(VentAdvice sized, GapRun run, Length? engagement, string joint)
    {
        (Layout, Findings, Trials, Windows) = (sized.Layout, sized.Findings, sized.Trials, sized.Windows);
        (Recommended, Reason, Walls, Run) = (sized.Recommended, sized.Reason, sized.Walls, run);
        (Engagement, this.joint) = (engagement, joint);
    }

    /// <summary>How the area was laid out.</summary>
    public VentLayout Layout { get; }

    /// <summary>
    /// Why nothing can be drilled in this layout (<see cref="VentLayout.Check"/>); empty where something can.
    /// </summary>
    public ImmutableArray<ModelFinding> Findings { get; }

    /// <summary>Every area tried in the scan, smallest first. A run that was not solved counts for nothing.</summary>
    public ImmutableArray<VentTrial> Trials { get; }

    /// <summary>The intervals that light, smallest first; empty when none does.</summary>
    public ImmutableArray<VentWindow> Windows { get; }

    /// <summary>The widest interval by ratio of its edges; null when none lights.</summary>
    public VentWindow? Widest => Windows.MaxBy(w => w.FactorToEdges);

    /// <summary>
    /// Total area asked for, in each wall: the lower edge of the widest interval times <see cref="Margin"/>, or where
    /// the interval is too narrow for that its middle; null when none lights.
    /// </summary>
    public Area? Recommended { get; }

    /// <summary>The reason in words.</summary>
    public string Reason { get; }

    /// <summary>Holes for every wall on the way out, the guide tube first; empty when no area lights.</summary>
    public ImmutableArray<WallHoles> Walls { get; }

    /// <summary>The holes of the guide tube, with the drills next to them; null when none lights.</summary>
    public HolePattern? Holes => Walls.FirstOrDefault()?.Pattern;

    /// <summary>
    /// The gap with the drilled holes, and with <see cref="Engagement"/> where that was asked for; null when no area
    /// lights. Where the holes lie in the tube is in its design.
    /// </summary>
    public GapRun? Run { get; }

    /// <summary>
    /// Shortest engagement of the joint that leaves half of the time to ignition as a margin to separation, to the next
    /// half millimetre; null when it was not asked for, no area lights, or no engagement up to 500 mm holds.
    /// </summary>
    public Length? Engagement { get; }

    /// <summary>
    /// The whole answer: areas that light, drills, their place, the joint, and what the drilled gap does.
    /// </summary>
    /// <returns>Some lines of at most 100 characters.</returns>
    public override string ToString() => AdviceText.Of(this, joint);

    /// <summary>The same advice with what was found of the joint.</summary>
    internal VentAdvice WithJoint(GapRun run, Length? engagement, string text) => new(this, run, engagement, text);
}
