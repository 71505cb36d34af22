using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Heat transfer from the gas at the nozzle plane to the grain face.</summary>
internal readonly struct GrainHeating
{
    /// <summary>Prandtl number taken for hot products [-]: that of air within 5 % from 300 to 2000 K.</summary>
    private const double Prandtl = 0.7;

    /// <summary>Pr^0.4 of the stagnation-point correlation.</summary>
    private static readonly double PrandtlPower = Math.Pow(Prandtl, 0.4);

    /// <summary>
    /// Passes for the radiation: over an interval of 20 microseconds each gains more than two digits.
    /// </summary>
    private const int RadiationPasses = 4;

    private readonly double stream;
    private readonly double gas;
    private readonly double emittance;

    /// <summary>
    /// Heat transfer from gas of a zone at a pressure [Pa] that washes the nozzle plane at a speed [m/s].
    /// </summary>
    public GrainHeating(in Zone<Real> zone, double pressure, double speed, GapParameters p)
        : this(new NozzleStream(zone, pressure, speed), zone.Temperature,
            p.Grain.Emissivity * zone.ProductFraction * Gaps.Radiation.StefanBoltzmann, p)
    {
    }

    /// <summary>
    /// Heat transfer from a stream, and by radiation of a gas of a temperature [K] that stands before the grain.
    /// </summary>
    private GrainHeating(in NozzleStream washes, double gas, double emittance, GapParameters p)
    {
        stream = washes.Temperature;
        this.gas = gas;
        this.emittance = emittance;
        double particles = p.ParticleFraction * washes.ProductFraction;

        // Laminar axisymmetric stagnation point, Nu = 0.763 sqrt(U d/nu) Pr^0.4 (M. Sibulkin, J. Aeronautical Sciences
        // 19 (1952) 570-571, from memory) with the velocity gradient taken as U/d, a judgement (a disc has 4/pi of
        // that, a sphere 3), the viscosity of air (Sutherland's law of the US Standard Atmosphere 1976) and the heat
        // capacity of the parcel.
        double viscosity = 1.458e-6 * stream * Math.Sqrt(stream) / (stream + 110.4);
        double reynolds = (1 - particles) * washes.MassFlux * p.Grain.ThroatDiameter / viscosity;
        double conductivity = viscosity * washes.HeatCapacity / Prandtl;
        Convective = 0.763 * Math.Sqrt(reynolds) * PrandtlPower * conductivity / p.Grain.ThroatDiameter;
        Impinging = p.Grain.ParticleEfficiency * particles * washes.MassFlux * p.ParticleHeatCapacity;
    }

    /// <summary>
    /// The heat transfer at a share of the way from one to another [-], with all that it goes by taken linearly.
    /// </summary>
    private GrainHeating(in GrainHeating from, in GrainHeating to, double share)
    {
        stream = from.stream + share * (to.stream - from.stream);
        gas = from.gas + share * (to.gas - from.gas);
        emittance = from.emittance + share * (to.emittance - from.emittance);
        Convective = from.Convective + share * (to.Convective - from.Convective);
        Impinging = from.Impinging + share * (to.Impinging - from.Impinging);
        IsByJet = to.IsByJet;
    }

    /// <summary>The heat transfer at a share of the way from this to another [-], taken linearly.</summary>
    public GrainHeating Towards(in GrainHeating other, double share) => new(this, other, share);

    /// <summary>
    /// Whether this is the same as another one within a relative tolerance [-]: by the same stream, as hot, as strong.
    /// </summary>
    public bool IsNear(in GrainHeating other, double tolerance)
    {
        return IsByJet == other.IsByJet && Near(stream, other.stream) && Near(gas, other.gas) && Near(emittance, other.emittance)
            && Near(Convective, other.Convective) && Near(Impinging, other.Impinging);

        bool Near(double one, double two) => Math.Abs(one - two) <= tolerance * Math.Abs(one);
    }

    /// <summary>The same with another stream, if that brings a cold grain more heat; what radiates stays.</summary>
    public GrainHeating Or(in NozzleStream other, GapParameters p)
    {
        if (!(other.MassFlux > 0))
            return this;
        var instead = new GrainHeating(other, gas, emittance, p) { IsByJet = true };
        return instead.Brings(p.Grain.Initial) > Brings(p.Grain.Initial) ? instead : this;
    }

    /// <summary>Whether the jet out of a chamber brings it.</summary>
    public bool IsByJet { get; private init; }

    /// <summary>Coefficient of convection [W/(m2 K)].</summary>
    public double Convective { get; }

    /// <summary>
    /// Coefficient of the impinging particles [W/(m2 K)]: efficiency times their mass flux times their heat capacity.
    /// </summary>
    public double Impinging { get; }

    /// <summary>Flux by convection to a surface [W/m2].</summary>
    public double Convection(double surface) => Convective * (stream - surface);

    /// <summary>Flux from impinging particles [W/m2].</summary>
    public double Particles(double surface) => Impinging * (stream - surface);

    /// <summary>Flux by radiation to a surface [W/m2].</summary>
    public double Radiation(double surface) => emittance * (Gaps.Radiation.Fourth(gas) - Gaps.Radiation.Fourth(surface));

    /// <summary>All flux to a surface [W/m2].</summary>
    public double Total(double surface) => Convection(surface) + Particles(surface) + Radiation(surface);

    /// <summary>
    /// The surface temperature T = settled + gain * flux(T): solved for the linear part, with the weak radiation
    /// iterated.
    /// </summary>
    public double Settle(double settled, double gain, double guess, out double flux)
    {
        double h = Convective + Impinging, per = 1 / (1 + gain * h);
        double alone = (settled + gain * (h * stream + emittance * Gaps.Radiation.Fourth(gas))) * per;
        double radiated = gain * emittance * per;
        double surface = guess;
        for (int pass = 0; pass < RadiationPasses; pass++)
            surface = alone - radiated * Gaps.Radiation.Fourth(surface);
        flux = Total(surface);
        return surface;
    }

    /// <summary>Flux that the stream brings to a surface [W/m2].</summary>
    private double Brings(double surface) => (Convective + Impinging) * (stream - surface);
}
