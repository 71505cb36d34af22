using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>A closed tube of air in which pieces of an invented web fly and burn: no chamber, no vents, no wall. 18 mm bore, 0.2 m.</summary>
internal sealed class ThrownTube
{
    public const double Length = 0.2;
    public const double Mass = 0.2e-3;
    public const double Flame = 1600;

    private static readonly GapParameters Gap = GapToSi.ToSi(Bench.Adiabatic.With(d => d with { Tube = Bench.Tube(1000 * Length), Vents = [] }));
    private readonly ThrownPieces pieces;
    private double done;

    /// <param name="cells">Cells along the tube.</param>
    /// <param name="speed">Speed of the pieces [m/s].</param>
    /// <param name="exponent">Exponent of pressure in their burning rate.</param>
    /// <param name="freshAt">When their fresh faces burn as well [s].</param>
    /// <param name="lostAt">When openings have lost two thirds of them [s].</param>
    public ThrownTube(int cells, double speed, double exponent = 0.24, double freshAt = double.PositiveInfinity, double lostAt = double.PositiveInfinity)
    {
        Tube = new TubeFlow(cells, Length / cells, Gap.Products, Gap.Air) { FirstArea = Gap.Profile.FirstArea };
        double rho = Gap.OutsidePressure / (Gap.Air.R * Gap.OutsideTemperature);
        for (int i = 0; i < cells; i++)
            Tube.Fill(i, rho, 0, Gap.OutsidePressure, 0);
        Tube.Look();
        var chamber = new ChamberParameters
        {
            Start = 0,
            FlameTemperature = Flame,
            Volume = 1,
            Pressure = 1,
            Opening = new OrificeSize(0, 0, 0),
            OpeningLaw = ConstantCoefficientLaw.Ideal,
            OpeningTime = 1,
            Nozzle = new OrificeSize(0, 0, 0),
            At = 0,
            Pieces = new PieceParameters
            {
                Mass = Mass,
                Density = 1700,
                OldFaces = 113e-6,
                FreshFaces = 250e-6,
                FreshAt = freshAt,
                Rate = 0.0121,
                PressureExponent = exponent,
                Speed = speed,
                Size = 0.006,
                Kept = 1.0 / 3,
                LostAt = lostAt,
                Unburnt = 0,
                Way = 1,
            },
        };
        Parameters = chamber.Pieces;
        pieces = new ThrownPieces(chamber, Gap, Tube, Tube.Cells.First);
    }

    public TubeFlow Tube { get; }

    public PieceParameters Parameters { get; }

    /// <summary>Mass that they have given [kg].</summary>
    public double Given { get; private set; }

    public double BurntAt => pieces.BurntAt;

    public double AtNozzleAt => pieces.AtNozzleAt;

    /// <summary>What the tube holds: mass [kg] and energy [J].</summary>
    public GapTotals Totals
    {
        get
        {
            (double mass, _, double energy, _) = Tubes.Totals(Tube);
            return new GapTotals(Gap.Profile.FirstArea * mass, Gap.Profile.FirstArea * energy);
        }
    }

    /// <summary>Enthalpy of what they give [J/kg].</summary>
    public static double Enthalpy => Gap.Products.Cp * Flame;

    public static double Gamma => Gap.Air.Gamma;

    public static double Volume => Gap.Profile.FirstArea * Length;

    /// <summary>Half a step of burning, a step of the tube, and so on to a time [s]: half a step more at the end.</summary>
    public void RunTo(double end, double courant = 0.8)
    {
        for (double time = 0; time < end;)
        {
            double dt = Math.Min(Tube.LongestStep(courant), end - time);
            Burn(time + 0.5 * dt);
            Assert.Equal(dt, Tube.Step(dt));
            time = dt == end - time ? end : time + dt;
        }

        Burn(end);
    }

    private void Burn(double to)
    {
        Given += pieces.Burn(done, to).Mass;
        done = to;
        Tube.Look();
    }
}
