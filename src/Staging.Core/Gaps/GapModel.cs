namespace Staging.Core.Gaps;

/// <summary>How the gas in a gap is modelled: same inputs, same result. Closed: use <see cref="Match"/> to treat every case.</summary>
public abstract record GapModel
{
    private protected GapModel()
    {
    }

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="displacement">For the displacement model.</param>
    /// <param name="stirred">For the stirred model.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(Func<Displacement, T> displacement, Func<Stirred, T> stirred) => this switch
    {
        Displacement x => displacement(x),
        Stirred x => stirred(x),
        _ => throw new InvalidOperationException($"Unknown model {GetType().Name}."),
    };

    /// <summary>
    /// Two zones: hot products push the air ahead of a front without mixing. Optimistic for the temperature that arrives, pessimistic for the
    /// moment of arrival.
    /// </summary>
    public sealed record Displacement : GapModel;

    /// <summary>
    /// One zone: products and air up to the last vent mix at once. Pessimistic for the temperature that arrives, optimistic for the moment at which
    /// the first warm gas arrives.
    /// </summary>
    /// <remarks>
    /// There is no front. In its place stands the station up to which the products in the tube would reach if they were gathered at its beginning at the
    /// temperature of the mixture; and the front is said to be at the last vent when half of the mass that leaves there is products, as in the
    /// displacement model half of what leaves is. The dead end beyond the last vent is a stirred pocket of its own in both models.
    /// </remarks>
    public sealed record Stirred : GapModel;
}
