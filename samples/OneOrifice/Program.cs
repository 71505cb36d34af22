// One hole of 6 mm in a wall of 0.5 mm: what flows out of a gap at 1 bar gauge, by four laws and two gases.
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

var holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 1 };
var air = new GasState
{
    Gas = PerfectGas.DryAir,
    Pressure = Pressure.FromAtmospheres(1),
    Temperature = Temperature.FromDegreesCelsius(15)
};
GasState pressed = air with { Pressure = Pressure.FromAtmospheres(2) };
GasState products = pressed with { Gas = BlackPowderProducts.Nominal.Equivalent(), Temperature = BlackPowderProducts.NominalTemperature };
(string Name, IDischargeLaw Law)[] laws =
[
    ("isentropic, no loss", ConstantCoefficientLaw.Ideal),
    ("sharp edge, Perry", SharpEdgedLaw.Perry),
    ("sharp edge, Jobson", new JobsonLaw { IncompressibleContraction = 0.6 }),
    ("short tube", ShortTubeLaw.SquareInlet),
];

Console.WriteLine("law                    gas         coefficient   flow [g/s]  volume [cm3/ms]  regime");
foreach ((string name, IDischargeLaw law) in laws)
{
    foreach (GasState inside in new[] { pressed, products })
    {
        OrificeFlow flow = Orifice.Flow(inside, air, holes, law);
        double volume = flow.MassFlow.KilogramsPerSecond / inside.Density.KilogramsPerCubicMeter * 1e3;
        Console.WriteLine(
            $"{name,-22} {(inside == pressed ? "cold air" : "products"),-11} {flow.DischargeCoefficient,11:F3} {flow.MassFlow.GramsPerSecond,12:F2} {volume,16:F1}  {(flow.IsChoked ? "choked" : "subsonic")}");
    }
}

OrificeFlow cold = Orifice.Flow(pressed, air, holes, SharpEdgedLaw.Perry), hot = Orifice.Flow(products, air, holes, SharpEdgedLaw.Perry);
double mass = hot.MassFlow / cold.MassFlow;
Console.WriteLine($"Of the hot products the same sharp hole passes {mass:F2} times the mass and "
    + $"{mass * (pressed.Density / products.Density):F2} times the volume.");
