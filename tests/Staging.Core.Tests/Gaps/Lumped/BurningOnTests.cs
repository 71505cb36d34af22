using Staging.Core.Gaps;
using Staging.Core.Tests.Gaps.OneDimensional;

namespace Staging.Core.Tests.Gaps.Lumped;

/// <summary>What is used up burns on within a step, at the rate it had, until the event that finds the moment sets it to zero.</summary>
public class BurningOnTests
{
    private const double Little = 1e-9;

    private static readonly GapParameters Broken = GapToSi.ToSi(StartingGaps.Bore18mm),
        Ringed = GapToSi.ToSi(ThrownGaps.Gap.With(d => d with { Source = ThrownGaps.Strong })),
        Plated = GapToSi.ToSi(Bench.Gap.With(d => d with { Source = d.Motor() with { Web = Bench.Plates(0.3, 0.8, 12, 0.4) } }));

    [Fact]
    public void Plates() => BurnsOn(Plated, Plated.Chambers[0].Plates!.Unburnt);

    [Fact]
    public void The_ring() => BurnsOn(Ringed, Ringed.Chambers[0].Ring!.Left);

    [Fact]
    public void Pieces_and_their_way()
    {
        BurnsOn(Broken, Broken.Chambers[0].Pieces!.Unburnt);
        BurnsOn(Broken, Broken.Chambers[0].Pieces!.Way);
    }

    private static void BurnsOn(GapParameters p, int share)
    {
        double Slope(double left)
        {
            var y = new double[p.StateCount];
            GapToSi.FirstState(p, y);
            y[share] = left;
            return Bench.Slopes(p, y)[share];
        }

        Assert.True(Slope(Little) < 0);
        Assert.Equal(Slope(Little), Slope(-Little));
        Assert.Equal(0, Slope(0));
    }
}
