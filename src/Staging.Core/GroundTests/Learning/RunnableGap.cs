namespace Staging.Core.GroundTests;

/// <summary>A gap that can be run with the values of any case.</summary>
/// <param name="At">What the model says of it.</param>
internal sealed record RunnableGap(Func<EquatableArray<double>, CancellationToken, GapAnswer> At)
{
    /// <summary>1 where the upper motor is lit before the joint opens, else 0.</summary>
    public double Lights(EquatableArray<double> values, CancellationToken cancel)
    {
        GapAnswer answer = At(values, cancel);
        return answer.Ending == Ending.Lit && !(answer.Parted < answer.Lit) ? 1 : 0;
    }
}
