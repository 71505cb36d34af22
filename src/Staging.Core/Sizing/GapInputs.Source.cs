using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <content>Inputs of the source: a motor known by its grain, or by its chamber.</content>
public static partial class GapInputs
{
    /// <summary>Modulus of rupture of the propellant, which sets thickness and mass of the web that breaks.</summary>
    /// <param name="spread">How it scatters [MPa].</param>
    /// <returns>The input <c>source.strength</c>.</returns>
    public static StudyInput<GapProblem> Strength(Distribution spread) =>
        Grain("source.strength", "MPa", spread, (s, v) => s with { Strength = Pressure.FromMegapascals(v) });

    /// <summary>Where the speed of the pieces lies between its slow and its fast bound, by factors.</summary>
    /// <param name="spread">How it scatters [-], 0 to 1.</param>
    /// <returns>The input <c>source.piece-speed</c>.</returns>
    public static StudyInput<GapProblem> PieceSpeed(Distribution spread) =>
        Grain("source.piece-speed", "-", spread, (s, v) => s with { SpeedShare = v, PieceSpeed = null });

    /// <summary>Time after which the fresh faces of the pieces burn as well.</summary>
    /// <param name="spread">How it scatters [ms].</param>
    /// <returns>The input <c>source.fresh-faces</c>.</returns>
    public static StudyInput<GapProblem> FreshFaceDelay(Distribution spread) =>
        Grain("source.fresh-faces", "ms", spread, (s, v) => s with { FreshFaceDelay = Duration.FromMilliseconds(v) });

    /// <summary>Burning rate at one atmosphere; its exponent of pressure stays.</summary>
    /// <param name="spread">How it scatters [mm/s].</param>
    /// <returns>The input <c>source.burning-rate</c>.</returns>
    public static StudyInput<GapProblem> BurningRate(Distribution spread) => Grain("source.burning-rate", "mm/s", spread,
        (s, v) => s with { Rate = s.Rate with { RateAtOneAtmosphere = Speed.FromMillimetersPerSecond(v) } });

    /// <summary>Radial cracks of the web that breaks.</summary>
    /// <param name="spread">How they scatter [-].</param>
    /// <returns>The input <c>source.cracks</c>.</returns>
    public static StudyInput<GapProblem> RadialCracks(Distribution spread) =>
        Grain("source.cracks", "-", spread, (s, v) => s with { RadialCracks = v });

    /// <summary>Mass of the fragments that burn after burn-through.</summary>
    /// <param name="spread">How it scatters [g].</param>
    /// <returns>The input <c>source.fragment-mass</c>.</returns>
    public static StudyInput<GapProblem> FragmentMass(Distribution spread) =>
        Source("source.fragment-mass", "g", spread, (s, v) => s with { Web = s.Web with { Mass = Mass.FromGrams(v) } });

    /// <summary>Time over which the fragments burn, of a web that burns over a stated time.</summary>
    /// <param name="spread">How it scatters [ms].</param>
    /// <returns>The input <c>source.burn-time</c>.</returns>
    public static StudyInput<GapProblem> FragmentBurnTime(Distribution spread) => Source("source.burn-time", "ms", spread,
        (s, v) => s with
        {
            Web = s.Web is WebBurn.OverTime over
                ? over with { Time = Duration.FromMilliseconds(v) }
                : throw new ArgumentException("The input source.burn-time belongs to a web that burns over a stated time."),
        });

    /// <summary>Chamber pressure at burn-through.</summary>
    /// <param name="spread">How it scatters [kPa], absolute.</param>
    /// <returns>The input <c>source.chamber-pressure</c>.</returns>
    public static StudyInput<GapProblem> ChamberPressure(Distribution spread) =>
        Source("source.chamber-pressure", "kPa", spread, (s, v) => s with { ChamberPressure = Pressure.FromKilopascals(v) });

    /// <summary>Diameter of the opening that burns through.</summary>
    /// <param name="spread">How it scatters [mm].</param>
    /// <returns>The input <c>source.opening</c>.</returns>
    public static StudyInput<GapProblem> OpeningDiameter(Distribution spread) =>
        Source("source.opening", "mm", spread, (s, v) => s with { OpeningDiameter = Length.FromMillimeters(v) });

    /// <summary>Time within which it opens.</summary>
    /// <param name="spread">How it scatters [ms].</param>
    /// <returns>The input <c>source.opening-time</c>.</returns>
    public static StudyInput<GapProblem> OpeningTime(Distribution spread) =>
        Source("source.opening-time", "ms", spread, (s, v) => s with { OpeningTime = Duration.FromMilliseconds(v) });

    /// <summary>Share of gas in the products.</summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>source.gas-fraction</c>.</returns>
    public static StudyInput<GapProblem> GasFraction(Distribution spread) =>
        new("source.gas-fraction", "-", spread, (p, v) => Design(p, d => d with
        {
            Source = d.Source with { Products = d.Source.Products with { GasMassFraction = v } },
        }));

    private static ImmutableArray<StudyInput<GapProblem>> JudgedOf(GapSource source)
    {
        StudyInput<GapProblem> gas = GasFraction(Distribution.Triangular(0.55, 0.65, 0.7));
        return source switch
        {
            GapSource.EndBurner =>
            [
                BurningRate(Distribution.Uniform(12.1, 17.2)),
                Strength(Distribution.Triangular(2, 5, 10)),
                RadialCracks(Distribution.Uniform(3, 6)),
                PieceSpeed(Distribution.Uniform(0, 1)),
                FreshFaceDelay(Distribution.Triangular(5, 20, 80)),
                gas,
            ],
            GapSource.Booster booster =>
            [
                FragmentMass(Distribution.Triangular(0.1, 0.19, 0.3)),
                .. booster.Web is WebBurn.OverTime
                    ? [FragmentBurnTime(Distribution.Triangular(15, 25, 40))]
                    : Array.Empty<StudyInput<GapProblem>>(),
                OpeningDiameter(Distribution.Triangular(6, 10, 12)),
                OpeningTime(Distribution.Triangular(0.3, 1, 3)),
                gas,
            ],
            _ => [gas],
        };
    }

    private static StudyInput<GapProblem> Source(string path, string unit, Distribution spread,
        Func<GapSource.Booster, double, GapSource.Booster> with) =>
        new StudyInput<GapProblem>(path, unit, spread, (p, v) => Design(p, d => d.Source is GapSource.Booster motor
            ? d with { Source = with(motor, v) }
            : throw new ArgumentException(
                $"The input {path} belongs to one booster motor; the source of this gap is of another kind.", nameof(p))));

    private static StudyInput<GapProblem> Grain(string path, string unit, Distribution spread,
        Func<GapSource.EndBurner, double, GapSource.EndBurner> with) =>
        new StudyInput<GapProblem>(path, unit, spread, (p, v) => Design(p, d => d.Source is GapSource.EndBurner motor
            ? d with { Source = with(motor, v) }
            : throw new ArgumentException(
                $"The input {path} belongs to one motor known by its grain; the source of this gap is of another kind.", nameof(p))));
}
