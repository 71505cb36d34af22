using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Static margin of one body, in the flight as planned or in a failure case.</summary>
public sealed class StaticMargin
{
    internal StaticMargin(string body, bool burnt, Length centreOfGravity, NormalForce force, FailureKind? failure)
    {
        (Body, Burnt, CentreOfGravity, Failure) = (body, burnt, centreOfGravity, failure);
        (CentreOfPressure, Calibres) = (force.CentreOfPressure, force.Margin(centreOfGravity));
    }

    /// <summary>Its stages as one name.</summary>
    public string Body { get; }

    /// <summary>Whether the propellant of its lowest stage is gone.</summary>
    public bool Burnt { get; }

    /// <summary>The failure after which it flies; null in the flight as planned.</summary>
    public FailureKind? Failure { get; }

    /// <summary>Station from the nose tip [m].</summary>
    public Length CentreOfGravity { get; }

    /// <summary>Station from the nose tip [m].</summary>
    public Length CentreOfPressure { get; }

    /// <summary>Margin in largest diameters [-]; negative is unstable, 1 to 2 is usual practice.</summary>
    public double Calibres { get; }

    /// <summary>The margin on one line.</summary>
    /// <returns>The body, its state, the failure where there is one, and the margin in calibres.</returns>
    public override string ToString() => Invariant.Text($"{Body}, {(Burnt ? "burnt" : "full")}{After}: margin {Calibres:F2} calibres");

    /// <summary>The failure in words.</summary>
    private string After => Failure switch
    {
        null => "",
        FailureKind.UnlitAndJoined => ", unlit and joined",
        FailureKind.UnlitAndParted => ", unlit and parted",
        FailureKind.LitLate => ", lit late",
        _ => ", nothing ejected",
    };
}
