using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// A droplet that flies up the tube ahead of the gas: how long it takes to a distance, and how hot it is there.
/// </summary>
/// <remarks>
/// m dv/dt = -3 pi mu d (1 + 0.15 Re^0.687)(v - u), m c dT/dt = pi d^2 (Nu k/d (Tg - T) + eps sigma (Tw^4 - T^4)), with
/// the gas at the mean of its own and the droplet's temperature. The droplet stays a sphere, of one temperature (the
/// Biot number of melt in air is below 0.1 up to half a millimetre), neither burns nor freezes, and slips no gas along
/// its surface, which makes drag high by some 10 % at 10 micrometres.
/// </remarks>
internal static class DropletFlight
{
    /// <summary>Time after which a droplet no longer counts [s]: a gap burns for hundredths of that.</summary>
    private const double Longest = 1;

    /// <summary>Natural size of temperatures, for the tolerance [K].</summary>
    private const double Hot = 1000;

    /// <summary>
    /// Flies a droplet to a distance [m]; null where it comes to rest before, or takes over a second.
    /// </summary>
    public static DropletArrival? To(in Droplet droplet, in DropletGas gas, double distance)
    {
        double fastest = Math.Max(Math.Abs(droplet.Speed), Math.Abs(gas.Speed));
        if (!(fastest > 0 && distance > 0))
            return distance > 0 ? null : new DropletArrival(0, droplet.Temperature, droplet.Speed);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [distance, fastest, Hot]);
        ((ReadOnlySpan<double>)[0, droplet.Speed, droplet.Temperature]).CopyTo(integrator.State);
        var motion = new Motion(droplet, gas, distance);
        return integrator.Run(ref motion, Longest) == PhaseEnd.Event
            ? new DropletArrival(integrator.Time, integrator.State[2], integrator.State[1])
            : null;
    }

    /// <summary>Distance [m], speed [m/s] and temperature [K] against time; watches for the distance.</summary>
    private readonly struct Motion(Droplet droplet, DropletGas gas, double distance) : IOdeSystem
    {
        public int Dimension => 3;

        public int EventCount => 1;

        public EventRule Rule(int index) => new(Crossing.Rising, true);

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
        {
            double d = droplet.Diameter, ahead = y[1] - gas.Speed, T = y[2], film = 0.5 * (T + gas.Temperature);
            double viscosity = AirTransport.Viscosity(film), conductivity = AirTransport.Conductivity(film);
            GasConstants air = PerfectGas.DryAir.Constants;
            double reynolds = gas.Pressure / (air.R * film) * Math.Abs(ahead) * d / viscosity;
            double heat = SphereFlow.Nusselt(reynolds, viscosity * air.Cp / conductivity) * conductivity / d * (gas.Temperature - T)
                + droplet.Emissivity * Radiation.StefanBoltzmann * (Radiation.Fourth(gas.Walls) - Radiation.Fourth(T));
            dydt[0] = y[1];
            dydt[1] = -18 * viscosity / (droplet.Density * d * d) * SphereFlow.DragOverStokes(reynolds) * ahead;
            dydt[2] = 6 * heat / (droplet.Density * droplet.HeatCapacity * d);
        }

        public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values) => values[0] = y[0] - distance;
    }
}
