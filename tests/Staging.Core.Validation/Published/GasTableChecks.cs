using Staging.Core.Gases;
using static Staging.Core.Validation.GasCheck;

namespace Staging.Core.Validation.Published;

/// <summary>Rows of printed gas tables for gamma 1.4, to half a unit of the last printed digit.</summary>
public class GasTableChecks
{
    private static readonly Provenance DataBook = new()
    {
        Source = "C. Matthews, Aeronautical Engineer's Data Book (2002), tables A4.1 and A4.2, read on a public copy",
        How = Evidence.SeenInSource,
    };

    private static readonly Provenance Textbook = new()
    {
        Source = "An engineering textbook whose title was not shown, appendix, table A.1 for an ideal gas with k 1.4, page 640, read on a public copy",
        How = Evidence.SeenInSource,
    };

    private static readonly Provenance Naca1135 = new()
    {
        Source = "NACA Report 1135 (1953), tables, as quoted in the tests of an open-source aeronautics library; the report itself was not seen",
        How = Evidence.SeenInSource,
    };

    private static readonly Provenance Anderson = new()
    {
        Source = "J. D. Anderson, Fundamentals of Aerodynamics, table A.2, transcribed on a public page of questions and answers",
        How = Evidence.SeenInSource,
    };

    private static readonly Provenance Quoted = new()
    {
        Source = "NACA Report 1135 (1953), NASA TN D-2221 or an online encyclopaedia's table, not told apart, as quoted in the tests of an open-source aeronautics library",
        How = Evidence.SeenInSource,
    };

    [Theory]
    [InlineData(0.05, 0.9983, 0.9988, 0.9995, 11.5914)]
    [InlineData(0.10, 0.9930, 0.9950, 0.9980, 5.8218)]
    [InlineData(0.15, 0.9844, 0.9888, 0.9955, 3.9103)]
    [InlineData(0.88, 0.6041, 0.6977, 0.8659, 1.0129)]
    [InlineData(0.90, 0.5913, 0.6870, 0.8606, 1.0089)]
    [InlineData(0.95, 0.5595, 0.6604, 0.8471, 1.0021)]
    [InlineData(1.00, 0.5283, 0.6339, 0.8333, 1.0000)]
    [InlineData(1.05, 0.4979, 0.6077, 0.8193, 1.0020)]
    [InlineData(1.10, 0.4684, 0.5817, 0.8052, 1.0079)]
    [InlineData(1.12, 0.4568, 0.5714, 0.7994, 1.0113)]
    public void Isentropic_rows_of_a_data_book(double M, double p, double rho, double T, double area) => Isentropic("data book", M, p, rho, T, area, DataBook);

    [Theory]
    [InlineData(0.50, 0.8430, 0.8852, 0.9524, 1.3398)]
    [InlineData(0.60, 0.7840, 0.8405, 0.9328, 1.1882)]
    [InlineData(0.82, 0.6430, 0.7295, 0.8815, 1.0305)]
    public void Isentropic_rows_of_a_textbook(double M, double p, double rho, double T, double area) => Isentropic("textbook", M, p, rho, T, area, Textbook);

    [Fact]
    public void An_area_ratio_that_a_textbook_rounded_twice() =>
        Verify("textbook, A/A* at M 0.64", "-", 1.1452, IsentropicFlow.AreaRatio(0.64, 1.4), Tolerance.FixedAmount(1e-4, "one unit of the last printed digit: 1.14515 rounded once more; the formula gives 1.145148"), Textbook);

    [Theory]
    [InlineData(0.27, 0.9506)]
    [InlineData(0.89, 0.5977)]
    [InlineData(1.00, 0.5283)]
    [InlineData(1.30, 0.3609)]
    [InlineData(2.05, 0.1182)]
    public void Pressure_ratios_of_NACA_Report_1135(double M, double p) =>
        Verify($"NACA 1135 table, p/p0 at M {M}", "-", p, IsentropicFlow.PressureRatio(M, 1.4), Tolerance.Printed(4), Naca1135);

