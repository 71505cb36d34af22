using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>
/// The least vent area that lights, searched from a guess: for a bracket, where a whole scan costs too much.
/// </summary>
internal static class LowerEdge
{
    /// <summary>Factor between the areas by which the edge is bracketed [-].</summary>
    private const double Stride = 1.5;

    /// <summary>Strides away from the guess at most, each way.</summary>
    private const int Reach = 6;

    /// <summary>Halvings of the bracket, in the logarithm: to 5 % of the area.</summary>
    private const int Halvings = 3;

    /// <summary>
    /// The edge; null where no area within reach of the guess lights, or none can be drilled. Without a guess it
    /// begins at the largest.
    /// </summary>
    public static Area? Of(GapProblem problem, VentLayout layout, Area? guess, Func<GapProblem, GapRun> solve)
    {
        if (layout.Check(problem.Design).Length > 0)
            return null;
        VentRange range = VentRange.Of(layout, problem.Design);
        double lit = double.NaN, dark = double.NaN, largest = range.Largest.Area;
        double area = Math.Clamp(guess?.SquareMeters ?? largest, range.Smallest.Area, largest);
        bool down = Lights(area);
        for (int i = 0; i < Reach; i++)
        {
            (lit, dark) = down ? (area, dark) : (lit, area);
            area = down ? area / Stride : area * Stride;
            if (!range.Holds(area))
                return down ? Area.FromSquareMeters(lit) : null;
            if (Lights(area) != down)
            {
                (lit, dark) = down ? (lit, area) : (area, dark);
                return Area.FromSquareMeters(Halved(lit, dark));
            }
        }

        return down ? Area.FromSquareMeters(area) : null;

        bool Lights(double total) => solve(problem.WithVents(layout, Area.FromSquareMeters(total))).Outcome.IsLitBeforeParting;

        double Halved(double light, double night)
        {
            for (int i = 0; i < Halvings; i++)
            {
                double middle = Math.Sqrt(light * night);
                (light, night) = Lights(middle) ? (middle, night) : (light, middle);
            }

            return light;
        }
    }
}
