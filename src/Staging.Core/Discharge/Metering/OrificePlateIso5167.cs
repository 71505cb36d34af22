using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>
/// An orifice plate in a pipe, the metering device of ISO 5167-2:2003: flow from the pressure difference at its
/// tappings. A vent hole is not such a device: it lies outside every limit of the standard,
/// which <see cref="MeterReading.Findings"/> then report.
/// </summary>
/// <remarks>
/// q = C / sqrt(1 - beta^4) epsilon (pi/4) d^2 sqrt(2 dp rho1), solved together with C(Re_D). C:
/// Reader-Harris/Gallagher (1998), ISO 5167-2:2003, equation 4, with the term 0.011 (0.75 - beta)(2.8 - D/25.4 mm) for
/// pipes below 71.12 mm. epsilon: equation 5. Outside the limits the reading is still given, with findings; below a
/// pipe Reynolds number of 1000 or a pressure ratio of 0.5 there is none, since the fits mean nothing there.
/// </remarks>
public sealed record OrificePlateIso5167
{
    private const double MinReynoldsOfFit = 1000;

    /// <summary>Inner diameter of the pipe D [m], 5 mm to 2 m; the standard holds from 50 mm to 1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length PipeDiameter { get; init => field = Guard.In(value, 0.005, 2); }

    /// <summary>
    /// Diameter of the orifice d [m], 0.5 mm to 1.6 m and 0.02 to 0.8 of the pipe; the standard holds from 12.5 mm.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Bore { get; init => field = Guard.In(value, 0.0005, 1.6); }

    /// <summary>Where the pressures are taken.</summary>
    /// <exception cref="ArgumentOutOfRangeException">None of the kinds.</exception>
    public required PressureTappings Tappings { get; init => field = Guard.Defined(value); }

    /// <summary>beta = d/D [-].</summary>
    public double DiameterRatio => Bore.Meters / PipeDiameter.Meters;

    /// <summary>
    /// Least pipe Reynolds number [-] of the standard for these tappings and this diameter ratio; ISO 5167-2:2003,
    /// 5.3.1.
    /// </summary>
    public double MinReynolds
    {
        get
        {
            double beta = DiameterRatio;
            return Tappings == PressureTappings.Flange
                ? Math.Max(5000, 170e3 * beta * beta * PipeDiameter.Meters)
                : beta <= 0.56 ? 5000 : 16000 * beta * beta;
        }
    }

    /// <summary>Reader-Harris/Gallagher discharge coefficient, ISO 5167-2:2003, equation 4.</summary>
    /// <param name="pipeReynolds">Pipe Reynolds number Re_D [-], 1000 to 1e9.</param>
    /// <returns>C [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Reynolds number or diameter ratio outside the range.</exception>
    public double DischargeCoefficient(double pipeReynolds)
    {
        double beta = Beta();
        Guard.In(pipeReynolds, MinReynoldsOfFit, 1e9, property: nameof(pipeReynolds));
        return ReaderHarrisGallagher.Coefficient(beta, PipeDiameter.Meters, Tappings, pipeReynolds);
    }

    /// <summary>
    /// Expansibility factor, ISO 5167-2:2003, equation 5: 1 - (0.351 + 0.256 beta^4 + 0.93 beta^8)(1 -
    /// (p2/p1)^(1/kappa)).
    /// </summary>
    /// <param name="pressureRatio">Downstream over upstream pressure p2/p1 [-], 0.5 to 1; the standard holds from
    /// 0.75.</param>
    /// <param name="isentropicExponent">Isentropic exponent kappa [-], 1.01 to 5/3.</param>
    /// <returns>epsilon [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument or the diameter ratio outside the range.</exception>
    public double Expansibility(double pressureRatio, double isentropicExponent)
    {
        double beta = Beta();
        Guard.In(pressureRatio, 0.5, 1, property: nameof(pressureRatio));
        Guard.In(isentropicExponent, 1.01, 5.0 / 3.0, property: nameof(isentropicExponent));
        double b4 = beta * beta * beta * beta;
        return 1 - (0.351 + b4 * (0.256 + 0.93 * b4)) * (1 - Math.Pow(pressureRatio, 1 / isentropicExponent));
    }

    /// <summary>Flow of a gas.</summary>
    /// <param name="upstream">Static pressure p1 at the upstream tapping [Pa], 100 Pa to 1 GPa.</param>
    /// <param name="downstream">Static pressure p2 at the downstream tapping [Pa], from half of the upstream pressure
    /// to below it.</param>
    /// <param name="upstreamDensity">Density at the upstream tapping [kg/m3], 1e-3 to 2000.</param>
    /// <param name="viscosity">Dynamic viscosity [Pa s], 1e-7 to 10.</param>
    /// <param name="isentropicExponent">Isentropic exponent kappa [-].</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or a flow with a pipe Reynolds
    /// number below 1000.</exception>
    public MeterReading ReadGas(Pressure upstream, Pressure downstream, Density upstreamDensity, DynamicViscosity viscosity,
        double isentropicExponent)
    {
        double p1 = Guard.In(upstream, 100, 1e9, nameof(upstream)).Pascals;
        double p2 = Guard.In(downstream, 0.5 * p1, p1, nameof(downstream)).Pascals;
        double ratio = p2 / p1;
        double epsilon = Expansibility(ratio, isentropicExponent);
        return Read(p1 - p2, ratio, Guard.In(upstreamDensity, 1e-3, 2000, nameof(upstreamDensity)), viscosity, epsilon,
            0.035 * (1 - ratio) / isentropicExponent);
    }

