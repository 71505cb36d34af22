using Samples;
using ScottPlot;
using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace TheoryFigures;

internal static class DischargeFigures
{
    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        double critical = IsentropicFlow.CriticalPressureRatio(1.4);
        var jobson = new JobsonLaw { IncompressibleContraction = 0.611 };
        double[] at = [0.9, 0.8, 0.7, 0.6, critical];
        yield return ("discharge-coefficient", Figure.New("Sharp-edged hole in air: coefficient rises as the pressure ratio falls",
            "downstream over upstream pressure", "discharge coefficient")
            .Curve(SharpEdgedLaw.Coefficient, 0, 1, "", 0)
            .Note("after Perry 1949, round hole", 0.02, 0.795, 0)
            .Curve(r => jobson.Coefficient(r, 1.4), 0.001, 0.999, "Jobson 1955, contraction 0.611", 1, 0.06)
            .Points(at, [.. at.Select(r => ChaplyginSlit.ContractionCoefficient(r, 1.4))], "", 2)
            .Note("circles: Chaplygin 1904, exact plane slit", 0.55, 0.76, 2)
            .Curve(_ => 0.6, 0, 1, "a constant 0.6", 3, 0.05, dashed: true)
            .Limits(0, 1, 0.55, 0.92));
        yield return ("discharge-flow",
            Figure.New("Mass flow function of a hole in air", "downstream over upstream pressure", "coefficient times psi")
            .Curve(r => IsentropicFlow.ThroatMassFlow(r, 1.4), 0, 1, "ideal nozzle: level once choked", 3, 0.05)
            .Curve(r => SharpEdgedLaw.Coefficient(r) * IsentropicFlow.ThroatMassFlow(r, 1.4), 0, 1, "", 0)
            .Note("sharp edge: keeps rising below the critical ratio", 0.03, 0.47, 0)
            .Curve(r => ShortTubeLaw.Coefficient(r, 1.4, 2) * IsentropicFlow.ThroatMassFlow(r, 1.4), 0, 1, "short tube, length two diameters",
                1, 0.05)
            .Limits(0, 1, 0, 0.75));
    }
}
