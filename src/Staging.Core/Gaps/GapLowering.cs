using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>Turns a gap problem into plain SI numbers, and makes its first state.</summary>
internal static class GapLowering
{
    /// <summary>Free length, over the core, below which no jet in a gap is so light as to lose anything [-]: density ratio 0.09, air of some 3200 K.</summary>
    private const double ShortestFreeLength = 0.3;

    /// <summary>Share of the area of all vents below which those above a place do not end the stream [-]: a judgement.</summary>
    private const double PinholeShare = 0.05;

    public static GapParameters Lower(GapProblem problem, bool stirred = false)
    {
        GapDesign design = problem.Design;
        UpperGrain grain = design.Grain;
        GapClosures closures = design.Closures;
        BoreProfile profile = design.Tube.Profile;
        double length = design.Tube.Length.Meters;
        Vent? lastVent = Last(design.Vents);
        double last = lastVent is null ? length : Passed(lastVent, profile);
        double deadEnd = lastVent is null ? length : Ends(lastVent);
        double free = FreeJet.FreeBores(design);
        double FrontOver(Vent vent) => closures.FrontThicknessInBores * profile.BoreBelow(Draws(vent)) + Passed(vent, profile) - Draws(vent);
        double bore = profile.BoreBelow(last), area = profile.AreaBelow(last), recess = grain.RecessVolume.CubicMeters;
        double endBore = profile.BoreBelow(length), reach = closures.StirringReachInBores * endBore;
        double Stirring(Vent vent) => Math.Exp((Ends(vent) - length) / reach) * MeanDecay(vent.Spread / reach);
        ImmutableArray<Jacket> jackets = design.Jackets;
        (ChamberParameters[] chambers, FeedParameters? feed) = SourceLowering.Lower(design.Source, jackets.Length);
        int firstJacket = GapState.Fixed + GapState.Parcel * chambers.Length;
        int fragments = chambers.Count(c => c.Fragments >= 0);
        OutletParameters Outlet(VentHoles holes, VentTarget target) => new(
            new OrificeSize(holes),
            target.Match(_ => -1, into => jackets.IndexOf(jackets.First(j => j.Name == into.Name))),
            problem.Behind(target.Match(o => o.PressureCoefficient, _ => 0)));
        GasConstants air = problem.Surroundings.Gas.Constants;
        double outsideTemperature = problem.Surroundings.Temperature.Kelvins;
        return new GapParameters
        {
            Stirred = stirred,
            Products = design.Source.Products.Equivalent().Constants,
            ParticleFraction = 1 - design.Source.Products.GasMassFraction,
            ParticleHeatCapacity = design.Source.Products.ParticleHeatCapacity.JoulesPerKilogramKelvin,
            Chambers = chambers,
            Feed = feed,
            Profile = profile,
            TubeLength = length,
            Bore = bore,
            BoreArea = area,
            LastVent = last,
            LastStirring = lastVent is null ? 0 : Stirring(lastVent),
            TubeVolume = profile.VolumeTo(last),
            DeadEndDepth = length - deadEnd,
            DeadEndVolume = profile.VolumeTo(length) - profile.VolumeTo(deadEnd) + recess,
            DeadEndWall = profile.WallTo(length) - profile.WallTo(deadEnd) + 4 * recess / endBore + Math.PI / 4 * endBore * endBore,
            DeadEndExchange = closures.DeadEndExchange,
            FreeLength = free > ShortestFreeLength * closures.FreeJetCoreInBores ? free : 0,
            JetCore = closures.FreeJetCoreInBores,
            FrontThickness = lastVent is null ? closures.FrontThicknessInBores * bore : FrontOver(lastVent),
            WallHeatTransfer = closures.WallHeatTransfer.WattsPerSquareMeterKelvin,
            Vents = [.. design.Vents.Select(v => new VentParameters(
                Math.Min(Passed(v, profile), last), FrontOver(v), v.Station.Meters, v.Spread, Outlet(v.Holes, v.To), Stirring(v))),
                .. JointLowering.RearPassages(design.Joint, closures.FrontThicknessInBores * profile.FirstBore, problem)],
            Jackets = [.. jackets.Select((j, i) => new JacketParameters(
                j.Volume.CubicMeters, j.WallArea.SquareMeters, firstJacket + GapState.Parcel * i, [.. j.Openings.Select(o => Outlet(o.Holes, o.To))]))],
            Law = design.DischargeLaw,
            JointArea = design.Joint.Coupler.PressureArea.SquareMeters,
            Breakaway = design.Joint.Coupler.BreakawayForce.Newtons,
            Sliding = design.Joint.Coupler.SlidingForce.Newtons,
            Engagement = design.Joint.Coupler.Engagement.Meters,
            ReducedMass = JointLowering.ReducedMass(design.Joint, problem.Bodies),
            Film = JointLowering.Film(design.Joint, problem.Surroundings.Temperature),
            AfterOpening = problem.AfterOpening.Seconds,
            ClosingAcceleration = problem.Bodies.ClosingAcceleration.MetersPerSecondSquared,
            OutsidePressure = problem.Surroundings.Pressure.Pascals,
            OutsideTemperature = outsideTemperature,
            Air = air,
            Outside = new Zone(air, outsideTemperature),
            Horizon = problem.Horizon.Seconds,
            Grain = new GrainParameters(
                grain.Effusivity,
                grain.InitialTemperature.Kelvins,
                grain.IgnitionTemperature.Kelvins,
                grain.NozzleThroatDiameter.Meters,
                closures.Emissivity,
                closures.ParticleEfficiency),
            KnownSourceEnd = Math.Max(
                chambers.Select(c => c.Start + (c.Fragments < 0 ? c.FragmentBurnTime : 0)).DefaultIfEmpty(0).Max(), feed is null ? 0 : feed.Times[^1]),
            FirstLayer = firstJacket + GapState.Parcel * jackets.Length + fragments,
        };
    }

