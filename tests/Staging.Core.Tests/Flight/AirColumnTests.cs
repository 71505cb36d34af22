using Staging.Core.Flight;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Flight;

public class AirColumnTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1700)]
    public void Polynomials_follow_the_atmosphere(double site)
    {
        var column = new AirColumn(StandardAtmosphere.Us1976, site);
        for (double h = -500; h < 30_000; h += 37)
        {
            double[] c = column.Cell(AirColumn.CellOf(h));
            if (c.Length == 0)
                continue;
            double u = (h - AirColumn.MiddleOf(AirColumn.CellOf(h))) * 2 / AirColumn.CellHeight, rho = 0;
            for (int i = AirColumn.Terms - 1; i >= 0; i--)
                rho = rho * u + c[i];
            double exact = StandardAtmosphere.Us1976.At(h + site).Density_kg_per_m3;
            Assert.True(Math.Abs(rho / exact - 1) < 1e-13, $"{h} m: {rho / exact - 1:G3}");
        }
    }

    [Fact]
    public void A_cell_with_a_kink_is_refused_and_its_neighbours_are_not()
    {
        var column = new AirColumn(StandardAtmosphere.Us1976, 0);
        int kink = AirColumn.CellOf(11_019);
        Assert.Empty(column.Cell(kink));
        Assert.NotEmpty(column.Cell(kink - 1));
        Assert.NotEmpty(column.Cell(kink + 1));
    }

    [Fact]
    public void Beyond_the_ends_of_the_atmosphere_the_air_is_that_at_the_end()
    {
        var column = new AirColumn(StandardAtmosphere.Us1976, 0);
        Assert.Equal(StandardAtmosphere.Us1976.At(86_000), column.At(1e6));
        Assert.Empty(column.Cell(AirColumn.CellOf(1e9)));
        Assert.Empty(column.Cell(AirColumn.CellOf(-1e9)));
    }
}