    [Theory]
    [InlineData(0.38, 1.6587, 4)]
    [InlineData(0.79, 1.0425, 4)]
    [InlineData(1.24, 1.043, 3)]
    [InlineData(2.14, 1.902, 3)]
    public void Area_ratios_of_NACA_Report_1135(double M, double area, int decimals) =>
        Verify($"NACA 1135 table, A/A* at M {M}", "-", area, IsentropicFlow.AreaRatio(M, 1.4), Tolerance.Printed(decimals), Naca1135);

    [Theory]
    [InlineData(1.20, 1.513, 1.342, 1.128, 0.9928, 2.408, 0.8422)]
    [InlineData(1.22, 1.570, 1.376, 1.141, 0.9907, 2.466, 0.8300)]
    [InlineData(1.24, 1.627, 1.411, 1.153, 0.9884, 2.526, 0.8183)]
    [InlineData(1.26, 1.686, 1.446, 1.166, 0.9857, 2.588, 0.8071)]
    [InlineData(1.28, 1.745, 1.481, 1.178, 0.9827, 2.650, 0.7963)]
    [InlineData(1.30, 1.805, 1.516, 1.191, 0.9794, 2.714, 0.7860)]
    [InlineData(1.32, 1.866, 1.551, 1.204, 0.9758, 2.778, 0.7760)]
    [InlineData(1.34, 1.928, 1.585, 1.216, 0.9718, 2.844, 0.7664)]
    public void Normal_shock_rows_of_a_textbook(double M1, double p, double rho, double T, double p02, double pitot, double M2)
    {
        Shock("textbook table", M1, p, rho, T, M2, 3, Anderson);
        Verify($"textbook table, shock p02/p01 at M1 {M1}", "-", p02, NormalShock.StagnationPressureRatio(M1, 1.4), Tolerance.Printed(4), Anderson);
        Verify($"textbook table, Pitot p02/p1 at M1 {M1}", "-", pitot, NormalShock.PitotRatio(M1, 1.4), Tolerance.Printed(3), Anderson);
    }

    [Theory]
    [InlineData(1.5, 2.4583, 1.8621, 1.3202, 0.7011)]
    [InlineData(1.8, 3.6133, 2.3592, 1.5316, 0.6165)]
    [InlineData(2.1, 4.9783, 2.8119, 1.7705, 0.5613)]
    [InlineData(3.0, 10.3333, 3.8571, 2.6790, 0.4752)]
    public void Normal_shock_rows_quoted_by_a_library(double M1, double p, double rho, double T, double M2) => Shock("quoted table", M1, p, rho, T, M2, 4, Quoted);

    private static void Isentropic(string table, double M, double p, double rho, double T, double area, Provenance source)
    {
        Verify($"{table}, p/p0 at M {M}", "-", p, IsentropicFlow.PressureRatio(M, 1.4), Tolerance.Printed(4), source);
        Verify($"{table}, rho/rho0 at M {M}", "-", rho, IsentropicFlow.DensityRatio(M, 1.4), Tolerance.Printed(4), source);
        Verify($"{table}, T/T0 at M {M}", "-", T, IsentropicFlow.TemperatureRatio(M, 1.4), Tolerance.Printed(4), source);
        Verify($"{table}, A/A* at M {M}", "-", area, IsentropicFlow.AreaRatio(M, 1.4), Tolerance.Printed(4), source);
    }

    private static void Shock(string table, double M1, double p, double rho, double T, double M2, int decimals, Provenance source)
    {
        Verify($"{table}, shock p2/p1 at M1 {M1}", "-", p, NormalShock.PressureRatio(M1, 1.4), Tolerance.Printed(decimals), source);
        Verify($"{table}, shock rho2/rho1 at M1 {M1}", "-", rho, NormalShock.DensityRatio(M1, 1.4), Tolerance.Printed(decimals), source);
        Verify($"{table}, shock T2/T1 at M1 {M1}", "-", T, NormalShock.TemperatureRatio(M1, 1.4), Tolerance.Printed(decimals), source);
        Verify($"{table}, shock M2 at M1 {M1}", "-", M2, NormalShock.DownstreamMach(M1, 1.4), Tolerance.Printed(4), source);
    }
}
