using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Campaign.Drawing;

/// <summary>Holes out of the tube, jackets round it, and the law under which they discharge.</summary>
internal static class VentDraws
{
    /// <summary>Up to three vents. They fit the tube, but for some of those at the edges.</summary>
    public static EquatableArray<Vent> Vents(Draws d, string at, GuideTube tube, int jackets)
    {
        int count = d.Choice(at + "vents", 6) switch { 1 => 0, 2 => 2, 3 => 3, _ => 1 };
        return [.. Enumerable.Range(0, count).Select(i => Vent(d, $"{at}vent{i + 1}.", tube, jackets, i))];
    }

    public static EquatableArray<Jacket> Jackets(Draws d, string at, int count) => [.. Enumerable.Range(1, count).Select(i => new Jacket
    {
        Name = Name(i),
        Volume = Volume.FromCubicMeters(d.Number($"{at}jacket{i}.volume", new(2e-5, 2e-6, 2e-4, 1e-9, 1))),
        WallArea = Area.FromSquareMeters(d.Number($"{at}jacket{i}.wall", new(0.01, 0, 0.03, 0, 10))),
        Openings = d.Choice($"{at}jacket{i}.closed", 8) == 1
            ? []
            :
            [
                new JacketOpening
                {
                    Holes = Holes(d, $"{at}jacket{i}."),
                    To = i < count ? VentTarget.IntoJacket(Name(i + 1)) : Outside(d, $"{at}jacket{i}."),
                },
            ],
    })];

    public static IDischargeLaw Law(Draws d, string at) => d.Choice(at + "law", 8) switch
    {
        1 => new SharpEdgedLaw { EdgeFactor = d.Number(at + "law.edge", new(1, 0.95, 1.1, 0.9, 1.18)) },
        2 => new ConstantCoefficientLaw
        {
            Coefficient = d.Number(at + "law.coefficient", new(0.7, 0.6, 0.9, 0.1, 1)),
            Provenance = Invented.Here,
        },
        3 => new JobsonLaw { IncompressibleContraction = d.Number(at + "law.contraction", new(0.61, 0.6, 0.75, 0.5, 0.9)) },
        4 => ShortTubeLaw.SquareInlet,
        5 => new SonicConductanceLaw
        {
            SonicConductance_m3_per_sPa = d.Number(at + "law.conductance", new(4e-8, 2e-8, 1e-7, 1e-13, 1e-5)),
            CriticalRatio = d.Number(at + "law.critical", new(0.3, 0.2, 0.5, 0, 0.7)),
            SubsonicIndex = d.Number(at + "law.index", new(0.5, 0.45, 0.6, 0.4, 1)),
            ReferenceArea = Area.FromSquareMillimeters(20),
            Provenance = Invented.Here,
        },
        _ => SharpEdgedLaw.Perry,
    };

    private static Vent Vent(Draws d, string at, GuideTube tube, int jackets, int place)
    {
        double bore = tube.BoreBelow(tube.Length).Meters, length = tube.Length.Meters;
        VentHoles holes = Holes(d, at);
        if (d.Choice(at + "unfit", 12) != 1)
        {
            double widest = Math.Min(0.95 * bore, 0.9 * length);
            double diameter = Math.Max(1e-4, Math.Min(holes.Diameter.Meters, widest));
            int count = Math.Clamp((int)(0.95 * Math.PI * bore / diameter), 1, holes.Count);
            holes = holes with { Diameter = Length.FromMeters(diameter), Count = count };
        }

        double half = 0.5 * holes.Diameter.Meters, up = d.Number(at + "at", new(place == 0 ? 1 : 0.9 - 0.2 * place, 0.3, 1, 0, 1));
        var vent = new Vent
        {
            Station = Length.FromMeters(Math.Clamp(half + up * (length - 2 * half), 0, 5)),
            Holes = holes,
            To = jackets > 0 && d.Choice(at + "jacket", 4) > 0 ? VentTarget.IntoJacket(Name(1)) : Outside(d, at),
        };
        if (d.Choice(at + "long", 6) != 1)
            return vent;
        double axial = Math.Clamp(2 * half + d.Number(at + "axial", new(0.3, 0, 0.6, 0, 1)) * (length - 2 * half), 1e-4, 5);
        return vent with { AxialLength = Length.FromMeters(axial), Station = Length.FromMeters(Math.Clamp(length - 0.5 * axial, 0, 5)) };
    }

    private static VentHoles Holes(Draws d, string at) => new()
    {
        Diameter = Length.FromMeters(d.Number(at + "diameter", new(0.006, 0.0015, 0.012, 1e-4, 0.1))),
        WallThickness = Length.FromMeters(d.Number(at + "wall-thickness", new(5e-4, 3e-4, 2e-3, 1e-5, 0.05))),
        Count = d.Count(at + "count", new(1, 1, 8, 1, 1000)),
    };

    private static VentTarget Outside(Draws d, string at) =>
        d.Choice(at + "coefficient", 3) == 1 ? VentTarget.Outside(d.Number(at + "pressure", new(0, -0.4, 0.3, -1.5, 1))) : VentTarget.Air;

    private static string Name(int i) => $"jacket {i}";
}
