using Staging.Core.Fronts;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// How the front travelled in a gap run: arrival at any station, speed, mixing thickness and heat lost on the way.
/// Made by <see cref="GapRun.FrontTravel"/>.
/// </summary>
/// <remarks>
/// Immutable; may be read from any thread. Every number is read from the course of the run on demand.
/// </remarks>
public sealed class FrontTravel
{
    /// <summary>
    /// Parts of the run in which the first arrival is searched; two passages within one part may be missed.
    /// </summary>
    private const int ScanParts = 400;

    /// <summary>
    /// Half the span of the difference that gives the speed [s]: it errs by about 1e-3 m/s, from the tolerance of the
    /// run and the curvature.
    /// </summary>
    private const double SpeedSpan_s = 5e-6;

    /// <summary>Width to which an arrival is located [s].</summary>
    private const double ArrivalWidth_s = 1e-9;

    /// <summary>
    /// Longest step of the heat loss [s]: a hundredth of the shortest time in which a front crosses a gap.
    /// </summary>
    private const double LossStep_s = 20e-6;

    private readonly GapRun run;
    private readonly FrontMixing mixing;
    private readonly double end;

    internal FrontTravel(GapRun run, FrontMixing mixing)
    {
        this.run = run;
        this.mixing = mixing;
        end = run.End.Seconds;
    }

    /// <summary>When the front first stands at a station.</summary>
    /// <param name="station">Distance from the booster motor's forward end [m], above 0 and at most 10.</param>
    /// <returns>The time since burn-through; null when it did not get there within the run.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration? ArrivalAt(Length station)
    {
        double x = Guard.Above(station.Meters, 0, 10, "m", nameof(station));
        var ahead = new Ahead(this, x);
        double low = 0, before = ahead.At(0);
        for (int i = 1; i <= ScanParts && before < 0; i++)
        {
            double high = end * i / ScanParts, after = ahead.At(high);
            if (after >= 0)
                return Duration.FromSeconds(BracketedRoot.Shrink(ref ahead, low, before, high, after, ArrivalWidth_s).High);
            (low, before) = (high, after);
        }

        return before >= 0 ? Duration.FromSeconds(low) : null;
    }

    /// <summary>Speed of the front; negative when it draws back.</summary>
    /// <param name="time">Time since burn-through [s], 0 to the end of the run.</param>
    /// <returns>
    /// The speed, to about 1 mm/s; of a one-dimensional run that between its marks, 20 microseconds apart.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the run.</exception>
    public Speed SpeedAt(Duration time)
    {
        double t = Guard.In(time, 0, end, nameof(time)).Seconds;
        double from = Math.Max(0, t - SpeedSpan_s), to = Math.Min(end, t + SpeedSpan_s);
        return Speed.FromMetersPerSecond(to > from ? (Front(to) - Front(from)) / (to - from) : 0);
    }

    /// <summary>Thickness that the mixing zone of the front has grown to, by the way it has come.</summary>
    /// <param name="time">Time since burn-through [s], 0 to the end of the run.</param>
    /// <returns>Thickness from 90 to 10 % products. The run itself blends over the thickness of its closures.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the run.</exception>
    public Length MixingThicknessAt(Duration time) =>
        Length.FromMeters(mixing.Thickness(Math.Max(0, Front(Guard.In(time, 0, end, nameof(time)).Seconds)),
            run.Problem.Design.Tube.Profile.FirstBore));

    /// <summary>
    /// Heat that the gas behind the front has given to the tube wall; in the well-stirred model, which cools all of its
    /// gas, that of the stretch which the products would fill.
    /// </summary>
    /// <param name="time">Time since burn-through [s], 0 to the end of the run.</param>
    /// <returns>
    /// The integral over time of pi D x times h (T - Tw) and the radiation of the products, by the trapezoidal rule on
    /// steps of at most 20 microseconds.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the run.</exception>
    public Energy HeatLostBy(Duration time)
    {
        double t = Guard.In(time, 0, end, nameof(time)).Seconds, rate = LossRate(0);
        return Energy.FromJoules(Lost(0, 0, t, ref rate));
    }

    /// <summary>
    /// The share of the heat of the products behind the front that has gone into the wall on the way.
    /// </summary>
    /// <param name="time">Time since burn-through [s], 0 to the end of the run.</param>
    /// <returns>
    /// Heat lost over heat lost plus the excess enthalpy that the gas behind the front still has [-], 0 to 1; zero
    /// where the gas has taken heat from the wall.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the run.</exception>
    public double ShareLostBy(Duration time)
    {
        double lost = Math.Max(0, HeatLostBy(time).Joules), kept = ExcessEnthalpy(run.Course.At(time.Seconds));
        return lost > 0 ? lost / (lost + kept) : 0;
    }

