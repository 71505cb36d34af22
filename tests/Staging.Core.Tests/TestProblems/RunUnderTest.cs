using Staging.Core.Solving;

namespace Staging.Core.Tests.TestProblems;

/// <summary>Runs a phase under the cancellation token of the test.</summary>
internal static class RunUnderTest
{
    public static PhaseEnd Go<TMethod, TSystem>(this Integrator<TMethod> integrator, ref TSystem system, double stop, IStepObserver? sink = null)
        where TMethod : struct, IOneStepMethod
        where TSystem : IOdeSystem =>
        integrator.Run(ref system, stop, sink, TestContext.Current.CancellationToken);
}
