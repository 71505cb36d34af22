using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Tubes of unit length with a diaphragm in the middle, and what is measured in them.</summary>
internal static class Tubes
{
    public const double Air = 287.05287;

    /// <summary>Products that share the molar mass of the hot gas in the reference problems (34.75 g/mol).</summary>
    public const double HotGas = 8.314462618 / 0.03475;

    public static TubeFlow Shock(int cells, in FlowState left, in FlowState right, double leftR = Air, double rightR = Air, int lanes = 0)
    {
        var tube = new TubeFlow(cells, 1.0 / cells, new GasConstants(leftR, left.Gamma), new GasConstants(rightR, right.Gamma), lanes: lanes)
        {
            Left = new OpenEnd(),
            Right = new OpenEnd(),
        };
        Fill(tube, left, right);
        return tube;
    }

    public static void Fill(TubeFlow tube, in FlowState left, in FlowState right)
    {
        int cells = tube.Cells.Count;
        for (int i = 0; i < cells; i++)
        {
            bool isLeft = 2 * i + 1 < cells;
            FlowState s = isLeft ? left : right;
            tube.Fill(i, s.Density, s.Velocity, s.Pressure, isLeft ? 1 : 0);
        }

        tube.Look();
    }

    public static void RunTo(this TubeFlow tube, double time, double courant = 0.8)
    {
        double t = 0;
        while (t < time)
        {
            double dt = tube.LongestStep(courant);
            bool last = t + dt >= time;
            double taken = tube.Step(last ? time - t : dt);
            Assert.True(taken > 0, "a step could be taken");
            t = last && taken == time - t ? time : t + taken;
        }
    }

    /// <summary>L1 errors of density, velocity, pressure, momentum and energy, in this order, against the exact solution averaged over each cell by eight points.</summary>
    public static double[] Errors(TubeFlow tube, in RiemannSolution exact, double time)
    {
        TubeArrays a = tube.Cells;
        double[][] columns = [a.Density, a.Velocity, a.Pressure, a.Momentum, a.Energy];
        var errors = new double[columns.Length];
        int n = a.Count;
        for (int i = 0; i < n; i++)
        {
            double rho = 0, u = 0, p = 0, m = 0, E = 0;
            for (int k = 0; k < 8; k++)
            {
                FlowState s = exact.Sample(((i + (k + 0.5) / 8) / n - 0.5) / time);
                rho += s.Density / 8;
                u += s.Velocity / 8;
                p += s.Pressure / 8;
                m += s.Density * s.Velocity / 8;
                E += (s.Pressure / (s.Gamma - 1) + 0.5 * s.Density * s.Velocity * s.Velocity) / 8;
            }

            double[] mean = [rho, u, p, m, E];
            for (int c = 0; c < errors.Length; c++)
                errors[c] += Math.Abs(columns[c][a.First + i] - mean[c]) / n;
        }

        return errors;
    }

    /// <summary>Distance of the contact from the diaphragm: where the mass fraction passes one half.</summary>
    public static double Contact(TubeFlow tube)
    {
        TubeArrays a = tube.Cells;
        for (int i = a.First; i < a.End - 1; i++)
        {
            double here = a.Fraction[i], next = a.Fraction[i + 1];
            if (here >= 0.5 && next < 0.5)
                return (i - a.First + 0.5 + (here - 0.5) / (here - next)) * tube.CellLength - 0.5;
        }

        return double.NaN;
    }

    public static (double Mass, double Momentum, double Energy, double Products) Totals(TubeFlow tube)
    {
        TubeArrays a = tube.Cells;
        double mass = 0, momentum = 0, energy = 0, products = 0;
        for (int i = a.First; i < a.End; i++)
        {
            double length = tube.LengthOf(i);
            mass += length * a.Density[i];
            momentum += length * a.Momentum[i];
            energy += length * a.Energy[i];
            products += length * a.Products[i];
        }

        return (mass, momentum, energy, products);
    }
}
