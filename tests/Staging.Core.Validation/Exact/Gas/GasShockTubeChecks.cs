using Staging.Core.Gases;
using static Staging.Core.Validation.GasCheck;

namespace Staging.Core.Validation.Exact.Gas;

public class GasShockTubeChecks
{
    private static readonly Provenance Toro = new()
    {
        Source = "Toro, Riemann Solvers and Numerical Methods for Fluid Dynamics, chapter 4, functions evaluated by bisection in 40-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance LiepmannRoshko = new()
    {
        Source = "Liepmann & Roshko, Elements of Gasdynamics (1957), sections 3.2-3.5, evaluated in 25-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    [Theory]
    [InlineData("Toro1=Sod", 1.0, 0.0, 1.0, 1.4, 0.125, 0.0, 0.1, 1.4, 0.303130178050647, 0.92745262004895, 0.426319428178495, 0.265573711705307, -1.18321595661992, -0.0702728125611833, 1.75215573203018, 1.75215573203018)]
    [InlineData("Toro2 (123)", 1.0, -2.0, 0.4, 1.4, 1.0, 2.0, 0.4, 1.4, 0.00189387342005476, 0.0, 0.0218521182068128, 0.0218521182068128, -2.74833147735479, -0.348331477354788, 0.348331477354788, 2.74833147735479)]
    [InlineData("Toro3 (left blast)", 1.0, 0.0, 1000.0, 1.4, 1.0, 0.0, 0.01, 1.4, 460.893787491384, 19.5974513887231, 0.575062298476555, 5.99924070479623, -37.4165738677394, -13.8996322012718, 23.5175369669032, 23.5175369669032)]
    [InlineData("Toro4 (right blast)", 1.0, 0.0, 0.01, 1.4, 1.0, 0.0, 100.0, 1.4, 46.095044248868, -6.19632824978704, 5.99241686351522, 0.575112789782412, -7.43747625869431, -7.43747625869431, 4.39656566645479, 11.8321595661992)]
    [InlineData("Toro5 (collision)", 5.99924, 19.5975, 460.894, 1.4, 5.99242, -6.19633, 46.095, 1.4, 1691.64695539913, 8.68977441163238, 14.2823499519784, 31.0426016416199, 0.789593919264435, 0.789593919264435, 12.2507781230843, 12.2507781230843)]
    [InlineData("Toro modified Sod uL=0.75", 1.0, 0.75, 1.0, 1.4, 0.125, 0.0, 0.1, 1.4, 0.466293566839856, 1.36090551909256, 0.579866687480324, 0.339700234901907, -0.433215956619923, 0.299870666291146, 2.1532343675649, 2.1532343675649)]
    [InlineData("Lax", 0.445, 0.698, 3.528, 1.4, 0.5, 0.0, 0.571, 1.4, 2.46609791920736, 1.52872302663288, 0.34456847418961, 1.3040845320262, -2.63356507406003, -1.63669744210057, 2.47932148098984, 2.47932148098984)]
    [InlineData("two-gas Sod gL=1.4 gR=1.2", 1.0, 0.0, 1.0, 1.4, 0.125, 0.0, 0.1, 1.2, 0.293807351817863, 0.949665166326955, 0.416912346195058, 0.298811100548698, -1.18321595661992, -0.043617757027577, 1.63263734368573, 1.63263734368573)]
    [InlineData("two-gas gL=1.25 gR=1.4 Sod states", 1.0, 0.0, 1.0, 1.25, 0.125, 0.0, 0.1, 1.4, 0.317138860071588, 0.970387430773472, 0.399024506051558, 0.272972998913327, -1.11803398874989, -0.0263481291297385, 1.79012096146804, 1.79012096146804)]
    [InlineData("hot gas 300kPa,2000K,g1.25,M34.75g -> air 101325,288.15K", 0.626919650660209, 0.0, 300000.0, 1.25, 1.22497814345127, 0.0, 101325.0, 1.4, 216977.022101726, 197.249661228049, 0.483777732579382, 2.08366743065398, -773.409838497291, -551.503969615736, 478.639597504831, 478.639597504831)]
    [InlineData("hot gas 1MPa,2000K,g1.25,M34.75g -> air", 2.08973216886736, 0.0, 1000000.0, 1.25, 1.22497814345127, 0.0, 101325.0, 1.4, 477290.922533558, 441.114973494909, 1.15642419089594, 3.346857388066, -773.409838497291, -277.155493315518, 695.774234926377, 695.774234926377)]
    public void Riemann_problem(
        string name, double rhoL, double uL, double pL, double gL, double rhoR, double uR, double pR, double gR,
        double p, double u, double starL, double starR, double leftHead, double leftTail, double rightTail, double rightHead)
    {
        RiemannSolution s = RiemannProblem.Solve(new FlowState(rhoL, uL, pL, gL), new FlowState(rhoR, uR, pR, gR));
        string at = $"Riemann {name}";
        double a = Math.Max(s.Left.SoundSpeed, s.Right.SoundSpeed);
        Tolerance speed = Tolerance.FixedAmount(1e-13 * a, "round-off of the greater speed of sound, reference to fifteen digits");
        Verify($"{at}: p*", "-", p, s.StarPressure, FifteenDigits, Toro);
        Verify($"{at}: u*", "-", u, s.ContactSpeed, speed, Toro);
        Verify($"{at}: density left of contact", "-", starL, s.LeftStarDensity, FifteenDigits, Toro);
        Verify($"{at}: density right of contact", "-", starR, s.RightStarDensity, FifteenDigits, Toro);
        Verify($"{at}: left wave, outer edge", "-", leftHead, s.LeftHead, speed, Toro);
        Verify($"{at}: left wave, inner edge", "-", leftTail, s.LeftTail, speed, Toro);
        Verify($"{at}: right wave, inner edge", "-", rightTail, s.RightTail, speed, Toro);
        Verify($"{at}: right wave, outer edge", "-", rightHead, s.RightHead, speed, Toro);
    }

    [Theory]
    [InlineData(1.4, 1.01, 1.02345, 1.00664499314, 1.01669407485, 0.0165841584158, 1.00996677659, 1.02337170479, 1.04736977127, 1.01331198902, 1.03361036148, 0.996732673267)]
    [InlineData(1.4, 1.1, 1.245, 1.06493801653, 1.1690821256, 0.159090909091, 1.09676731841, 1.23671497585, 1.53971014493, 1.13190082645, 1.36028714615, 0.972727272727)]
    [InlineData(1.4, 1.5, 2.45833333333, 1.32021604938, 1.86206896552, 0.694444444444, 1.42635295724, 2.20689655172, 5.42528735632, 1.67901234568, 3.23123732252, 0.944444444444)]
    [InlineData(1.4, 2, 4.5, 1.6875, 2.66666666667, 1.25, 1.73205080757, 3.33333333333, 15.0, 2.5, 6.0, 1.0)]
    [InlineData(1.4, 3, 10.3333333333, 2.67901234568, 3.85714285714, 2.22222222222, 2.10441712324, 5.0, 51.6666666667, 4.75308641975, 10.8701298701, 1.22222222222)]
    [InlineData(1.4, 5, 29.0, 5.8, 5.0, 4.0, 2.40831891576, 6.6, 191.4, 11.88, 16.1111111111, 1.8)]
    [InlineData(1.25, 1.01, 1.02233333333, 1.00442755068, 1.01782685336, 0.0176897689769, 1.0099778265, 1.0222835667, 1.04511456636, 1.00886488035, 1.03593116057, 0.994521452145)]
    [InlineData(1.25, 1.1, 1.23333333333, 1.04306703398, 1.18241042345, 0.169696969697, 1.09782135449, 1.22801302932, 1.51454940282, 1.08703397612, 1.39328616776, 0.951515151515)]
    [InlineData(1.25, 1.5, 2.38888888889, 1.20919067215, 1.9756097561, 0.740740740741, 1.44829588676, 2.21951219512, 5.30216802168, 1.43552812071, 3.69353128314, 0.851851851852)]
    [InlineData(1.25, 2, 4.33333333333, 1.44444444444, 3.0, 1.33333333333, 1.80277563773, 3.5, 15.1666666667, 1.94444444444, 7.8, 0.833333333333)]
    [InlineData(1.25, 3, 9.88888888889, 2.07544581619, 4.76470588235, 2.37037037037, 2.28807651044, 5.70588235294, 56.4248366013, 3.32647462277, 16.9623529412, 0.925925925926)]
    [InlineData(1.25, 5, 27.6666666667, 4.05777777778, 6.81818181818, 4.26666666667, 2.74689907813, 8.27272727273, 228.878787879, 7.68444444444, 29.7846889952, 1.26666666667)]
    public void Reflection_at_a_closed_end(
        double gamma, double Ms, double p21, double T21, double rho21, double u2, double Mr, double p52, double p51, double T51, double rho51, double speed)
    {
        var r = NormalShock.Reflected(Ms, gamma);
        string at = $"gamma {gamma}, Ms {Ms}";
        Verify($"incident shock p2/p1, {at}", "-", p21, NormalShock.PressureRatio(Ms, gamma), TwelveDigits, LiepmannRoshko);
        Verify($"incident shock T2/T1, {at}", "-", T21, NormalShock.TemperatureRatio(Ms, gamma), TwelveDigits, LiepmannRoshko);
        Verify($"incident shock rho2/rho1, {at}", "-", rho21, NormalShock.HugoniotDensityRatio(p21, gamma), TwelveDigits, LiepmannRoshko);
        Verify($"incident shock u2/a1, {at}", "-", u2, NormalShock.GasSpeed(Ms, gamma), TwelveDigits, LiepmannRoshko);
        Verify($"reflected shock Mach, {at}", "-", Mr, r.ReflectedMach, TwelveDigits, LiepmannRoshko);
        Verify($"reflected shock p5/p2, {at}", "-", p52, r.ReflectedPressureRatio, TwelveDigits, LiepmannRoshko);
        Verify($"reflected shock p5/p1, {at}", "-", p51, r.TotalPressureRatio, TwelveDigits, LiepmannRoshko);
        Verify($"reflected shock T5/T1, {at}", "-", T51, r.TotalTemperatureRatio, TwelveDigits, LiepmannRoshko);
        Verify($"reflected shock rho5/rho1, {at}", "-", rho51, r.TotalDensityRatio, TwelveDigits, LiepmannRoshko);
        Verify($"reflected shock speed/a1, {at}", "-", speed, r.ReflectedSpeed, TwelveDigits, LiepmannRoshko);
    }

    [Theory]
    [InlineData(1.4, 0.01, 1.00601799984, 1.014084252, 1.0100399792, 1.004004072, 1.01408428056)]
    [InlineData(1.4, 0.1, 1.06179838291, 1.14865177361, 1.1039718945, 1.04047193532, 1.14868566765)]
    [InlineData(1.4, 0.5, 1.34403065089, 1.94082145562, 1.59239554804, 1.21880613018, 1.9487171)]
    [InlineData(1.4, 1, 1.76619037897, 3.47266653056, 2.30515864914, 1.50647615159, 3.5831808)]
    [InlineData(1.4, 2, 2.76204993518, 8.73373981851, 3.62449992798, 2.40963994815, 10.5413504)]
    [InlineData(1.25, 0.01, 1.00564082019, 1.01257051025, 1.01004378265, 1.00250160205, 1.01257054739)]
    [InlineData(1.25, 0.1, 1.05783078181, 1.13222884773, 1.10440257496, 1.02519576955, 1.13227082966)]
    [InlineData(1.25, 0.5, 1.32004813366, 1.82503008354, 1.60972030723, 1.13375601671, 1.83353577126)]
    [InlineData(1.25, 1, 1.70984748442, 3.13730935552, 2.40875331948, 1.3024618711, 3.24732102547)]
    [InlineData(1.25, 2, 2.63019932235, 7.57549830587, 4.17359909647, 1.81509966117, 9.31322574615)]
    public void Piston(double gamma, double up, double Ms, double p, double rho, double T, double simpleWave)
    {
        string at = $"gamma {gamma}, up/a1 {up}";
        double M = NormalShock.MachFromPistonSpeed(up, gamma);
        Verify($"piston shock Mach, {at}", "-", Ms, M, TwelveDigits, LiepmannRoshko);
        Verify($"piston shock p2/p1, {at}", "-", p, NormalShock.PistonPressureRatio(up, gamma), TwelveDigits, LiepmannRoshko);
        Verify($"piston shock rho2/rho1, {at}", "-", rho, NormalShock.DensityRatio(M, gamma), TwelveDigits, LiepmannRoshko);
        Verify($"piston shock T2/T1, {at}", "-", T, NormalShock.TemperatureRatio(M, gamma), TwelveDigits, LiepmannRoshko);
        Verify($"piston simple wave p2/p1, {at}", "-", simpleWave, NormalShock.SimpleWavePressureRatio(up, gamma), Tolerance.Relative(6e-9, "closed form, reference given to nine digits"), LiepmannRoshko);
    }

    [Theory]
    [InlineData(1.4, 1.4, 1.0, 1.1, 1.56124439818)]
    [InlineData(1.4, 1.4, 1.0, 1.4, 4.95770081406)]
    [InlineData(1.4, 1.4, 1.0, 2, 33.7119341564)]
    [InlineData(1.4, 1.4, 1.0, 3, 632.6273664)]
    [InlineData(1.25, 1.4, 0.43999573, 1.1, 1.35936779299)]
    [InlineData(1.25, 1.4, 0.43999573, 1.4, 2.91754762991)]
    [InlineData(1.25, 1.4, 0.43999573, 2, 9.17374247844)]
    [InlineData(1.25, 1.4, 0.43999573, 3, 38.0529869284)]
    [InlineData(1.667, 1.4, 0.33873, 1.1, 1.36313242317)]
    [InlineData(1.667, 1.4, 0.33873, 1.4, 2.9593392993)]
    [InlineData(1.667, 1.4, 0.33873, 2, 9.63104957468)]
    [InlineData(1.667, 1.4, 0.33873, 3, 43.8277474998)]
    public void Shock_tube(double g4, double g1, double a14, double Ms, double p41)
    {
        string at = $"gamma4 {g4}, gamma1 {g1}, a1/a4 {a14}, Ms {Ms}";
        Tolerance rounded = Tolerance.Relative(4e-8, "the speed ratio is given to six to eight digits and enters to the power 2 gamma/(gamma - 1)");
        Verify($"shock tube p4/p1, {at}", "-", p41, NormalShock.DriverPressureRatio(Ms, g1, g4, a14), a14 == 1 ? TwelveDigits : rounded, LiepmannRoshko);
        Verify($"shock tube Ms, {at}", "-", Ms, NormalShock.MachFromDriverPressureRatio(p41, g1, g4, a14), a14 == 1 ? TwelveDigits : rounded, LiepmannRoshko);
    }
}
