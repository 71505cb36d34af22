using Staging.Core.Discharge;
using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>Holes and the laws by which they discharge.</summary>
internal static class DischargeCodecs
{
    public static readonly RecordCodec<VentHoles> Holes = new("holes", "Round holes of one size through one wall.", f =>
    {
        var diameter = f.Required("diameter", Quantities.Length, x => x.Diameter, "Diameter of one hole.");
        var wall = f.Required("wallThickness", Quantities.Length, x => x.WallThickness, "Wall thickness.");
        var count = f.Required("count", CountCodec.Whole, x => x.Count, "Number of holes.");
        return v => new VentHoles { Diameter = diameter[v], WallThickness = wall[v], Count = count[v] };
    });

    public static readonly UnionCodec<IDischargeLaw> Law = new("dischargeLaw", "Law of discharge.",
    [
        new UnionCase<IDischargeLaw, SharpEdgedLaw>("sharpEdged", new("sharpEdged", "A sharp edge in a thin wall (Perry 1949).", f =>
        {
            var edge = f.Optional("edgeFactor", NumberCodec.Ratio, x => x.EdgeFactor, 1.0,
                "Factor on Perry's coefficient; 1, the nominal sharp edge, when left out.");
            return v => new SharpEdgedLaw { EdgeFactor = edge[v] };
        })),
        new UnionCase<IDischargeLaw, ConstantCoefficientLaw>("constantCoefficient",
            new("constantCoefficient", "A coefficient that does not change times ideal flow.", f =>
        {
            var coefficient = f.Required("coefficient", NumberCodec.Ratio, x => x.Coefficient, "Discharge coefficient.");
            var provenance = ProvenanceCodec.In(f, x => x.Provenance);
            return v => new ConstantCoefficientLaw { Coefficient = coefficient[v], Provenance = provenance[v] };
        })),
        new UnionCase<IDischargeLaw, JobsonLaw>("jobson",
            new("jobson", "A jet that contracts, from the contraction in incompressible flow (Jobson 1955).", f =>
        {
            var contraction = f.Required("incompressibleContraction", NumberCodec.Ratio, x => x.IncompressibleContraction,
                "Contraction coefficient in incompressible flow; 0.60 for a sharp round hole.");
            return v => new JobsonLaw { IncompressibleContraction = contraction[v] };
        })),
        new UnionCase<IDischargeLaw, ShortTubeLaw>("shortTube", new("shortTube", "A plain hole through a wall of any thickness: a sharp "
            + "edge while thin, a short tube when thick.", f => v => ShortTubeLaw.SquareInlet)),
        new UnionCase<IDischargeLaw, SonicConductanceLaw>("sonicConductance",
            new("sonicConductance", "A component known by sonic conductance and critical ratio (ISO 6358).", f =>
        {
            var conductance = f.Required("sonicConductance", Quantities.SonicConductance, x => x.SonicConductance_m3_per_sPa,
                "Sonic conductance C.");
            var critical = f.Required("criticalRatio", NumberCodec.Ratio, x => x.CriticalRatio, "Critical pressure ratio b.");
            var index = f.Required("subsonicIndex", NumberCodec.Ratio, x => x.SubsonicIndex, "Subsonic index m; 0.5 in most catalogues.");
            var area = f.Required("referenceArea", Quantities.Area, x => x.ReferenceArea, "Hole area that stands for one such component.");
            var provenance = ProvenanceCodec.In(f, x => x.Provenance);
            return v => new SonicConductanceLaw { SonicConductance_m3_per_sPa = conductance[v], CriticalRatio = critical[v],
                SubsonicIndex = index[v], ReferenceArea = area[v], Provenance = provenance[v] };
        })),
    ])
    {
        StartsFrom = ("a discharge law",
        [
            new("sharpEdged", "A nominal sharp edge in a thin wall (Perry 1949).", () => SharpEdgedLaw.Perry),
            new("shortTube", "A plain hole through a wall of any thickness.", () => ShortTubeLaw.SquareInlet),
            new("ideal", "Ideal flow, without losses.", () => ConstantCoefficientLaw.Ideal),
            new("shortCylinder", "A short cylinder, one coefficient.", () => ConstantCoefficientLaw.ShortCylinder),
            new("roundedInlet", "A rounded inlet, one coefficient.", () => ConstantCoefficientLaw.RoundedInlet),
        ]),
    };
}
