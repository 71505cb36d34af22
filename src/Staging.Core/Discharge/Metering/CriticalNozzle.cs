using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>
/// A critical-flow nozzle as a standard of mass flow: q = A Cd' C* p0 / sqrt(R T0), ISO 9300:2005, with Cd' = a - b
/// Re^(-n) and the throat Reynolds number Re = 4 q / (pi d mu0).
/// </summary>
/// <remarks>
/// a, b, n (from memory of ISO 9300:2005): toroidal 0.9959, 2.720, 0.5; accurately machined 0.9985, 3.412, 0.5;
/// cylindrical 0.9976, 0.1388, 0.2. Outside the Reynolds range of the shape the reading carries a finding; where the
/// throat is not choked the method throws, since the formula would read too high. The ideal-gas C* of air is 0.06 % low
/// at 1 bar and 0.22 % low at 5 bar; give a real-gas value where that matters.
/// </remarks>
public sealed record CriticalNozzle
{
    private const double MinReynoldsOfFit = 1000;

    /// <summary>Relative uncertainty of Cd' [-] at 95 %; ISO 9300:2005 (from memory).</summary>
    private const double Uncertainty = 0.003;

    /// <summary>Throat diameter [m], 0.1 mm to 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ThroatDiameter { get; init => field = Guard.In(value, 1e-4, 0.5); }

    /// <summary>Shape and finish.</summary>
    /// <exception cref="ArgumentOutOfRangeException">None of the shapes.</exception>
    public required CriticalNozzleShape Shape { get; init => field = Guard.Defined(value); }

    /// <summary>
    /// Highest back pressure over upstream pressure [-] at which the throat is still choked, 0.3 to 0.95: null without
    /// a diffuser, then it is the critical ratio of the gas.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? ChokedUpTo { get; init => field = value is { } v ? Guard.In(v, 0.3, 0.95) : null; }

    /// <summary>
    /// Reynolds range [-] over which the coefficient of this shape was determined; ISO 9300:2005 (from memory).
    /// </summary>
    public (double Min, double Max) ReynoldsRange => Shape switch
    {
        CriticalNozzleShape.Toroidal => (2.1e4, 3.2e7),
        CriticalNozzleShape.AccurateToroidal => (2.1e4, 1.4e6),
        _ => (3.5e5, 1.1e7),
    };

    /// <summary>Discharge coefficient Cd' = a - b Re^(-n).</summary>
    /// <param name="throatReynolds">Throat Reynolds number [-], 1000 to 1e9.</param>
    /// <returns>Cd' [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double DischargeCoefficient(double throatReynolds) =>
        Coefficient(Guard.In(throatReynolds, MinReynoldsOfFit, 1e9, property: nameof(throatReynolds)));

    /// <summary>Choked mass flow.</summary>
    /// <param name="upstream">Stagnation state upstream.</param>
    /// <param name="backPressure">Pressure behind the nozzle, low enough to choke the throat.</param>
    /// <param name="viscosity">Dynamic viscosity at the stagnation state [Pa s], 1e-7 to 1e-2.</param>
    /// <param name="criticalFlowFactor">C* [-], 0.5 to 1: null takes the ideal-gas value of the gas.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, a throat that does not choke, or a
    /// Reynolds number below 1000.</exception>
    public MeterReading Read(GasState upstream, Pressure backPressure, DynamicViscosity viscosity,
        double? criticalFlowFactor = null)
    {
        ArgumentNullException.ThrowIfNull(upstream);
        double gamma = upstream.Gas.HeatCapacityRatio;
        double p0 = upstream.Pressure.Pascals;
        double mu = Guard.In(viscosity.PascalSeconds, 1e-7, 1e-2, "Pa s", nameof(viscosity));
        Guard.In(backPressure, 0, p0 * (ChokedUpTo ?? IsentropicFlow.CriticalPressureRatio(gamma)), nameof(backPressure));
        double factor = criticalFlowFactor ?? IsentropicFlow.CriticalFlowFactor(gamma);
        double cStar = Guard.In(factor, 0.5, 1, property: nameof(criticalFlowFactor));
        double d = ThroatDiameter.Meters;
        double ideal = Math.PI / 4 * d * d * cStar * p0 / Math.Sqrt(upstream.Gas.Constants.R * upstream.Temperature.Kelvins);
        double idealReynolds = 4 * ideal / (Math.PI * d * mu);
        Guard.In(idealReynolds, MinReynoldsOfFit, 1e9, property: "ThroatReynolds");
        // Cd' hardly changes with Re, so substitution gains at least one digit per iteration.
        double cd = Coefficient(idealReynolds);
        for (int i = 0; i < 20; i++)
            cd = Coefficient(cd * idealReynolds);
        double reynolds = cd * idealReynolds;
        (double min, double max) = ReynoldsRange;
        bool isInRange = reynolds >= min && reynolds <= max;
        return new MeterReading(MassFlow.FromKilogramsPerSecond(cd * ideal), cd, flowFactor: cStar, reynolds, Uncertainty, 0,
            isInRange ? [] :
        [
            new ModelFinding(FindingSeverity.Warning, "DIS017", "ThroatReynolds", Invariant.Text($"the throat Reynolds number is "
                + $"{reynolds:G4}; the coefficient holds from {min:G4} to {max:G4}; the reading is an extrapolation.")),
        ]);
    }

    private double Coefficient(double reynolds) => Shape switch
    {
        CriticalNozzleShape.Toroidal => 0.9959 - 2.720 / Math.Sqrt(reynolds),
        CriticalNozzleShape.AccurateToroidal => 0.9985 - 3.412 / Math.Sqrt(reynolds),
        _ => 0.9976 - 0.1388 * Math.Pow(reynolds, -0.2),
    };
}
