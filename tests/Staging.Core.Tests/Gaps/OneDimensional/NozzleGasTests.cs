using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>What the resolved tube tells of the gas behind the nozzle plane.</summary>
public class NozzleGasTests
{
    /// <summary>Temperature and pressure of a gas do not hang on how fast it goes by.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.3)]
    [InlineData(1)]
    public void Gas_in_motion_is_as_warm_as_gas_at_rest(double fraction)
    {
        var gap = new OneDimensionalGap(GapToSi.ToSi(Bench.Gap), new GapModel.OneDimensional { Cells = 40 }, 0.25, 0.027);
        double Warm(double speed)
        {
            for (int i = 0; i < 40; i++)
                gap.Tube.Fill(i, 0.5, speed, 2e5, fraction);
            gap.Tube.Look();
            return gap.Nozzle.Temperature.Value;
        }

        double atRest = Warm(0);
        Assert.InRange(Warm(300) / atRest, 1 - 1e-12, 1 + 1e-12);
        Assert.InRange(Warm(-300) / atRest, 1 - 1e-12, 1 + 1e-12);
    }
}