    /// <summary>
    /// The travel as columns of equal length in SI units, at a fixed interval, the last moment included: time since
    /// burn-through [s], station of the front [m], its speed [m/s], thickness of the mixing zone, 90 to 10 % products
    /// [m], and heat given to the tube wall so far [J].
    /// </summary>
    /// <param name="interval">
    /// Sampling interval [s], 1 microsecond, or a millionth of the run where that is longer, to 1 s.
    /// </param>
    /// <returns>The columns.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public (ReadOnlyMemory<double> Time_s, ReadOnlyMemory<double> Front_m, ReadOnlyMemory<double> Speed_mps,
        ReadOnlyMemory<double> MixingThickness_m, ReadOnlyMemory<double> HeatLost_J) Sample(Duration interval)
    {
        double step = Guard.In(interval, Math.Max(1e-6, 1e-6 * end), 1, nameof(interval)).Seconds;
        int n = (int)Math.Ceiling(end / step * (1 - 1e-12)) + 1;
        double[] time = new double[n], front = new double[n], speed = new double[n], thickness = new double[n], heat = new double[n];
        double lost = 0, rate = LossRate(0);
        for (int i = 0; i < n; i++)
        {
            time[i] = Math.Min(i * step, end);
            if (i > 0)
                lost = Lost(lost, time[i - 1], time[i], ref rate);
            Duration at = Duration.FromSeconds(time[i]);
            front[i] = Front(time[i]);
            speed[i] = SpeedAt(at).MetersPerSecond;
            thickness[i] = MixingThicknessAt(at).Meters;
            heat[i] = lost;
        }

        return (time, front, speed, thickness, heat);
    }

    /// <summary>How far the front came.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Invariant.Text($"The front of a gap from burn-through to {end * 1e3:F2} ms: it stands at "
        + $"{Front(end) * 1e3:F1} mm then, and has given {HeatLostBy(run.End).Joules:F1} J to the wall.");

    /// <summary>Station of the front [m] at a time [s].</summary>
    private double Front(double t) => run.Course.At(t)[GapChannel.Front];

    /// <summary>Heat lost [J] at the end of an interval, from that and the rate [W] at its beginning.</summary>
    private double Lost(double lost, double from, double to, ref double rate)
    {
        int parts = (int)Math.Ceiling((to - from) / LossStep_s * (1 - 1e-12));
        for (int k = 1; k <= parts; k++)
        {
            double after = LossRate(from + (to - from) * k / parts);
            lost += 0.5 * (rate + after) * (to - from) / parts;
            rate = after;
        }

        return lost;
    }

    /// <summary>
    /// Heat that goes into the wall [W] at a time [s]: the flux of the hot gas times the wall behind the front.
    /// </summary>
    private double LossRate(double t)
    {
        GapReading now = run.Course.At(t);
        MixingAndHeat closures = run.Problem.Design.MixingAndHeat;
        var walls = new WallExchange(closures.WallHeatTransfer.WattsPerSquareMeterKelvin, closures.Emissivity,
            run.Problem.Surroundings.Temperature.Kelvins);
        BoreProfile profile = run.Problem.Design.Tube.Profile;
        double stretch = Stretch(now), hot = now[GapChannel.HotTemperature];
        return walls.Coefficient<Real>(hot, now.HotProducts)
            * (profile.WallTo<Real>(now[GapChannel.Front] - stretch) + Math.PI * profile.FirstBore * stretch) * (hot - walls.Wall);
    }

    /// <summary>
    /// gamma/(gamma - 1) p V (1 - Tw/T) of the gas behind the front [J]; none where gas or excess are rounding.
    /// </summary>
    private double ExcessEnthalpy(in GapReading now)
    {
        double gamma = run.Problem.Design.Source.Products.Equivalent().HeatCapacityRatio;
        BoreProfile profile = run.Problem.Design.Tube.Profile;
        double stretch = Stretch(now), volume = profile.VolumeTo(now[GapChannel.Front] - stretch) + stretch * profile.FirstArea;
        double excess = 1 - run.Problem.Surroundings.Temperature.Kelvins / now[GapChannel.HotTemperature];
        return gamma / (gamma - 1) * now[GapChannel.GapPressure] * Math.Max(0, volume) * Math.Max(0, excess);
    }

    /// <summary>Lengthening of the tube by the joint, in its first bore [m].</summary>
    private double Stretch(in GapReading now)
    {
        FrictionJoint coupler = run.Problem.Design.Joint.Coupler;
        double travel = Math.Min(now[GapChannel.JointTravel], coupler.Engagement.Meters);
        return travel * coupler.PressureArea.SquareMeters / run.Problem.Design.Tube.Profile.FirstArea;
    }

    private readonly struct Ahead(FrontTravel travel, double station) : IScalarFunction
    {
        public double At(double t) => travel.Front(t) - station;
    }
}
