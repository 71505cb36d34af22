using Staging.Core.Gases;
using static Staging.Core.Validation.GasCheck;

namespace Staging.Core.Validation.Exact.Gas;

public class GasFlowChecks
{
    private static readonly Provenance Naca1135 = new()
    {
        Source = "NACA Report 1135 (1953), isentropic flow and normal shock, evaluated in 25-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance Shapiro = new()
    {
        Source = "Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow (1953), chapter 6, evaluated in 25-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    [Theory]
    [InlineData(1.4, 0.05, 0.999500249875062, 0.998251966946778, 0.998751092930251, 11.5914438671875, 0.0590721453015508)]
    [InlineData(1.4, 0.1, 0.998003992015968, 0.993031384874252, 0.995017447644001, 5.82182875, 0.117614496368906)]
    [InlineData(1.4, 0.2, 0.992063492063492, 0.972496702955777, 0.980276676579423, 2.96352, 0.231053428482774)]
    [InlineData(1.4, 0.5, 0.952380952380952, 0.843019175422553, 0.885170134193681, 1.33984375, 0.511053215255339)]
    [InlineData(1.4, 0.8, 0.886524822695035, 0.656021618358975, 0.739992385508924, 1.03823, 0.659518080172284)]
    [InlineData(1.4, 1, 0.833333333333333, 0.528281787717174, 0.633938145260609, 1.0, 0.68473145637727)]
    [InlineData(1.4, 1.2, 0.77639751552795, 0.412377042311142, 0.531141630496751, 1.03043975308642, 0.664504115186096)]
    [InlineData(1.4, 1.5, 0.689655172413793, 0.272403066476657, 0.394984446391153, 1.17616705246914, 0.582171941426015)]
    [InlineData(1.4, 2, 0.555555555555556, 0.127804525462951, 0.230048145833312, 1.6875, 0.405766788964308)]
    [InlineData(1.4, 3, 0.357142857142857, 0.0272236837038628, 0.0762263143708159, 4.23456790123457, 0.161700431389385)]
    [InlineData(1.4, 5, 0.166666666666667, 0.00189003838177714, 0.0113402302906629, 25.0, 0.0273892582550908)]
    [InlineData(1.25, 0.2, 0.995024875621891, 0.975370668359506, 0.980247521701303, 3.0097535212502, 0.218644080688176)]
    [InlineData(1.25, 0.8, 0.925925925925926, 0.680583197033753, 0.735029852796453, 1.04023284339409, 0.632612973076878)]
    [InlineData(1.25, 1, 0.888888888888889, 0.554928957306644, 0.624295076969974, 1.0, 0.658064791751749)]
    [InlineData(1.25, 1.5, 0.780487804878049, 0.289621372963886, 0.37107738410998, 1.19694678547507, 0.549786172399102)]
    [InlineData(1.25, 2.5, 0.56140350877193, 0.0557667856998152, 0.0993345870277958, 3.1632650895027, 0.208033400025669)]
    [InlineData(1.25, 4, 0.333333333333333, 0.00411522633744856, 0.0123456790123457, 20.6442592313578, 0.0318764061416248)]
    public void Isentropic(double gamma, double M, double T, double p, double rho, double area, double flow)
    {
        string at = $"gamma {gamma}, M {M}";
        Verify($"T/T0, {at}", "-", T, IsentropicFlow.TemperatureRatio(M, gamma), FifteenDigits, Naca1135);
        Verify($"p/p0, {at}", "-", p, IsentropicFlow.PressureRatio(M, gamma), FifteenDigits, Naca1135);
        Verify($"rho/rho0, {at}", "-", rho, IsentropicFlow.DensityRatio(M, gamma), FifteenDigits, Naca1135);
        Verify($"A/A*, {at}", "-", area, IsentropicFlow.AreaRatio(M, gamma), FifteenDigits, Naca1135);
        Verify($"mass flow function, {at}", "-", flow, IsentropicFlow.MassFlowFunction(M, gamma), FifteenDigits, Naca1135);
    }

    [Theory]
    [InlineData(1.4, 1.01, 0.990131579748225, 1.02345, 1.01669407484925, 1.00664499313793, 0.999998729228107, 1.91521441492375)]
    [InlineData(1.4, 1.05, 0.953125428977921, 1.11958333333333, 1.08398197460057, 1.03284312799194, 0.999852990095173, 2.00825285411577)]
    [InlineData(1.4, 1.1, 0.911770421325906, 1.245, 1.16908212560386, 1.06493801652893, 0.998928015314471, 2.13284737465326)]
    [InlineData(1.4, 1.2, 0.842170470464018, 1.51333333333333, 1.3416149068323, 1.12799382716049, 0.992798397699362, 2.40750162068985)]
    [InlineData(1.4, 1.5, 0.701088741693099, 2.45833333333333, 1.86206896551724, 1.32021604938272, 0.92978651228283, 3.41327476341939)]
    [InlineData(1.4, 1.8, 0.616501257693776, 3.61333333333333, 2.35922330097087, 1.53157750342936, 0.812683799598688, 4.6695155735909)]
    [InlineData(1.4, 2, 0.577350269189626, 4.5, 2.66666666666667, 1.6875, 0.720873861484745, 5.64044081282332)]
    [InlineData(1.4, 2.5, 0.512989176042577, 7.125, 3.33333333333333, 2.1375, 0.499014812029151, 8.52613588990433)]
    [InlineData(1.4, 3, 0.475190963311491, 10.3333333333333, 3.85714285714286, 2.67901234567901, 0.328343888190737, 12.0609647012666)]
    [InlineData(1.4, 4, 0.43495883620084, 18.5, 4.57142857142857, 4.046875, 0.138756220891688, 21.0680810021121)]
    [InlineData(1.4, 5, 0.4152273992687, 29.0, 5.0, 5.8, 0.0617163197486177, 32.6534743122982)]
    [InlineData(1.4, 10, 0.387575273043416, 116.5, 5.71428571428571, 20.3875, 0.00304475264341609, 129.216968417128)]
    [InlineData(1.25, 1.1, 0.910895015756333, 1.23333333333333, 1.18241042345277, 1.04306703397612, 0.998893921616124, 2.02007543019554)]
    [InlineData(1.25, 1.5, 0.690466643688536, 2.38888888888889, 1.97560975609756, 1.20919067215364, 0.92410646570932, 3.19073988308366)]
    [InlineData(1.25, 2, 0.554700196225229, 4.33333333333333, 3.0, 1.44444444444444, 0.68915654213788, 5.23328249185953)]
    [InlineData(1.25, 3, 0.437048322219702, 9.88888888888889, 4.76470588235294, 2.07544581618656, 0.256797326896367, 11.127181462863)]
    [InlineData(1.25, 5, 0.364046865776822, 27.6666666666667, 6.81818181818182, 4.05777777777778, 0.0251487000203437, 30.035530356911)]
    public void Shock(double gamma, double M1, double M2, double p, double rho, double T, double p02, double pitot)
    {
        string at = $"gamma {gamma}, M1 {M1}";
        Verify($"shock M2, {at}", "-", M2, NormalShock.DownstreamMach(M1, gamma), FifteenDigits, Naca1135);
        Verify($"shock p2/p1, {at}", "-", p, NormalShock.PressureRatio(M1, gamma), FifteenDigits, Naca1135);
        Verify($"shock rho2/rho1, {at}", "-", rho, NormalShock.DensityRatio(M1, gamma), FifteenDigits, Naca1135);
        Verify($"shock T2/T1, {at}", "-", T, NormalShock.TemperatureRatio(M1, gamma), FifteenDigits, Naca1135);
        Verify($"shock p02/p01, {at}", "-", p02, NormalShock.StagnationPressureRatio(M1, gamma), FifteenDigits, Naca1135);
        Verify($"Pitot p02/p1, {at}", "-", pitot, NormalShock.PitotRatio(M1, gamma), FifteenDigits, Naca1135);
    }

    [Theory]
    [InlineData(1.4, 0.1, 0.772319026315, 0.951713851426, 0.502773094826)]
    [InlineData(1.4, 0.5, 0.597694564684, 0.839672718084, 0.443583804607)]
    [InlineData(1.4, 1, 0.508740325862, 0.755589318766, 0.399164076098)]
    [InlineData(1.4, 2, 0.418340424259, 0.652004102316, 0.344441892771)]
    [InlineData(1.4, 5, 0.306551758876, 0.500941943579, 0.264638505497)]
    [InlineData(1.4, 10, 0.233881644721, 0.391168229728, 0.206647051699)]
    [InlineData(1.25, 0.1, 0.786466418374, 0.955701386366, 0.530346373833)]
    [InlineData(1.25, 0.5, 0.616114410432, 0.849666646078, 0.471504625966)]
    [InlineData(1.25, 1, 0.527367116204, 0.768267630819, 0.426333955303)]
    [InlineData(1.25, 2, 0.435938828767, 0.666390975971, 0.369799649454)]
    [InlineData(1.25, 5, 0.321304434433, 0.515281663002, 0.285944715969)]
    [InlineData(1.25, 10, 0.245945176496, 0.403927425405, 0.224151025008)]
    public void Friction_tube(double gamma, double N, double M1, double reduction, double exit)
    {
        string at = $"gamma {gamma}, f L/D {N}";
        Verify($"choked tube inlet Mach, {at}", "-", M1, FannoFlow.SubsonicMach(N, gamma), TwelveDigits, Shapiro);
        Verify($"choked tube flow over nozzle flow, {at}", "-", reduction, FannoFlow.ChokedFlowReduction(N, gamma), TwelveDigits, Shapiro);
        Verify($"choked tube p*/p01, {at}", "-", exit, FannoFlow.ChokedPressureRatio(N, gamma), TwelveDigits, Shapiro);
    }
}
