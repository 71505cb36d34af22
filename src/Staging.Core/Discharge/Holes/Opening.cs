using System.Collections.Immutable;

namespace Staging.Core.Discharge;

/// <summary>Holes and the law they follow.</summary>
public sealed record Opening
{
    /// <summary>The holes.</summary>
    public required VentHoles Holes { get; init => field = Guard.NotNull(value); }

    /// <summary>The discharge law of the holes.</summary>
    public required IDischargeLaw Law { get; init => field = Guard.NotNull(value); }

    /// <summary>Whether the wall thickness is within the range of the law, without running anything.</summary>
    /// <param name="path">Where in the model the opening sits, for the finding.</param>
    /// <returns>
    /// An error <c>DIS002</c> when the wall is thicker than the law accepts, a warning <c>DIS001</c> when it is thinner
    /// or thicker than its source supports; empty when it is within range.
    /// </returns>
    public ImmutableArray<ModelFinding> Check(string path)
    {
        double ratio = Holes.WallThickness.Meters / Holes.Diameter.Meters;
        if (ratio > Law.ThicknessToDiameterLimit)
        {
            return
            [
                new ModelFinding(FindingSeverity.Error, "DIS002", path, Invariant.Text($"The wall is {ratio:G3} hole diameters thick; "
                    + $"the discharge law is not defined beyond {Law.ThicknessToDiameterLimit:G3}.")),
            ];
        }

        ValidityRange range = Law.Validity;
        if (ratio >= range.MinThicknessToDiameter && ratio <= range.MaxThicknessToDiameter)
            return [];
        return
        [
            new ModelFinding(FindingSeverity.Warning, "DIS001", path, Invariant.Text($"The wall is {ratio:G3} hole diameters thick; the "
                + $"discharge law holds from "
                    + $"{range.MinThicknessToDiameter:G3} to {range.MaxThicknessToDiameter:G3} ({range.Basis.Source}).")),
        ];
    }
}
