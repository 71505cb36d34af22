using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

public abstract partial record GapSource
{
    /// <summary>
    /// A known history of mass flow and temperature into the tube at station 0, whatever the pressure there: a
    /// measurement, or another model. Straight lines between points, nothing before the first and after the last.
    /// </summary>
    public sealed record Tabulated : GapSource
    {
        private readonly EquatableArray<double> time;
        private readonly EquatableArray<double> massFlow;
        private readonly EquatableArray<double> temperature;

        private Tabulated(DustyGas products, EquatableArray<double> time, EquatableArray<double> massFlow,
            EquatableArray<double> temperature, Provenance provenance)
        {
            (this.time, this.massFlow, this.temperature) = (time, massFlow, temperature);
            (Products, Provenance) = (products, provenance);
        }

        /// <inheritdoc/>
        public override DustyGas Products { get; init => field = Guard.NotNull(value); }

        /// <summary>Where the history comes from.</summary>
        public Provenance Provenance { get; init => field = Guard.NotNull(value); }

        /// <summary>Times of the points since burn-through [s], strictly rising, 0 to 10 s.</summary>
        public ReadOnlyMemory<double> Time_s => time.Items.AsMemory();

        /// <summary>Mass flow at the points [kg/s], 0 to 10.</summary>
        public ReadOnlyMemory<double> MassFlow_kg_per_s => massFlow.Items.AsMemory();

        /// <summary>Temperature at the points [K], 250 to 3500.</summary>
        public ReadOnlyMemory<double> Temperature_K => temperature.Items.AsMemory();

        /// <summary>Mass that comes in all: the sum of the trapezoids under the mass flow [kg].</summary>
        public Mass TotalMass
        {
            get
            {
                double sum = 0;
                for (int i = 1; i < time.Length; i++)
                    sum += 0.5 * (massFlow[i - 1] + massFlow[i]) * (time[i] - time[i - 1]);
                return Mass.FromKilograms(sum);
            }
        }

        /// <inheritdoc/>
        internal override double KnownDuration => time[^1];

        /// <summary>Makes a history from three columns.</summary>
        /// <param name="products">The gas: products and particles in equilibrium.</param>
        /// <param name="time_s">Times since burn-through [s], strictly rising, 0 to 10 s, 2 to 10000 points.</param>
        /// <param name="massFlow_kg_per_s">As many mass flows [kg/s], 0 to 10.</param>
        /// <param name="temperature_K">As many temperatures [K], 250 to 3500.</param>
        /// <param name="provenance">Where the history comes from.</param>
        /// <returns>The source.</returns>
        /// <exception cref="ArgumentException">A column breaks one of these rules; the message names the
        /// point.</exception>
        public static Tabulated FromColumns(DustyGas products, ReadOnlySpan<double> time_s, ReadOnlySpan<double> massFlow_kg_per_s,
            ReadOnlySpan<double> temperature_K, Provenance provenance)
        {
            int n = time_s.Length;
            if (n is < 2 or > 10_000)
                throw new ArgumentException($"There are {n} points; there must be between 2 and 10000.", nameof(time_s));
            Check(massFlow_kg_per_s, n, 0, 10, "kg/s", nameof(massFlow_kg_per_s));
            Check(temperature_K, n, 250, 3500, "K", nameof(temperature_K));
            Check(time_s, n, 0, 10, "s", nameof(time_s));
            for (int i = 1; i < n; i++)
            {
                if (!(time_s[i] > time_s[i - 1]))
                    throw new ArgumentException(
                        Invariant.Text($"Point {i + 1}: {time_s[i]:G6} s does not come after {time_s[i - 1]:G6} s."),
                        nameof(time_s));
            }

            return new Tabulated(products, [.. time_s], [.. massFlow_kg_per_s], [.. temperature_K], provenance);
        }

        internal FeedParameters ToSi() => new([.. time], [.. massFlow], [.. temperature]);

        private static void Check(ReadOnlySpan<double> column, int count, double low, double high, string unit, string name)
        {
            if (column.Length != count)
                throw new ArgumentException($"There are {count} times and {column.Length} values; the columns must be equally long.", name);
            var range = new AcceptedRange(low, true, high, unit);
            for (int i = 0; i < count; i++)
            {
                if (!range.Holds(column[i]))
                    throw new ArgumentException(
                        Invariant.Text($"Point {i + 1} is {range.Refused(column[i])} {unit}; it must be {range.InWords()} {unit}."), name);
            }
        }
    }
}
