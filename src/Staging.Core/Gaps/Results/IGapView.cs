using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>What every model gives of a gap at one moment, in SI units.</summary>
internal interface IGapView
{
    /// <summary>Absolute pressure in the gap [Pa].</summary>
    double Pressure { get; }

    /// <summary>Highest chamber pressure; that of the gap where there is no chamber [Pa].</summary>
    double ChamberPressure { get; }

    /// <summary>Absolute pressures in the jackets [Pa].</summary>
    double[] JacketPressures { get; }

    /// <summary>Distance of the front from the booster motor's forward end [m].</summary>
    double Front { get; }

    /// <summary>Temperature of the products in the tube [K].</summary>
    double HotTemperature { get; }

    /// <summary>Mass fraction of products in the gas of that temperature [-].</summary>
    double HotProducts { get; }

    /// <summary>The gas at the nozzle plane.</summary>
    Zone<Real> Nozzle { get; }

    /// <summary>Travel of the joint [m].</summary>
    double JointTravel { get; }

    /// <summary>Heat transfer to the grain at the time of the view [s].</summary>
    GrainHeating HeatingAt(double time);

    /// <summary>Whether the core of a chamber's jet reaches the throat at the time of the view [s].</summary>
    bool CoreReachesAt(double time);
}
