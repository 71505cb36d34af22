// A small walk over the public surface. CI runs it twice: published as native code, and against the packed package in a project
// outside the repository. It ends with 0 when every figure is as expected.
using System.Globalization;
#region vent-flow
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;
#endregion

int wrong = 0;

// US Standard Atmosphere 1976, table 1: 22 632 Pa at 11 km geopotential, which is 11 019 m geometric.
AirSample aloft = StandardAtmosphere.Us1976.At(11_019.07);
Expect("pressure at the tropopause", aloft.Pressure_Pa, 22_632.06, 0.1, "Pa");

#region vent-flow
var inside = new GasState
{
    Gas = PerfectGas.DryAir,
    Pressure = Pressure.FromBars(2),
    Temperature = Temperature.FromDegreesCelsius(20),
};
GasState outside = inside with { Pressure = Pressure.FromBars(0.5) };
var holes = new VentHoles
{
    Diameter = Length.FromMillimeters(4),
    WallThickness = Length.FromMillimeters(0.5),
    Count = 2,
};
OrificeFlow flow = Orifice.Flow(inside, outside, holes, SharpEdgedLaw.Perry);
Console.WriteLine($"{flow.MassFlow.GramsPerSecond:F2} g/s, {(flow.IsChoked ? "choked" : "subsonic")}");
#endregion

// NACA Report 1135: choked ideal flow of air is 0.04042 p0 A / sqrt(T0) in SI units.
double ideal = 0.04042 * 2e5 * holes.TotalArea.SquareMeters / Math.Sqrt(293.15);
Expect("vent flow", flow.MassFlow.GramsPerSecond, 1000 * flow.DischargeCoefficient * ideal, 0.002, "g/s");

string refusal = "nothing";
#region refusal
try
{
    _ = holes with { Diameter = Length.FromMeters(1) };
}
catch (ArgumentOutOfRangeException e)
{
    refusal = e.Message;
}
#endregion

bool named = refusal.Contains("Diameter", StringComparison.Ordinal) && refusal.Contains("0.1 m", StringComparison.Ordinal);
wrong += named ? 0 : 1;
Console.WriteLine($"a hole of 1 m is refused: {(named ? "yes" : "no, " + refusal)}");
Console.WriteLine(wrong == 0 ? "smoke: all as expected" : $"smoke: {wrong} wrong");
return wrong == 0 ? 0 : 1;

void Expect(string what, double ours, double expected, double within, string unit)
{
    bool good = Math.Abs(ours - expected) <= within;
    wrong += good ? 0 : 1;
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {ours:G6} {unit}{(good ? "" : $", expected {expected:G6}")}"));
}
