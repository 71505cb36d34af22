using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

/// <summary>A model of two numbers to study: a mass on a spring.</summary>
internal sealed record Oscillator(double Mass, double Stiffness)
{
    public static StudyInput<Oscillator> MassInput { get; } = new StudyInput<Oscillator>("mass", "kg", Distribution.Triangular(0.5, 1, 2), (m, v) => m with { Mass = v });

    public static StudyInput<Oscillator> StiffnessInput { get; } = new StudyInput<Oscillator>("spring.stiffness", "N/m", Distribution.LogNormal(100, 1.2), (m, v) => m with { Stiffness = v });

    public static InputSet<Oscillator> Inputs { get; } = new(new Oscillator(1, 100), MassInput, StiffnessInput);

    public double Period => 2 * Math.PI * Math.Sqrt(Mass / Stiffness);

    public static ReliabilityStudy<Oscillator, double> Study(long cases = 1000) => new()
    {
        Inputs = Inputs,
        Model = (m, _) => m.Period,
        Outcome = period => period > 0.63 ? "Slow" : "Quick",
        Measures = [new Measure<double>("period", "s", p => p), new Measure<double>("slow period", "s", p => p > 0.63 ? p : null)],
        Cases = cases,
        Seed = 11,
    };
}
