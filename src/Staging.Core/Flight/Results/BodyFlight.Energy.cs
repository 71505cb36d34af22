using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The energy ledger.</summary>
public sealed partial class BodyFlight
{
    /// <summary>Four-point Gauss-Legendre rule on [0, 1] (Abramowitz and Stegun 1964, table 25.4).</summary>
    private static ReadOnlySpan<double> GaussNodes => [0.0694318442029737, 0.3300094782075719, 0.6699905217924281, 0.9305681557970263];

    private static ReadOnlySpan<double> GaussWeights => [0.1739274225687269, 0.3260725774312731, 0.3260725774312731, 0.1739274225687269];

    /// <summary>Adds up work and energy along the recorded trajectory from its start to apogee (or its end).</summary>
    /// <returns>The ledger.</returns>
    /// <exception cref="InvalidOperationException">The trajectory was not kept.</exception>
    public EnergyLedger EnergyLedger()
    {
        Within(Start);
        double end = double.IsNaN(log.Apogee.Time) ? log.EndTime : log.Apogee.Time;
        double thrust = 0, drag = 0, friction = 0, gravity = 0, left = 0;
        Span<double> y = stackalloc double[2];
        for (int i = 0; i < log.Track!.Count && log.Track.StartOf(i) < end; i++)
        {
            double start = log.Track.StartOf(i), length = log.Track.LengthOf(i);
            FlightSegment segment = log.Segments[SegmentAt(start, after: true)];
            if (segment.Held || length == 0)
                continue;
            for (int j = 0; j < GaussNodes.Length; j++)
            {
                double t = start + GaussNodes[j] * length, weight = GaussWeights[j] * length;
                log.Track.InStep(i, t, y);
                double v = y[1], weighted = weight * v;
                AirSample air = parameters.Site.At(y[0]);
                double halfArea = segment.Line.HalfArea(Math.Abs(v) / air.SoundSpeed_m_per_s);
                double g = parameters.Site.Gravity(y[0]);
                double m = segment.Push.Mass(t);
                thrust += weighted * segment.ThrustSign * segment.Push.Thrust(t);
                drag += weighted * air.Density_kg_per_m3 * v * Math.Abs(v) * halfArea;
                gravity += weighted * m * g * segment.Rise;
                friction += weighted * (segment.Friction + m * g * (segment.GravityShare - segment.Rise));
                left += weight * 0.5 * v * v * (segment.Push.MassFlow + 2 * segment.Push.HalfMassFlowSlope * (t - segment.Start));
            }
        }

        for (int i = 1; i < log.Segments.Count && log.Segments[i].Start < end; i++)
        {
            double t = log.Segments[i].Start;
            log.Track.At(t, y);
            left += 0.5 * y[1] * y[1] * (log.Segments[i - 1].Push.Mass(t) - log.Segments[i].Push.Mass0);
        }

        double gain = At(Duration.FromSeconds(Math.Min(end, log.EndTime))).KineticEnergy.Joules - At(Start).KineticEnergy.Joules;
        return new EnergyLedger(thrust, drag, friction, gravity, left, gain);
    }
}
