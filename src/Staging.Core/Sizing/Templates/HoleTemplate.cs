using System.Collections.Immutable;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>
/// The holes of one wall as places on its unrolled outside: what a builder marks before drilling. Rings at neighbouring
/// stations are turned against each other where that leaves more wall.
/// </summary>
public sealed class HoleTemplate
{
    internal HoleTemplate(string wall, double? bore, double? outerDiameter, Length gapLength, ImmutableArray<HoleRing> rings)
    {
        (Wall, GapLength, Rings) = (wall, gapLength, rings);
        Bore = bore is { } inner ? Length.FromMeters(inner) : null;
        OuterDiameter = outerDiameter is { } outer ? Length.FromMeters(outer) : null;
        Findings = TemplateChecks.Of(this);
    }

    /// <summary>The wall: "guide tube", or the name of the jacket whose outer wall it is.</summary>
    public string Wall { get; }

    /// <summary>Inner diameter of the tube at the holes; null for a jacket that does not state it.</summary>
    public Length? Bore { get; }

    /// <summary>Bore and twice the wall; null for a jacket that does not state its bore.</summary>
    public Length? OuterDiameter { get; }

    /// <summary>
    /// From station 0, the forward face of the booster motor, to the upper nozzle plane: the length of the guide tube.
    /// </summary>
    public Length GapLength { get; }

    /// <summary>The rings of holes, lowest first; of those without a station, in the order of the design.</summary>
    public ImmutableArray<HoleRing> Rings { get; }

    /// <summary>
    /// <c>SIZ010</c> where holes overlap, <c>SIZ011</c> where they leave less wall than a quarter of the hole or 1 mm
    /// (a judgement), <c>SIZ012</c> where the design does not say where the holes are; empty where all is well.
    /// </summary>
    public ImmutableArray<ModelFinding> Findings { get; }

    /// <summary>Every wall of a design that has holes, the guide tube first.</summary>
    /// <remarks>
    /// Where holes of one wall lie in tubes of different diameter (a bore in steps), each diameter has a template of
    /// its own.
    /// </remarks>
    /// <param name="design">The design.</param>
    /// <returns>The templates; empty for a design without holes.</returns>
    public static ImmutableArray<HoleTemplate> Of(GapDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return TemplateMaker.Of(design, drills: null);
    }

    /// <summary>Every wall of the gap as advised, with the drills that were taken.</summary>
    /// <param name="advice">The advice.</param>
    /// <returns>The templates; empty when no area lights.</returns>
    public static ImmutableArray<HoleTemplate> Of(VentAdvice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return advice.Run is { } run ? TemplateMaker.Of(run.Problem.Design, advice.Layout.Drills) : [];
    }

    /// <summary>The wall and its rings.</summary>
    /// <returns>A line for the wall and one for each ring.</returns>
    public override string ToString()
    {
        string diameter = OuterDiameter is { } d ? Invariant.Text($", outside diameter {d.Millimeters:F1} mm") : "";
        return string.Join('\n', [$"{Wall}{diameter}", .. Rings.Select(r => $"  {r}")]);
    }
}
