using FsCheck.Xunit;
using Staging.Core.Gaps;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

/// <summary>The booster's jet at the upper nozzle, for openings, tubes and gases at random.</summary>
public class SourceJetLaws
{
    /// <summary>Steps of the distance that are compared.</summary>
    private const int Places = 40;

    [Property(MaxTest = 200)]
    public void Farther_away_it_never_heats_more(byte length, byte opening, byte kelvins, byte flow, byte efficiency)
    {
        GapParameters p = GapToSi.ToSi(StartingGaps.Bore18mm.With(d => d with
        {
            Tube = d.Tube with { Length = Length.FromMillimeters(1 + 0.1 * length) },
            MixingAndHeat = d.MixingAndHeat with { ParticleEfficiency = efficiency / 255.0 },
        }));
        double diameter = 1e-3 * (1 + opening / 15.0), area = Math.PI / 4 * diameter * diameter, T = 400 + 10 * kelvins, m = 1e-4 * flow;
        var still = new GrainHeating(p.Outside, p.OutsidePressure, 0, p);
        double last = double.PositiveInfinity;
        bool reached = true;
        for (int i = 0; i < Places; i++)
        {
            var jet = new SourceJet(p, 2e-3 * i);
            GrainHeating heating = jet.Arrives(diameter) ? still.Or(jet.At(m, area, diameter, T, p.Products.R, 1), p) : still;
            double flux = heating.Convection(p.Grain.Initial) + heating.Particles(p.Grain.Initial);
            Assert.InRange(flux, 0, last * (1 + 1e-12));
            bool reaches = jet.CoreReaches(diameter, T, p.Products.R);
            Assert.True(reached || !reaches);
            (last, reached) = (flux, reaches);
        }
    }
}
