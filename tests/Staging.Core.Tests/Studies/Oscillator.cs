using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

/// <summary>A model of two numbers to study: a mass on a spring.</summary>
internal sealed record Oscillator(double Mass, double Stiffness)
{
    public static StudyInput<Oscillator> MassInput { get; } = StudyInput.Of<Oscillator>("mass", "kg", Spread.Triangular(0.5, 1, 2), (m, v) => m with { Mass = v });

    public static StudyInput<Oscillator> StiffnessInput { get; } = StudyInput.Of<Oscillator>("spring.stiffness", "N/m", Spread.LogNormal(100, 1.2), (m, v) => m with { Stiffness = v });

    public static InputSet<Oscillator> Inputs { get; } = InputSet.Of(new Oscillator(1, 100), MassInput, StiffnessInput);

    public double Period => 2 * Math.PI * Math.Sqrt(Mass / Stiffness);

    public static ReliabilityStudy<Oscillator, double> Study(long cases = 1000) => new()
    {
        Inputs = Inputs,
        Model = (m, _) => m.Period,
        Outcome = period => period > 0.63 ? "Slow" : "Quick",
        Measures = [Measure.Of<double>("period", "s", p => p), Measure.Of<double>("slow period", "s", p => p > 0.63 ? p : null)],
        Cases = cases,
        Seed = 11,
    };
}
