using Staging.Core.Flight;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Flight;

public class SiteColumnTests
{
    private const double G = 9.80665, Radius = 6_356_766;

    [Theory]
    [InlineData(0)]
    [InlineData(1700)]
    public void Polynomials_follow_air_and_gravity(double site)
    {
        var column = new SiteColumn(StandardAtmosphere.Us1976, site, G, Radius);
        for (double h = -500; h < 30_000; h += 37)
        {
            double[] c = column.Cell(SiteColumn.CellOf(h));
            if (c.Length == 0)
                continue;
            double u = (h - SiteColumn.MiddleOf(SiteColumn.CellOf(h))) * 2 / SiteColumn.CellHeight;
            AirSample air = StandardAtmosphere.Us1976.At(h + site);
            Near(air.Density_kg_per_m3, c.AsSpan(0, SiteColumn.Terms), u, 1e-13);
            Near(1 / air.SoundSpeed_m_per_s, c.AsSpan(SiteColumn.Terms, SiteColumn.Terms), u, 1e-13);
            Near(G * Math.Pow(Radius / (Radius + site + h), 2), c.AsSpan(SiteColumn.GravityAt), u, 1e-15);
        }

        static void Near(double exact, ReadOnlySpan<double> c, double u, double bound)
        {
            double value = 0;
            for (int i = c.Length - 1; i >= 0; i--)
                value = value * u + c[i];
            Assert.Equal(exact, value, bound * exact);
        }
    }

    [Fact]
    public void A_cell_with_a_kink_is_refused_and_its_neighbours_are_not()
    {
        var column = new SiteColumn(StandardAtmosphere.Us1976, 0, G, Radius);
        int kink = SiteColumn.CellOf(11_019);
        Assert.Empty(column.Cell(kink));
        Assert.NotEmpty(column.Cell(kink - 1));
        Assert.NotEmpty(column.Cell(kink + 1));
    }

    [Fact]
    public void Beyond_the_ends_of_the_atmosphere_the_air_is_that_at_the_end()
    {
        var column = new SiteColumn(StandardAtmosphere.Us1976, 0, G, Radius);
        Assert.Equal(StandardAtmosphere.Us1976.At(86_000), column.At(1e6));
        Assert.Empty(column.Cell(SiteColumn.CellOf(1e9)));
        Assert.Empty(column.Cell(SiteColumn.CellOf(-1e9)));
    }
}
