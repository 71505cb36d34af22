namespace Staging.Core.Gaps;

/// <summary>Heat transfer from the gas at the nozzle plane to the grain face.</summary>
internal readonly struct GrainHeating
{
    /// <summary>Stefan-Boltzmann constant [W/(m2 K4)], CODATA 2018.</summary>
    private const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>Prandtl number taken for hot products [-]: that of air within 5 % from 300 to 2000 K.</summary>
    private const double Prandtl = 0.7;

    /// <summary>Pr^0.4 of the stagnation-point correlation.</summary>
    private static readonly double PrandtlPower = Math.Pow(Prandtl, 0.4);

    /// <summary>Passes for the radiation: over an interval of 20 microseconds each gains more than two digits.</summary>
    private const int RadiationPasses = 4;

    private readonly double gas;
    private readonly double emittance;

    public GrainHeating(in GapMoment now, GapParameters p)
        : this(now.DeadEnd, now.Pressure, now.SpeedAtNozzle, p)
    {
    }

    /// <summary>Heat transfer from gas of a zone at a pressure [Pa] that washes the nozzle plane at a speed [m/s].</summary>
    public GrainHeating(in Zone zone, double pressure, double speed, GapParameters p)
    {
        gas = zone.Temperature;
        double density = zone.DensityAt(pressure);
        double particles = p.ParticleFraction * zone.ProductFraction;

        // Laminar axisymmetric stagnation point, Nu = 0.763 sqrt(U d/nu) Pr^0.4 (M. Sibulkin, J. Aeronautical Sciences 19 (1952) 570-571,
        // from memory) with the velocity gradient taken as U/d, a judgement (a disc has 4/pi of that, a sphere 3), the viscosity of air (Sutherland's
        // law of the US Standard Atmosphere 1976) and the heat capacity of the parcel.
        double viscosity = 1.458e-6 * gas * Math.Sqrt(gas) / (gas + 110.4);
        double reynolds = (1 - particles) * density * speed * p.Grain.ThroatDiameter / viscosity;
        double conductivity = viscosity * (zone.Cv + zone.R) / Prandtl;
        Convective = 0.763 * Math.Sqrt(reynolds) * PrandtlPower * conductivity / p.Grain.ThroatDiameter;
        Impinging = p.Grain.ParticleEfficiency * particles * density * speed * p.ParticleHeatCapacity;
        emittance = p.Grain.Emissivity * zone.ProductFraction * StefanBoltzmann;
    }

    /// <summary>Coefficient of convection [W/(m2 K)].</summary>
    public double Convective { get; }

    /// <summary>Coefficient of the impinging particles [W/(m2 K)]: efficiency times their mass flux times their heat capacity.</summary>
    public double Impinging { get; }

    /// <summary>Flux by convection to a surface [W/m2].</summary>
    public double Convection(double surface) => Convective * (gas - surface);

    /// <summary>Flux from impinging particles [W/m2].</summary>
    public double Particles(double surface) => Impinging * (gas - surface);

    /// <summary>Flux by radiation to a surface [W/m2].</summary>
    public double Radiation(double surface) => emittance * (Fourth(gas) - Fourth(surface));

    /// <summary>All flux to a surface [W/m2].</summary>
    public double Total(double surface) => Convection(surface) + Particles(surface) + Radiation(surface);

    /// <summary>
    /// The surface temperature T = settled + gain * flux(T): solved for the linear part, with the weak radiation iterated.
    /// </summary>
    public double Settle(double settled, double gain, double guess, out double flux)
    {
        double h = Convective + Impinging;
        double surface = guess;
        for (int pass = 0; pass < RadiationPasses; pass++)
            surface = (settled + gain * (h * gas + Radiation(surface))) / (1 + gain * h);
        flux = Total(surface);
        return surface;
    }

    private static double Fourth(double x) => x * x * (x * x);
}
