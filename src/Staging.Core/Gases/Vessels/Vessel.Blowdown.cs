namespace Staging.Core.Gases;

// Emptying: choked first, in closed form, then subsonic, by one quadrature of a smooth function.
// Choked: isothermal p/p0 = exp(-C* t); adiabatic p/p0 = (1 + (gamma - 1) C* t/2)^(-2 gamma/(gamma - 1)), T/T0 = (1 +
// (gamma - 1) C* t/2)^-2. Mass balance of the vessel with the flow of NACA Report 1135; given for example by J. D.
// Anderson, Modern Compressible Flow, and older gas dynamics texts.
// Subsonic, with w^2 = 1 - (pa/p)^((gamma - 1)/gamma): dt = -sqrt(2 gamma/(gamma - 1)) (1 - w^2)^(-gamma/(gamma - 1))
// dw, isothermal, and gamma^-1 (p0/pa)^((gamma - 1)/(2 gamma)) (1 - w^2)^(1/2) times that, adiabatic. The time to
// ambient pressure is finite.
public static partial class Vessel
{
    private const double MaxRatio = 1e6;
    private const double MaxTime = 1e9;
    private const int MaxIterations = 100;

    /// <summary>Pressure over that at the start, p/p0, while the opening is choked.</summary>
    /// <param name="time">t [-] in units of <see cref="TimeUnit"/>, 0 to 1e9.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <param name="isothermal">Whether the walls hold the temperature; else adiabatic.</param>
    /// <returns>p/p0 [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double ChokedPressureRatio(double time, double gamma, bool isothermal)
    {
        double x = Checked(time) * IsentropicFlow.CriticalFlowFactor(gamma);
        return isothermal ? Math.Exp(-x) : Math.Pow(1 + (gamma - 1) / 2 * x, -2 * gamma / (gamma - 1));
    }

    /// <summary>Temperature over that at the start, T/T0, while the opening is choked.</summary>
    /// <param name="time">t [-] in units of <see cref="TimeUnit"/>, 0 to 1e9.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <param name="isothermal">Whether the walls hold the temperature; else adiabatic.</param>
    /// <returns>T/T0 [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double ChokedTemperatureRatio(double time, double gamma, bool isothermal)
    {
        double x = Checked(time) * IsentropicFlow.CriticalFlowFactor(gamma);
        double root = 1 + (gamma - 1) / 2 * x;
        return isothermal ? 1 : 1 / (root * root);
    }

    /// <summary>
    /// When a choked vessel has fallen to a share of its pressure: the inverse of <see cref="ChokedPressureRatio"/>.
    /// </summary>
    /// <param name="pressureRatio">p/p0 [-], 1e-6 to 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <param name="isothermal">Whether the walls hold the temperature; else adiabatic.</param>
    /// <returns>t [-] in units of <see cref="TimeUnit"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double ChokedTime(double pressureRatio, double gamma, bool isothermal)
    {
        double ln = Math.Log(Guard.In(pressureRatio, 1 / MaxRatio, 1, "-", nameof(pressureRatio)));
        double C = IsentropicFlow.CriticalFlowFactor(gamma);
        return isothermal ? -ln / C : NearZero.Expm1(-(gamma - 1) / (2 * gamma) * ln) * 2 / ((gamma - 1) * C);
    }

    /// <summary>Time to vent from one pressure to another, both over the constant pressure outside.</summary>
    /// <param name="startRatio">p0/pa at the start [-], 1 to 1e6.</param>
    /// <param name="endRatio">p/pa at the end [-], 1 to <paramref name="startRatio"/>.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <param name="isothermal">Whether the walls hold the temperature; else adiabatic.</param>
    /// <returns>t [-] in units of <see cref="TimeUnit"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double VentTime(double startRatio, double endRatio, double gamma, bool isothermal)
    {
        double start = Guard.In(startRatio, 1, MaxRatio, "-", nameof(startRatio));
        double end = Guard.In(endRatio, 1, start, "-", nameof(endRatio));
        double choking = 1 / IsentropicFlow.CriticalPressureRatio(gamma);
        double choked = start > choking ? ChokedTime(Math.Max(end, choking) / start, gamma, isothermal) : 0;
        if (end >= choking)
            return choked;
        return choked + new Tail(start, gamma, isothermal).Between(W(end, gamma), W(Math.Min(start, choking), gamma));
    }

    /// <summary>
    /// Pressure over that outside, p/pa, at a time: the inverse of <see cref="VentTime"/>, and 1 once it has vented.
    /// </summary>
    /// <param name="time">t [-] in units of <see cref="TimeUnit"/>, 0 to 1e9.</param>
    /// <param name="startRatio">p0/pa at the start [-], 1 to 1e6.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <param name="isothermal">Whether the walls hold the temperature; else adiabatic.</param>
    /// <returns>p/pa [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double PressureAfterVenting(double time, double startRatio, double gamma, bool isothermal)
    {
        double start = Guard.In(startRatio, 1, MaxRatio, "-", nameof(startRatio));
        double choking = 1 / IsentropicFlow.CriticalPressureRatio(gamma);
        double t = Checked(time);
        if (start > choking)
        {
            double choked = ChokedTime(choking / start, gamma, isothermal);
            if (t <= choked)
                return start * ChokedPressureRatio(t, gamma, isothermal);
            t -= choked;
        }

        double w0 = W(Math.Min(start, choking), gamma);
        var tail = new Tail(start, gamma, isothermal);
        if (t >= tail.Between(0, w0))
            return 1;

        // Newton down from the fast end, where the integrand is greatest: every step stays short of the root.
        double w = w0;
        for (int i = 0; i < MaxIterations; i++)
        {
            double step = (t - tail.Between(w, w0)) / tail.At(w);
            w = Math.Max(0, w - step);
            if (Math.Abs(step) <= 1e-15)
                break;
        }

        return Math.Pow((1 - w) * (1 + w), -gamma / (gamma - 1));
    }

    private static double Checked(double time) => Guard.In(time, 0, MaxTime, "-", nameof(time));

    /// <summary>
    /// w = sqrt(1 - (pa/p)^((gamma - 1)/gamma)): speed in the opening over the greatest speed the gas could reach.
    /// </summary>
    private static double W(double pressureRatio, double gamma) =>
        Math.Sqrt(-NearZero.Expm1(-(gamma - 1) / gamma * Math.Log(pressureRatio)));

    /// <summary>-dt/dw of the subsonic tail.</summary>
    private readonly struct Tail(double startRatio, double gamma, bool isothermal) : IIntegrand
    {
        private readonly double exponent = isothermal ? -gamma / (gamma - 1) : 0.5 - gamma / (gamma - 1);

        private readonly double factor = Math.Sqrt(2 * gamma / (gamma - 1))
            * (isothermal ? 1 : Math.Pow(startRatio, (gamma - 1) / (2 * gamma)) / gamma);

        public double At(double w) => factor * Math.Pow((1 - w) * (1 + w), exponent);

        public double Between(double low, double high) => GaussLegendre.Integrate(this, low, high);
    }
}
