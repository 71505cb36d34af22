using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Results;

/// <summary>Shares of products that are read lie within 0 to 1: a campaign of drawn gaps found them beyond both ends, by round-off and by the tolerance.</summary>
public class ProductShareTests
{
    public static TheoryData<string> Found => ["closed", "stated pulse", "in contact"];

    [Theory]
    [MemberData(nameof(Found))]
    public void A_share_of_products_lies_within_its_ends(string found)
    {
        GapRun run = Of(found).Solve();
        ReadOnlyMemory<double> shares = run.Sample(run.End / 256)[GapChannel.ProductsAtNozzle];
        Assert.All(shares.ToArray(), x => Assert.InRange(x, 0, 1));
        Assert.InRange(run.At(run.End).ProductsAtNozzle, 0, 1);
    }

    [Fact]
    public void What_is_no_number_stays_none() => Assert.True(double.IsNaN(GapReading.Share(double.NaN)));

    private static GapProblem Of(string found) => found switch
    {
        "closed" => StartingGaps.Bore18mm,
        "in contact" => StartingGaps.Bore18mm.InContact(JointTape.ThinPlasticFilm),
        _ => StartingGaps.Bore18mm with
        {
            Design = StartingGaps.Bore18mm.Design with
            {
                Vents = [Bench.Hole(StartingGaps.Bore18mm.Design.Tube, 6)],
                Source = Bench.Design.Source,
            },
        },
    };
}
