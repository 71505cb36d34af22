using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Discharge;

/// <summary>Holes and the law they follow.</summary>
public sealed record Opening
{
    /// <summary>The holes.</summary>
    public required VentHoles Holes { get; init => field = Guard.NotNull(value); }

    /// <summary>How much they pass.</summary>
    public required IDischargeLaw Law { get; init => field = Guard.NotNull(value); }

    /// <summary>Whether the wall suits the law, without running anything.</summary>
    /// <param name="path">Where in the model the opening sits, for the finding.</param>
    /// <returns>A warning when the wall is too thin or too thick for the law; empty when it suits.</returns>
    public ImmutableArray<ModelFinding> Check(string path)
    {
        double ratio = Holes.WallThickness.Meters / Holes.Diameter.Meters;
        ValidityRange range = Law.Validity;
        if (ratio >= range.LeastThicknessToDiameter && ratio <= range.MostThicknessToDiameter)
            return [];
        return
        [
            new ModelFinding(FindingSeverity.Warning, "DIS001", path, string.Create(CultureInfo.InvariantCulture,
                $"The wall is {ratio:G3} hole diameters thick; the discharge law holds from {range.LeastThicknessToDiameter:G3} to {range.MostThicknessToDiameter:G3} ({range.Basis.Source}).")),
        ];
    }
}
