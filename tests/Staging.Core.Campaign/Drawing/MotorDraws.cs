using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Campaign.Drawing;

/// <summary>Motors of a flight, by a curve of four points.</summary>
internal static class MotorDraws
{
    public static Motor Motor(Draws d, string at, bool lightsNext)
    {
        double burn = d.Number(at + "burn", new(0.85, 0.3, 3, 1e-3, 1000)), peak = d.Number(at + "peak", new(20, 8, 60, 1e-3, 1e7));
        double sustained = peak * d.Number(at + "sustained", new(0.4, 0.1, 1, 0, 1));
        double rise = burn * d.Number(at + "rise", new(0.2, 0.05, 0.5, 1e-3, 0.9));
        double propellant = d.Number(at + "propellant", new(0.010, 0.003, 0.06, 0, 10_000));
        return new Motor
        {
            Name = "drawn motor",
            Thrust = ThrustHistory.FromColumns([0, rise, burn * 0.95, burn], [0, peak, sustained, 0]),
            PropellantMass = Mass.FromKilograms(propellant),
            LoadedMass = Mass.FromKilograms(Math.Min(20_000, propellant + d.Number(at + "casing", new(0.011, 0.005, 0.05, 0, 10_000)))),
            ForwardEnd = End(d, at, lightsNext, burn),
            Diameter = Length.FromMillimeters(18),
            Length = Length.FromMillimeters(70),
            Provenance = Invented.Here,
        };
    }

    public static Motor Plugged(this Motor motor) => motor with { ForwardEnd = new MotorForwardEnd.Plugged() };

    private static MotorForwardEnd End(Draws d, string at, bool lightsNext, double burn)
    {
        int choice = d.Choice(at + "end", 24);
        if (lightsNext == choice < 23)
        {
            double after = Math.Clamp(burn * d.Number(at + "through", new(0.97, 0.9, 1, 0.01, 2)), 1e-3, 1000);
            return new MotorForwardEnd.BurnsThrough { After = choice == 1 ? Duration.FromSeconds(after) : null };
        }

        return choice % 2 == 0
            ? new MotorForwardEnd.Ejects { Delay = Duration.FromSeconds(d.Number(at + "delay", new(4, 2, 8, 0, 100))) }
            : new MotorForwardEnd.Plugged();
    }
}
