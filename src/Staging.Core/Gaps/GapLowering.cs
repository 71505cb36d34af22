using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>Turns a gap problem into plain SI numbers, and makes its first state.</summary>
internal static class GapLowering
{
    /// <summary>
    /// Length of the slab of air, as a share of the bore, that the first products mix into [-]. A zone needs some gas to have a
    /// temperature; this much is thinner than the wall of any tube.
    /// </summary>
    private const double FirstSlab = 1e-3;

    public static GapParameters Lower(GapProblem problem)
    {
        GapDesign design = problem.Design;
        BurnThroughSource source = design.Source;
        UpperGrain grain = design.Grain;
        GapClosures closures = design.Closures;
        double bore = design.Tube.Bore.Meters, area = design.Tube.CrossSection.SquareMeters, length = design.Tube.Length.Meters;
        double last = design.Vents.IsEmpty ? length : design.Vents.Max(v => v.Station.Meters);
        double opening = source.OpeningDiameter.Meters, throat = source.NozzleThroatDiameter.Meters;
        return new GapParameters
        {
            Products = source.Products.Equivalent().Constants,
            ParticleFraction = 1 - source.Products.GasMassFraction,
            ParticleHeatCapacity = source.Products.ParticleHeatCapacity.JoulesPerKilogramKelvin,
            FlameTemperature = source.FlameTemperature.Kelvins,
            ChamberVolume = source.ChamberVolume.CubicMeters,
            ChamberPressure = source.ChamberPressure.Pascals,
            Opening = new OrificeSize(Math.PI / 4 * opening * opening, opening, 0),
            OpeningLaw = ConstantCoefficientLaw.Ideal with { Coefficient = source.OpeningCoefficient, Source = source.Source },
            OpeningTime = source.OpeningTime.Seconds,
            Nozzle = new OrificeSize(Math.PI / 4 * throat * throat, throat, 0),
            FragmentMass = source.FragmentMass.Kilograms,
            FragmentBurnTime = source.FragmentBurnTime.Seconds,
            Bore = bore,
            BoreArea = area,
            LastVent = last,
            DeadEndVolume = area * (length - last) + grain.RecessVolume.CubicMeters,
            StirringAtNozzle = design.Vents.IsEmpty ? 0 : Math.Exp(-(length - last) / (closures.StirringReachInBores * bore)),
            DeadEndExchange = closures.DeadEndExchange,
            FrontThickness = closures.FrontThicknessInBores * bore,
            WallHeatTransfer = closures.WallHeatTransfer.WattsPerSquareMeterKelvin,
            Vents = [.. design.Vents.Select(v => new VentParameters(v.Station.Meters, new OrificeSize(v.Holes), v.Station.Meters == last)), .. JointLowering.RearPassages(design.Joint)],
            Law = design.DischargeLaw,
            JointArea = design.Joint.Coupler.PressureArea.SquareMeters,
            Breakaway = design.Joint.Coupler.BreakawayForce.Newtons,
            Sliding = design.Joint.Coupler.SlidingForce.Newtons,
            Engagement = design.Joint.Coupler.Engagement.Meters,
            ReducedMass = JointLowering.ReducedMass(design.Joint, problem.Bodies),
            ClosingAcceleration = problem.Bodies.ClosingAcceleration.MetersPerSecondSquared,
            Film = JointLowering.Film(design.Joint, problem.Surroundings.Temperature),
            AfterOpening = problem.AfterOpening.Seconds,
            OutsidePressure = problem.Surroundings.Pressure.Pascals,
            OutsideTemperature = problem.Surroundings.Temperature.Kelvins,
            Air = problem.Surroundings.Gas.Constants,
            Horizon = problem.Horizon.Seconds,
            Grain = new GrainParameters(
                Math.Sqrt(grain.Conductivity.WattsPerMeterKelvin * grain.Density.KilogramsPerCubicMeter * grain.HeatCapacity.JoulesPerKilogramKelvin),
                grain.InitialTemperature.Kelvins,
                grain.IgnitionTemperature.Kelvins,
                grain.NozzleThroatDiameter.Meters,
                closures.Emissivity,
                closures.ParticleEfficiency),
        };
    }

    /// <summary>Writes the state at burn-through: products in the chamber, still air everywhere else.</summary>
    public static void FirstState(GapParameters p, Span<double> y)
    {
        y.Clear();
        Fill(y[GapState.Chamber..], p.Products, p.ChamberPressure, p.FlameTemperature, p.ChamberVolume, isAir: false);
        double slab = FirstSlab * p.Bore * p.BoreArea;
        Fill(y[GapState.Hot..], p.Air, p.OutsidePressure, p.OutsideTemperature, slab, isAir: true);
        Fill(y[GapState.Cold..], p.Air, p.OutsidePressure, p.OutsideTemperature, p.BoreArea * p.LastVent - slab, isAir: true);
        Fill(y[GapState.DeadEnd..], p.Air, p.OutsidePressure, p.OutsideTemperature, p.DeadEndVolume, isAir: true);
        y[GapParameters.FirstLayer..].Fill(p.OutsideTemperature);
    }

    /// <summary>Natural size of each state: the air and the energy that the gap holds at rest, the engaged length, a few metres per second.</summary>
    public static double[] Scales(GapParameters p)
    {
        double volume = p.BoreArea * p.LastVent + p.DeadEndVolume;
        double mass = p.OutsidePressure * volume / (p.Air.R * p.OutsideTemperature);
        double energy = p.OutsidePressure * volume / (p.Air.Gamma - 1);
        var scales = new double[p.StateCount];
        for (int zone = 0; zone < GapState.Slide; zone += 3)
        {
            scales[zone] = mass;
            scales[zone + 1] = mass;
            scales[zone + 2] = energy;
        }

        scales[GapState.Slide] = p.Engagement;
        scales[GapState.SlideSpeed] = 1;
        scales[GapState.Burnt] = Math.Max(p.FragmentMass, mass);
        scales[GapState.MassOut] = Math.Max(p.FragmentMass, mass);
        scales[GapState.EnergyOut] = energy + p.FragmentMass * p.Products.Cp * p.FlameTemperature;
        scales.AsSpan(GapParameters.FirstLayer).Fill(p.OutsideTemperature);
        return scales;
    }

    private static void Fill(Span<double> zone, in GasConstants gas, double pressure, double temperature, double volume, bool isAir)
    {
        zone[isAir ? 1 : 0] = pressure * volume / (gas.R * temperature);
        zone[2] = pressure * volume / (gas.Gamma - 1);
    }
}
