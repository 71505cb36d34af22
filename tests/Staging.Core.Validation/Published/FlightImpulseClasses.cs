using Staging.Core.Flight;

namespace Staging.Core.Validation.Published;

public class FlightImpulseClasses
{
    [Theory]
    [InlineData("1/2A", 1.25)]
    [InlineData("A", 2.5)]
    [InlineData("B", 5)]
    [InlineData("C", 10)]
    [InlineData("D", 20)]
    [InlineData("E", 40)]
    [InlineData("F", 80)]
    [InlineData("G", 160)]
    public void Upper_end_of_each_class(string name, double impulse) => new OutsideCheck
    {
        Floor = "Flight",
        Quantity = $"greatest total impulse of class {name}",
        Unit = "N s",
        Expected = impulse,
        Ours = ImpulseClass.All.Single(c => c.Name == name).Max,
        Within = Tolerance.Printed(2),
        Provenance = new Provenance
        {
            Source = "NFPA 1122, Code for Model Rocketry, 2018 (archived excerpt), and the national model rocket safety code",
            Locator = "launch-site table, installed total impulse",
            How = Evidence.SeenInSource,
        },
    }.Verify();
}
