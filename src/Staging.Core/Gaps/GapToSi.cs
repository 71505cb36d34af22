using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Turns a gap problem into plain SI numbers, and makes its first state.</summary>
internal static class GapToSi
{
    /// <summary>
    /// Free length, over the core, below which no jet in a gap is so light as to lose anything [-]: density ratio 0.09,
    /// air of some 3200 K.
    /// </summary>
    private const double ShortestFreeLength = 0.3;

    /// <summary>Times its content at rest by which errors of a parcel are measured at most [-]; a judgement.</summary>
    private const double Hundredfold = 100;

    public static GapParameters ToSi(GapProblem problem, bool stirred = false)
    {
        GapDesign design = problem.Design;
        UpperGrain grain = design.Grain;
        MixingAndHeat closures = design.MixingAndHeat;
        BoreProfile profile = design.Tube.Profile;
        double length = design.Tube.Length.Meters;
        Vent? lastVent = VentReach.Last(design.Vents.Items);
        double last = lastVent?.Passed(profile) ?? length;
        double deadEnd = lastVent?.Ends() ?? length;
        double free = FreeJet.FreeBores(design);
        double FrontOver(Vent vent) =>
            closures.FrontThicknessInBores * profile.BoreBelow(vent.Draws()) + vent.Passed(profile) - vent.Draws();
        double bore = profile.BoreBelow(last), area = profile.AreaBelow(last), recess = grain.RecessVolume.CubicMeters;
        double endBore = profile.BoreBelow(length), reach = closures.StirringReachInBores * endBore;
        ImmutableArray<Jacket> jackets = design.Jackets.Items;
        var source = new SourceToSi(problem, jackets.Length);
        (ChamberParameters[] chambers, FeedParameters? feed) = (source.Chambers, source.Feed);
        int firstJacket = StateLayout.FirstChamber + StateLayout.Parcel * chambers.Length;
        OutletParameters Outlet(VentHoles holes, VentTarget target) => new(
            new OrificeSize(holes),
            target.Jacket is { } name ? jackets.IndexOf(jackets.First(j => j.Name == name)) : -1,
            problem.Behind(target.PressureCoefficient));
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
            LastStirring = lastVent?.Stirring(length, reach) ?? 0,
            TubeVolume = profile.VolumeTo(last),
            DeadEndDepth = length - deadEnd,
            DeadEndVolume = profile.VolumeTo(length) - profile.VolumeTo(deadEnd) + recess,
            DeadEndWall = profile.WallTo<Real>(length) - profile.WallTo<Real>(deadEnd) + 4 * recess / endBore
                + Math.PI / 4 * endBore * endBore,
            DeadEndExchange = closures.DeadEndExchange,
            FreeLength = free > ShortestFreeLength * closures.FreeJetCoreInBores ? free : 0,
            JetCore = closures.FreeJetCoreInBores,
            FrontThickness = lastVent is null ? closures.FrontThicknessInBores * bore : FrontOver(lastVent),
            Walls = new WallExchange(closures.WallHeatTransfer.WattsPerSquareMeterKelvin, closures.Emissivity, outsideTemperature),
            Vents = [.. design.Vents.Select(v => new VentParameters(
                Math.Min(v.Passed(profile), last), FrontOver(v), v.Station.Meters, v.Spread, Outlet(v.Holes, v.To),
                v.Stirring(length, reach))),
                .. JointToSi.RearPassages(design.Joint, closures.FrontThicknessInBores * profile.FirstBore, problem),
                .. JointToSi.Leak(design.Joint, closures.FrontThicknessInBores * profile.FirstBore, problem)],
            Jackets = [.. jackets.Select((j, i) => new JacketParameters(
                j.Volume.CubicMeters, j.WallArea.SquareMeters, firstJacket + StateLayout.Parcel * i,
                [.. j.Openings.Select(o => Outlet(o.Holes, o.To))]))],
            Law = design.DischargeLaw,
            JointArea = design.Joint.Coupler.PressureArea.SquareMeters,
            Breakaway = design.Joint.Coupler.BreakawayForce.Newtons,
            Sliding = design.Joint.Coupler.SlidingForce.Newtons,
            Engagement = design.Joint.Coupler.Engagement.Meters,
            ReducedMass = JointToSi.ReducedMass(design.Joint, problem.Bodies),
            Film = JointToSi.Film(design.Joint, problem.Surroundings.Temperature),
            AfterOpening = problem.AfterOpening.Seconds,
            ClosingAcceleration = problem.Bodies.ClosingAcceleration.MetersPerSecondSquared,
            OutsidePressure = problem.Surroundings.Pressure.Pascals,
            OutsideTemperature = outsideTemperature,
            Air = air,
            Outside = new Zone<Real>(air, outsideTemperature),
            Horizon = problem.Horizon.Seconds,
            Grain = new GrainParameters(
                grain.Effusivity,
                grain.InitialTemperature.Kelvins,
                grain.IgnitionTemperature.Kelvins,
                grain.NozzleThroatDiameter.Meters,
                closures.Emissivity,
                closures.ParticleEfficiency),
            KnownSourceEnd = Math.Max(
                chambers.Select(c => c.KnownEnd).DefaultIfEmpty(0).Max(),
                feed is null ? 0 : feed.Times[^1]),
            FirstWay = source.FirstWay,
            FirstLayer = source.End,
        };
    }

    /// <summary>Writes the state at burn-through: products in the chamber, still air everywhere else.</summary>
    public static void FirstState(GapParameters p, Span<double> y)
    {
        y.Clear();
        double slab = p.Stirred ? p.TubeVolume : p.Profile.VolumeTo(p.FirstReach);
        Fill(y[StateLayout.Hot..], p.Air, p.OutsidePressure, p.OutsideTemperature, slab, isAir: true);
        Fill(y[StateLayout.Cold..], p.Air, p.OutsidePressure, p.OutsideTemperature, p.TubeVolume - slab, isAir: true);
        Fill(y[StateLayout.DeadEnd..], p.Air, p.OutsidePressure, p.OutsideTemperature, p.DeadEndVolume, isAir: true);
        foreach (ChamberParameters c in p.Chambers)
        {
            Fill(y[c.At..], p.Products, c.Pressure, c.FlameTemperature, c.Volume, isAir: false);
            if (c.Plates is { } plates)
                y[plates.Unburnt] = plates.Mass > 0 ? 1 : 0;
            if (c.Ring is { } ring)
                y[ring.Left] = 1;
            if (c.Pieces is { } pieces)
                y[pieces.Unburnt] = y[pieces.Way] = 1;
        }

        foreach (JacketParameters jacket in p.Jackets)
            Fill(y[jacket.At..], p.Air, p.OutsidePressure, p.OutsideTemperature, jacket.Volume, isAir: true);
        y[p.FirstLayer..].Fill(p.OutsideTemperature);
    }

    /// <summary>
    /// Natural size of each state: the air and the energy that the gap holds at rest, the engaged length, a few metres
    /// per second.
    /// </summary>
    /// <remarks>
    /// A parcel smaller than a hundredth of the gap is measured by a hundred times its own volume: by that of the gap a
    /// small jacket might err by as much as it holds.
    /// </remarks>
    public static double[] Scales(GapParameters p)
    {
        double mass = p.OutsidePressure / (p.Air.R * p.OutsideTemperature), energy = p.OutsidePressure / (p.Air.Gamma - 1);
        double volume = p.TubeVolume + p.DeadEndVolume;
        double burnt = p.Chambers.Sum(c => c.Unburnt), heat = p.Chambers.Sum(c => c.Unburnt * p.Products.Cp * c.FlameTemperature);
        var scales = new double[p.StateCount];
        Array.Fill(scales, 1);
        Parcel(StateLayout.Hot, p.TubeVolume);
        Parcel(StateLayout.Cold, p.TubeVolume);
        Parcel(StateLayout.DeadEnd, p.DeadEndVolume);
        foreach (ChamberParameters chamber in p.Chambers)
            Parcel(chamber.At, chamber.Volume);
        foreach (JacketParameters jacket in p.Jackets)
            Parcel(jacket.At, jacket.Volume);
        scales[StateLayout.Slide] = p.Engagement;
        scales[StateLayout.Burnt] = Math.Max(burnt, mass * volume);
        scales[StateLayout.MassOut] = Math.Max(burnt, mass * volume);
        scales[StateLayout.BurntEnergy] = energy * volume + heat;
        scales[StateLayout.EnergyOut] = energy * volume + heat;
        scales.AsSpan(p.FirstLayer).Fill(p.OutsideTemperature);
        return scales;

        void Parcel(int at, double held)
        {
            double size = Math.Min(volume, Hundredfold * held);
            ((ReadOnlySpan<double>)[mass * size, mass * size, energy * size]).CopyTo(scales.AsSpan(at));
        }
    }

    private static void Fill(Span<double> zone, in GasConstants gas, double pressure, double temperature, double volume, bool isAir)
    {
        zone[isAir ? 1 : 0] = pressure * volume / (gas.R * temperature);
        zone[2] = pressure * volume / (gas.Gamma - 1);
    }
}
