using System.Runtime.CompilerServices;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// The state of a gap at one moment: one SI number for each <see cref="GapChannel"/>, and the pressure in each jacket.
/// </summary>
internal struct GapReading
{
    /// <summary>
    /// Unit of each channel, in the order of the channels: the table that columns and snapshots follow.
    /// </summary>
    private static readonly string[] Units = ["Pa", "Pa", "m", "K", "K", "-", "K", "m", "W/m2", "W/m2", "W/m2"];

    private Numbers numbers;

    private GapReading(double[] jacketPressures, double hotProducts) =>
        (JacketPressures, HotProducts) = (jacketPressures, hotProducts);

    /// <summary>Number of channels.</summary>
    public static int Channels => Units.Length;

    /// <summary>Absolute pressures in the jackets [Pa].</summary>
    public double[] JacketPressures { get; }

    /// <summary>Mass fraction of products in the gas whose temperature is that of the hot zone [-].</summary>
    public double HotProducts { get; }

    /// <summary>The number of one channel, in its unit.</summary>
    public double this[GapChannel channel]
    {
        readonly get => numbers[(int)channel];
        private set => numbers[(int)channel] = value;
    }

    public static string UnitOf(GapChannel channel) => Units[(int)channel];

    /// <summary>
    /// A share of products [-] within 0 to 1. The masses of products and air are integrated side by side, each to the
    /// tolerance, so their ratio may come out a few times that beyond an end, along a resolved tube by round-off; what
    /// is read is the nearest that can be.
    /// </summary>
    public static double Share(double integrated) => Math.Clamp(integrated, 0, 1);

    /// <summary>
    /// Reads every channel off a gap whose grain has a surface temperature [K] under a heat transfer.
    /// </summary>
    public static GapReading Of<TView>(in TView gap, in GrainHeating heating, double surface)
        where TView : IGapView, allows ref struct
    {
        Zone<Real> nozzle = gap.Nozzle;
        return new GapReading(gap.JacketPressures, gap.HotProducts)
        {
            [GapChannel.GapPressure] = gap.Pressure,
            [GapChannel.ChamberPressure] = gap.ChamberPressure,
            [GapChannel.Front] = gap.Front,
            [GapChannel.HotTemperature] = gap.HotTemperature,
            [GapChannel.NozzleTemperature] = nozzle.Temperature,
            [GapChannel.ProductsAtNozzle] = Share(nozzle.ProductFraction),
            [GapChannel.GrainSurface] = surface,
            [GapChannel.JointTravel] = gap.JointTravel,
            [GapChannel.Convection] = heating.Convection(surface),
            [GapChannel.Radiation] = heating.Radiation(surface),
            [GapChannel.Particles] = heating.Particles(surface),
        };
    }

    /// <summary>The reading on a straight line between two, a share of the way from the first [-].</summary>
    public static GapReading Between(in GapReading from, in GapReading to, double share)
    {
        var between = new GapReading(
            from.JacketPressures.Length == 0 ? [] : new double[from.JacketPressures.Length],
            from.HotProducts + share * (to.HotProducts - from.HotProducts));
        for (int i = 0; i < Channels; i++)
            between.numbers[i] = from.numbers[i] + share * (to.numbers[i] - from.numbers[i]);
        for (int i = 0; i < between.JacketPressures.Length; i++)
            between.JacketPressures[i] = from.JacketPressures[i] + share * (to.JacketPressures[i] - from.JacketPressures[i]);
        return between;
    }

    /// <summary>One number for each channel.</summary>
    [InlineArray(11)]
    private struct Numbers
    {
        private double first;
    }
}
