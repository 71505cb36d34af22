namespace Staging.Core.Gases;

/// <summary>A perfect gas as plain SI numbers, for kernels: R [J/(kg K)] and gamma [-].</summary>
internal readonly struct GasConstants(double gasConstant, double gamma)
{
    /// <summary>Specific gas constant [J/(kg K)].</summary>
    public double R { get; } = gasConstant;

    /// <summary>Ratio of heat capacities [-].</summary>
    public double Gamma { get; } = gamma;

    /// <summary>Heat capacity at constant volume [J/(kg K)].</summary>
    public double Cv { get; } = gasConstant / (gamma - 1);

    /// <summary>Heat capacity at constant pressure [J/(kg K)].</summary>
    public double Cp { get; } = gamma * gasConstant / (gamma - 1);
}