    /// <summary>Flow of a liquid, which does not expand.</summary>
    /// <param name="difference">Pressure difference between the tappings [Pa], up to 1 GPa.</param>
    /// <param name="density">Density [kg/m3], 1e-3 to 2000.</param>
    /// <param name="viscosity">Dynamic viscosity [Pa s], 1e-7 to 10.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or a flow with a pipe Reynolds
    /// number below 1000.</exception>
    public MeterReading ReadLiquid(Pressure difference, Density density, DynamicViscosity viscosity) =>
        Read(Guard.In(difference, 0, 1e9, nameof(difference)).Pascals, 1, Guard.In(density, 1e-3, 2000, nameof(density)), viscosity, 1, 0);

    private MeterReading Read(double dp, double ratio, Density density, DynamicViscosity viscosity, double epsilon,
        double epsilonUncertainty)
    {
        double beta = Beta();
        double rho = density.KilogramsPerCubicMeter;
        double mu = Guard.In(viscosity.PascalSeconds, 1e-7, 10, "Pa s", nameof(viscosity));
        double d = Bore.Meters;
        double diameter = PipeDiameter.Meters;
        // ISO 5167-1:2003, annex A: q/C does not change during the iteration.
        double flowPerC = epsilon * Math.PI / 4 * d * d * Math.Sqrt(2 * dp * rho / (1 - Math.Pow(beta, 4)));
        double reynoldsPerC = 4 * flowPerC / (Math.PI * diameter * mu);
        double reynolds = Reynolds(reynoldsPerC, beta, diameter);
        double c = ReaderHarrisGallagher.Coefficient(beta, diameter, Tappings, reynolds);
        return new MeterReading(
            MassFlow.FromKilogramsPerSecond(c * flowPerC),
            c,
            flowFactor: epsilon,
            reynolds,
            ReaderHarrisGallagher.Uncertainty(beta, diameter, reynolds),
            epsilonUncertainty,
            [.. Findings(reynolds, ratio)]);
    }

    private double Reynolds(double reynoldsPerC, double beta, double diameter)
    {
        const double low = MinReynoldsOfFit;
        double atLow = ReaderHarrisGallagher.Coefficient(beta, diameter, Tappings, low);
        Guard.In(reynoldsPerC * atLow, low, 1e9, property: "PipeReynolds");
        // C stays below 2 wherever the fit is evaluated.
        double high = 2 * reynoldsPerC;
        var f = new ReynoldsBalance(reynoldsPerC, beta, diameter, Tappings);
        (double a, double b) = BracketedRoot.Shrink(ref f, low, low - reynoldsPerC * atLow, high, f.At(high), 1e-12 * high);
        return 0.5 * (a + b);
    }

    /// <summary>The limits of use of ISO 5167-2:2003, 5.3.1 and 5.3.2.2, that are exceeded.</summary>
    private IEnumerable<ModelFinding> Findings(double reynolds, double ratio)
    {
        if (Bore.Meters < 0.0125)
            yield return Left("DIS011", "Bore", $"the bore is {Bore.Millimeters:G4} mm; ISO 5167-2 holds from 12.5 mm");
        if (PipeDiameter.Meters < 0.05)
            yield return Left("DIS012", "PipeDiameter", $"the pipe is {PipeDiameter.Millimeters:G4} mm; ISO 5167-2 holds from 50 mm");
        if (PipeDiameter.Meters > 1)
            yield return Left("DIS013", "PipeDiameter", $"the pipe is {PipeDiameter.Meters:G4} m; ISO 5167-2 holds to 1 m");
        if (DiameterRatio is < 0.1 or > 0.75)
            yield return Left("DIS014", "Bore", $"the diameter ratio is {DiameterRatio:G4}; ISO 5167-2 holds from 0.1 to 0.75");
        if (reynolds < MinReynolds)
            yield return Left("DIS015", "PipeReynolds",
                $"the pipe Reynolds number is {reynolds:G4}; ISO 5167-2 holds from {MinReynolds:G4}");
        if (ratio < 0.75)
            yield return Left("DIS016", "PressureRatio", $"the pressure ratio is {ratio:G4}; the expansibility fit holds from 0.75");
    }

    private static ModelFinding Left(string code, string path, Invariant.Handler text) =>
        new(FindingSeverity.Warning, code, path, text.ToStringAndClear() + "; the coefficient is an extrapolation.");

    private double Beta() => Guard.In(DiameterRatio, 0.02, 0.8, property: nameof(DiameterRatio));

    private readonly struct ReynoldsBalance(double reynoldsPerC, double beta, double diameter, PressureTappings tappings) : IScalarFunction
    {
        public double At(double x) => x - reynoldsPerC * ReaderHarrisGallagher.Coefficient(beta, diameter, tappings, x);
    }
}
