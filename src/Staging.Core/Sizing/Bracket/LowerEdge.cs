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
    /// The edge; null where no area within reach of the guess was seen to light, or none can be drilled. Without a
    /// guess it begins at the largest. A run that was not solved is none that was seen to light, so that it may bound
    /// what does: nothing more is claimed of the areas below the edge.
    /// </summary>
    public static Area? Of(GapProblem problem, VentLayout layout, Area? guess, Func<GapProblem, GapRun> solve)
    {
        if (layout.Check(problem.Design).Length > 0)
            return null;
        VentRange range = VentRange.Of(layout, problem.Design);
        double smallest = range.Smallest.Area, largest = range.Largest.Area;
        double area = Math.Clamp(guess?.SquareMeters ?? largest, smallest, largest);
        bool down = Lights(area);
        for (int i = 0; i < Reach; i++)
        {
            double last = area;
            area = Math.Clamp(down ? area / Stride : area * Stride, smallest, largest);
            if (area == last)
                break;
            if (Lights(area) != down)
                return Area.FromSquareMeters(down ? Halved(last, area) : Halved(area, last));
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
