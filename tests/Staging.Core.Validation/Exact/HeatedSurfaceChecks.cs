using Staging.Core.Gaps;
using static Staging.Core.Validation.GapCheck;

namespace Staging.Core.Validation.Exact;

/// <summary>The grain surface against textbook solutions of the semi-infinite solid.</summary>
public class HeatedSurfaceChecks
{
    [Fact]
    public void Surface_under_constant_flux_in_a_textbook_example()
    {
        // k = 45 W/(m K), alpha = 1.4e-5 m2/s, 35 degC, 3.2e5 W/m2 for 30 s.
        double rise = ConstantFlux(effusivity: 45 / Math.Sqrt(1.4e-5), flux: 3.2e5, time: 30, steps: 30_000);
        Verify("surface of a steel block after 30 s at 320 kW/m2", "degC", 199.4, 35 + rise, Tolerance.Printed(1), new Provenance
        {
            Source = "J. P. Holman, Heat Transfer, example 4-2, as reworked in a public notebook of the book's examples",
            How = Evidence.SeenInSource,
        });
    }

    [Theory]
    [InlineData(1e6, 330, 0.0436202285969)]
    [InlineData(4e6, 485, 0.00588875589515)]
    public void Surface_at_the_closed_form_ignition_time_of_a_constant_flux(double flux, double rise, double expected)
    {
        // t = pi/4 k rho c (dT/q)^2 with k = 0.3, rho = 1700, c = 1000.
        double effusivity = Math.Sqrt(0.3 * 1700 * 1000);
        const int steps = 4000;
        double atTime = ConstantFlux(effusivity, flux, expected, steps);
        Verify($"surface rise at the closed-form ignition time, {flux / 1e6:0} MW/m2", "K", rise, atTime, Tolerance.Relative(2e-6, "kernel of the marched surface, 1e-6"), new Provenance
        {
            Source = "H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids (1959), section 2.9",
            How = Evidence.ComputedFromFormula,
        });
    }

    private static double ConstantFlux(double effusivity, double flux, double time, int steps)
    {
        double h = time / steps;
        var surface = new HeatedSurface(effusivity, h, time);
        surface.Start(flux);
        for (int i = 0; i < steps; i++)
        {
            surface.Settle(h);
            surface.Advance(flux);
        }

        return surface.Rise;
    }
}
