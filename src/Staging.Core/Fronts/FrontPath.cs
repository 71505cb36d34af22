using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// The duct along which hot gas pushes the air ahead of it: its bore, the air, and what the wall takes.
/// </summary>
/// <remarks>
/// The far end is open to the air, so the pressure stays that of the air. Immutable; may be read from any thread.
/// </remarks>
public sealed record FrontPath
{
    /// <summary>Inner diameter [m], 1 mm to 1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Bore { get; init => field = Guard.In(value, 1e-3, 1); }

    /// <summary>The air that is pushed away; its pressure is the pressure all along the duct.</summary>
    public required GasState Air { get; init => field = Guard.NotNull(value); }

    /// <summary>Temperature of the wall, which stays as it is while the gas passes [K], 200 to 2000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature WallTemperature { get; init => field = Guard.In(value, 200, 2000); }

    /// <summary>Heat transfer from gas to wall [W/(m2 K)], 0 (none) to 20000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required HeatTransferCoefficient WallHeatTransfer { get; init => field = Guard.In(value, 0, 20_000); }

    /// <summary>Cross-section of the bore.</summary>
    public Area CrossSection => Area.FromSquareMeters(Area_m2);

    /// <summary>Cross-section [m2].</summary>
    internal double Area_m2 => Math.PI / 4 * Bore.Meters * Bore.Meters;

    /// <summary>How a parcel of a gas cools on the way.</summary>
    internal Cooling CoolingOf(in GasConstants gas, double start) => new(
        4 * WallHeatTransfer.WattsPerSquareMeterKelvin * gas.R / (Bore.Meters * gas.Cp * Air.Pressure.Pascals), start,
        WallTemperature.Kelvins);
}
