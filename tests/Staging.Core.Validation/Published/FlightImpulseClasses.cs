using Staging.Core.Flight;

namespace Staging.Core.Validation.Published;

public class FlightImpulseClasses
{
    /// <summary>Each class reaches twice as far as the one before, so the first and the last of the table say them all.</summary>
    [Theory]
    [InlineData("1/2A", 1.25)]
    [InlineData("G", 160)]
    public void Upper_ends_of_classes(string name, double impulse) => new OutsideCheck
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
