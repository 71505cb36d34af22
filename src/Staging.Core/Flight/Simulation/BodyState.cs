using System.Runtime.InteropServices;

namespace Staging.Core.Flight;

/// <summary>
/// A body in flight: which stages it holds, its state, and what is planned for it. Changes as it flies; copied for
/// failure cases.
/// </summary>
internal sealed class BodyState
{
    private readonly int[] piece;

    public BodyState(int stages)
    {
        Highest = stages - 1;
        IgnitedAt = new double[stages];
        IgnitedAt.AsSpan().Fill(double.NaN);
        piece = new int[stages];
        piece.AsSpan().Fill(-1);
        DeviceOut = new bool[stages];
    }

    /// <summary>A copy with all that is planned, as it stands.</summary>
    public BodyState(BodyState other)
    {
        (Lowest, Highest, Time, Height, Velocity) = (other.Lowest, other.Highest, other.Time, other.Height, other.Velocity);
        (Motion, Device, LiftOff, Dropped) = (other.Motion, other.Device, other.LiftOff, other.Dropped);
        (Bend, FollowBend) = (other.Bend, other.FollowBend);
        IgnitedAt = (double[])other.IgnitedAt.Clone();
        piece = (int[])other.piece.Clone();
        DeviceOut = (bool[])other.DeviceOut.Clone();
        Planned.AddRange(other.Planned);
    }

    public int Lowest { get; set; }

    public int Highest { get; set; }

    public double Time { get; set; }

    public double Height { get; set; }

    public double Velocity { get; set; }

    public BodyMotion Motion { get; set; }

    /// <summary>Stage whose recovery device acts; -1 where none does.</summary>
    public int Device { get; set; } = -1;

    /// <summary>
    /// Integral of g/v over time from the end of the guide [-]: how far a gravity turn has bent; kept only where a
    /// guard asks for tilt.
    /// </summary>
    public double Bend { get; set; }

    public bool FollowBend { get; set; }

    /// <summary>Time of lift-off [s].</summary>
    public double LiftOff { get; set; } = double.NaN;

    /// <summary>Whether this body was left behind by the stage above it.</summary>
    public bool Dropped { get; set; }

    /// <summary>Time of ignition of each stage [s]; not-a-number where it is cold.</summary>
    public double[] IgnitedAt { get; }

    /// <summary>Whether the device of each stage has come out, acting or not.</summary>
    public bool[] DeviceOut { get; }

    public List<ScheduledAction> Planned { get; } = new(8);

    /// <summary>Place in <see cref="Planned"/> of what comes first; -1 where nothing is planned.</summary>
    public int FirstPlanned()
    {
        ReadOnlySpan<ScheduledAction> all = CollectionsMarshal.AsSpan(Planned);
        int first = all.Length - 1;
        for (int i = first - 1; i >= 0; i--)
        {
            if (all[i].IsBefore(all[first]))
                first = i;
        }

        return first;
    }

    /// <summary>Whether a motor of this body pushes, or waits to.</summary>
    public bool Burning(PlanParameters plan)
    {
        for (int k = Lowest; k <= Highest; k++)
        {
            if (IsBurning(k, plan))
                return true;
        }

        return false;
    }

    /// <summary>Whether a motor of this body is still to be lit, as far as is known.</summary>
    public bool MayLight()
    {
        foreach (ScheduledAction action in CollectionsMarshal.AsSpan(Planned))
        {
            if (action.Kind is ActionKind.Ignition or ActionKind.TimerEnd or ActionKind.BurnThrough)
                return true;
        }

        return false;
    }

    /// <summary>Whether the motors of one stage push, or wait to.</summary>
    public bool IsBurning(int stage, PlanParameters plan) =>
        !double.IsNaN(IgnitedAt[stage]) && piece[stage] < plan.Stages[stage].Burn.Pieces;

    /// <summary>
    /// Steps each thrust history on to the piece that holds the present time; returns the next corner [s].
    /// </summary>
    public double NextCorner(PlanParameters plan)
    {
        double next = double.PositiveInfinity;
        for (int k = Lowest; k <= Highest; k++)
        {
            if (double.IsNaN(IgnitedAt[k]))
                continue;
            MotorBurn burn = plan.Stages[k].Burn;
            while (IgnitedAt[k] + burn.EndOf(piece[k]) <= Time)
                piece[k]++;
            next = Math.Min(next, IgnitedAt[k] + burn.EndOf(piece[k]));
        }

        return next;
    }

    /// <summary>
    /// Thrust and mass from the present time to the next corner; <see cref="NextCorner"/> comes first.
    /// </summary>
    public Propulsion Push(PlanParameters plan)
    {
        double thrust = 0, slope = 0, mass = 0, flow = 0, halfFlowSlope = 0;
        for (int k = Lowest; k <= Highest; k++)
        {
            MotorBurn burn = plan.Stages[k].Burn;
            mass += plan.Stages[k].BurntMass;
            if (double.IsNaN(IgnitedAt[k]))
            {
                mass += burn.Propellant;
                continue;
            }

            ThrustSegment line = burn.Line(piece[k]);
            double into = piece[k] < burn.Pieces ? Math.Max(0, Time - (IgnitedAt[k] + burn.StartOf(piece[k]))) : 0;
            thrust += line.Thrust0 + line.ThrustSlope * into;
            slope += line.ThrustSlope;
            mass += burn.LeftAt(piece[k]) - into * (line.Flow0 + 0.5 * line.FlowSlope * into);
            flow += line.Flow0 + line.FlowSlope * into;
            halfFlowSlope += 0.5 * line.FlowSlope;
        }

        return new Propulsion
        {
            Start = Time,
            Thrust0 = thrust,
            ThrustSlope = slope,
            Mass0 = mass,
            MassFlow = flow,
            HalfMassFlowSlope = halfFlowSlope
        };
    }
}

/// <summary>How a body moves.</summary>
internal enum BodyMotion
{
    Held,
    Guided,
    Rising,
    Falling,
    Ended,
}