    /// <summary>Station at which a vent begins to draw [m]: its lowest ring of holes.</summary>
    private static double Draws(Vent vent) => vent.Station.Meters - 0.5 * vent.Spread;

    /// <summary>Station of its uppermost ring [m].</summary>
    private static double Ends(Vent vent) => vent.Station.Meters + 0.5 * vent.Spread;

    /// <summary>Where the stream ends and the dead end begins: the highest vent that has, with those above it, more than a pinhole's share of the area.</summary>
    private static Vent? Last(ImmutableArray<Vent> vents)
    {
        double asked = PinholeShare * vents.Sum(v => v.Holes.TotalArea.SquareMeters), above = 0;
        foreach (Vent vent in vents.OrderByDescending(Ends))
        {
            above += vent.Holes.TotalArea.SquareMeters;
            if (above >= asked)
                return vent;
        }

        return null;
    }

    /// <summary>Mean of exp(-z) from 0 to a depth [-]: holes spread over a length stir from their own depths.</summary>
    private static double MeanDecay(double depth) => depth > 1e-6 ? (1 - Math.Exp(-depth)) / depth : 1;

    /// <summary>
    /// Station at which the front has passed all its holes [m]. Over a stretch whose wall is partly cut away to the outside, the open share of the tube is outside and the
    /// rest of it holds gas: the stretch is taken that much shorter. Where holes lead into a jacket, all of it holds gas.
    /// </summary>
    private static double Passed(Vent vent, BoreProfile profile)
    {
        double wall = Math.PI * profile.BoreBelow(vent.Station.Meters) * vent.Spread;
        double open = wall > 0 && vent.To is VentTarget.Outside ? Math.Min(1, vent.Holes.TotalArea.SquareMeters / wall) : 0;
        return Draws(vent) + (1 - open) * vent.Spread;
    }

    /// <summary>Writes the state at burn-through: products in the chamber, still air everywhere else.</summary>
    public static void FirstState(GapParameters p, Span<double> y)
    {
        y.Clear();
        double slab = p.Stirred ? p.TubeVolume : p.FirstReach * p.Profile.FirstArea;
        Fill(y[GapState.Hot..], p.Air, p.OutsidePressure, p.OutsideTemperature, slab, isAir: true);
        Fill(y[GapState.Cold..], p.Air, p.OutsidePressure, p.OutsideTemperature, p.TubeVolume - slab, isAir: true);
        Fill(y[GapState.DeadEnd..], p.Air, p.OutsidePressure, p.OutsideTemperature, p.DeadEndVolume, isAir: true);
        foreach (ChamberParameters c in p.Chambers)
        {
            Fill(y[c.At..], p.Products, c.Pressure, c.FlameTemperature, c.Volume, isAir: false);
            if (c.Fragments >= 0)
                y[c.Fragments] = c.FragmentMass > 0 ? 1 : 0;
        }

        foreach (JacketParameters jacket in p.Jackets)
            Fill(y[jacket.At..], p.Air, p.OutsidePressure, p.OutsideTemperature, jacket.Volume, isAir: true);
        y[p.FirstLayer..].Fill(p.OutsideTemperature);
    }

    /// <summary>Natural size of each state: the air and the energy that the gap holds at rest, the engaged length, a few metres per second.</summary>
    public static double[] Scales(GapParameters p)
    {
        double volume = p.TubeVolume + p.DeadEndVolume;
        double mass = p.OutsidePressure * volume / (p.Air.R * p.OutsideTemperature);
        double energy = p.OutsidePressure * volume / (p.Air.Gamma - 1);
        double burnt = p.Chambers.Sum(c => c.FragmentMass), heat = p.Chambers.Sum(c => c.FragmentMass * p.Products.Cp * c.FlameTemperature);
        var scales = new double[p.StateCount];
        Array.Fill(scales, 1);
        for (int at = 0; at < GapState.Slide; at += GapState.Parcel)
            ((ReadOnlySpan<double>)[mass, mass, energy]).CopyTo(scales.AsSpan(at));
        for (int at = GapState.Fixed; at < p.FirstFragments; at += GapState.Parcel)
            ((ReadOnlySpan<double>)[mass, mass, energy]).CopyTo(scales.AsSpan(at));
        scales[GapState.Slide] = p.Engagement;
        scales[GapState.SlideSpeed] = 1;
        scales[GapState.Burnt] = Math.Max(burnt, mass);
        scales[GapState.MassOut] = Math.Max(burnt, mass);
        scales[GapState.BurntEnergy] = energy + heat;
        scales[GapState.EnergyOut] = energy + heat;
        scales.AsSpan(p.FirstLayer).Fill(p.OutsideTemperature);
        return scales;
    }

    private static void Fill(Span<double> zone, in GasConstants gas, double pressure, double temperature, double volume, bool isAir)
    {
        zone[isAir ? 1 : 0] = pressure * volume / (gas.R * temperature);
        zone[2] = pressure * volume / (gas.Gamma - 1);
    }
}
