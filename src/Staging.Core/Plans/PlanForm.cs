namespace Staging.Core.Plans;

/// <summary>How a plan is written. Both forms read to the same plan.</summary>
public enum PlanForm
{
    /// <summary>Every key with its value, each quantity as an object of number and unit, no starting sets.</summary>
    Full,

    /// <summary>
    /// Quantities and sources as texts; what equals its default is left out, and so is what equals the starting set
    /// that an object names; gaps that are equal stand once.
    /// </summary>
    Brief,
}
