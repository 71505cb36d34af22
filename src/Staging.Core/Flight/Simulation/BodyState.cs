using System.Runtime.InteropServices;

namespace Staging.Core.Flight;

/// <summary>
/// A body in flight: its stages, its state, and its planned actions. Changes as it flies; copied for
/// failure cases.
/// </summary>
internal sealed class BodyState
{
    private readonly int[] segment;

    public BodyState(int stages)
    {
        Highest = stages - 1;
        IgnitedAt = new double[stages];
        IgnitedAt.AsSpan().Fill(double.NaN);
        segment = new int[stages];
        segment.AsSpan().Fill(-1);
        DeviceOut = new bool[stages];
    }

    /// <summary>A copy, planned actions included.</summary>
    public BodyState(BodyState other)
    {
        (Lowest, Highest, Time, Height, Velocity) = (other.Lowest, other.Highest, other.Time, other.Height, other.Velocity);
        (Motion, Device, LiftOff, Dropped) = (other.Motion, other.Device, other.LiftOff, other.Dropped);
        (TiltIntegral, TracksTilt) = (other.TiltIntegral, other.TracksTilt);
        IgnitedAt = (double[])other.IgnitedAt.Clone();
        segment = (int[])other.segment.Clone();
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
    /// Integral of g/v over time from the end of the guide [-]: the progress of a gravity turn; kept only where
    /// a guard limits the tilt.
    /// </summary>
    public double TiltIntegral { get; set; }

    public bool TracksTilt { get; set; }

    /// <summary>Time of lift-off [s].</summary>
    public double LiftOff { get; set; } = double.NaN;

    /// <summary>Whether this body was left behind by the stage above it.</summary>
    public bool Dropped { get; set; }

    /// <summary>Time of ignition of each stage [s]; not-a-number where it is cold.</summary>
    public double[] IgnitedAt { get; }

    /// <summary>Whether the device of each stage has been deployed, acting or not.</summary>
    public bool[] DeviceOut { get; }

    public List<ScheduledAction> Planned { get; } = new(8);

    /// <summary>Index in <see cref="Planned"/> of the earliest action; -1 where nothing is planned.</summary>
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

    /// <summary>Whether a motor of this body thrusts or is about to.</summary>
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

    /// <summary>Whether the motors of one stage thrust or are about to.</summary>
    public bool IsBurning(int stage, PlanParameters plan) =>
        !double.IsNaN(IgnitedAt[stage]) && segment[stage] < plan.Stages[stage].Burn.Segments;

    /// <summary>
    /// Steps each thrust history on to the segment that holds the present time; returns the next corner [s].
    /// </summary>
    public double NextCorner(PlanParameters plan)
    {
        double next = double.PositiveInfinity;
        for (int k = Lowest; k <= Highest; k++)
        {
            if (double.IsNaN(IgnitedAt[k]))
                continue;
            MotorBurn burn = plan.Stages[k].Burn;
            while (IgnitedAt[k] + burn.EndOf(segment[k]) <= Time)
                segment[k]++;
            next = Math.Min(next, IgnitedAt[k] + burn.EndOf(segment[k]));
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

            ThrustSegment line = burn.Line(segment[k]);
            double into = segment[k] < burn.Segments ? Math.Max(0, Time - (IgnitedAt[k] + burn.StartOf(segment[k]))) : 0;
            thrust += line.Thrust0 + line.ThrustSlope * into;
            slope += line.ThrustSlope;
            mass += burn.LeftAt(segment[k]) - into * (line.Flow0 + 0.5 * line.FlowSlope * into);
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

/// <summary>The phase of motion of a body.</summary>
internal enum BodyMotion
{
    Held,
    Guided,
    Rising,
    Falling,
    Ended,
}
