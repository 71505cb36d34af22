using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Turns a tape into the numbers of its film.</summary>
internal static class FilmToSi
{
    public static FilmParameters ToSi(JointTape tape, Temperature start)
    {
        double layer = tape.Thickness.Meters / FilmParameters.Layers;
        double k = tape.Conductivity.WattsPerMeterKelvin, h = tape.GasContact.WattsPerSquareMeterKelvin;
        double capacity = tape.Density.KilogramsPerCubicMeter * tape.HeatCapacity.JoulesPerKilogramKelvin * layer;

        // From the gas to the middle of the first layer: both resistances in series.
        double first = h > 0 ? 1 / (1 / h + layer / (2 * k)) : 0;
        return new FilmParameters(
            tape.Strength.Newtons, start.Kelvins, tape.SofteningTemperature.Kelvins, first / capacity, k / (layer * capacity));
    }
}
