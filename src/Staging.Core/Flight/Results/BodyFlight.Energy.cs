using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The energy ledger.</summary>
public sealed partial class BodyFlight
{
    /// <summary>Four-point Gauss-Legendre rule on [0, 1] (Abramowitz and Stegun 1964, table 25.4).</summary>
    private static ReadOnlySpan<double> GaussNodes => [0.0694318442029737, 0.3300094782075719, 0.6699905217924281, 0.9305681557970263];

    private static ReadOnlySpan<double> GaussWeights => [0.1739274225687269, 0.3260725774312731, 0.3260725774312731, 0.1739274225687269];

    /// <summary>Adds up work and energy along the recorded course from its start to apogee (or its end).</summary>
    /// <returns>The ledger.</returns>
    /// <exception cref="InvalidOperationException">The course was not kept.</exception>
    public EnergyLedger EnergyLedger()
    {
        Within(Start);
        double end = double.IsNaN(log.Apogee.Time) ? log.EndTime : log.Apogee.Time;
        double thrust = 0, drag = 0, friction = 0, gravity = 0, left = 0;
        Span<double> y = stackalloc double[2];
        for (int i = 0; i < log.Track!.Count && log.Track.StartOf(i) < end; i++)
        {
            double start = log.Track.StartOf(i), length = log.Track.LengthOf(i);
            FlightSegment piece = log.Pieces[PieceAt(start, after: true)];
            if (piece.Held || length == 0)
                continue;
            for (int j = 0; j < GaussNodes.Length; j++)
            {
                double t = start + GaussNodes[j] * length, weight = GaussWeights[j] * length;
                log.Track.InStep(i, t, y);
                double v = y[1], weighted = weight * v;
                AirSample air = lowered.Site.At(y[0]);
                double halfArea = piece.Line.HalfArea(Math.Abs(v) / air.SoundSpeed_m_per_s);
                double g = lowered.Site.Gravity(y[0]);
                double m = piece.Push.Mass(t);
                thrust += weighted * piece.ThrustSign * piece.Push.Thrust(t);
                drag += weighted * air.Density_kg_per_m3 * v * Math.Abs(v) * halfArea;
                gravity += weighted * m * g * piece.Rise;
                friction += weighted * (piece.Friction + m * g * (piece.GravityShare - piece.Rise));
                left += weight * 0.5 * v * v * (piece.Push.MassFlow + 2 * piece.Push.HalfMassFlowSlope * (t - piece.Start));
            }
        }

        for (int i = 1; i < log.Pieces.Count && log.Pieces[i].Start < end; i++)
        {
            double t = log.Pieces[i].Start;
            log.Track.At(t, y);
            left += 0.5 * y[1] * y[1] * (log.Pieces[i - 1].Push.Mass(t) - log.Pieces[i].Push.Mass0);
        }

        double gain = At(Duration.FromSeconds(Math.Min(end, log.EndTime))).KineticEnergy.Joules - At(Start).KineticEnergy.Joules;
        return new EnergyLedger(thrust, drag, friction, gravity, left, gain);
    }
}
