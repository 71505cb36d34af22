namespace Staging.Core.Native;

/// <summary>How a call ended; the numbers are those of <c>staging_core.h</c> and never change their meaning.</summary>
internal enum Status
{
    /// <summary>As asked.</summary>
    Ok = 0,

    /// <summary>The text is not a plan, or the file cannot be read.</summary>
    BadPlan = 1,

    /// <summary>The values of the plan are each valid, but do not hang together.</summary>
    BadModel = 2,

    /// <summary>An argument is outside its range, or NULL where something is needed.</summary>
    BadArgument = 3,

    /// <summary>A handle was released, is of another kind, or never was one.</summary>
    BadHandle = 4,

    /// <summary>The caller asked to stop.</summary>
    Stopped = 5,

    /// <summary>There is not enough memory.</summary>
    NoMemory = 6,

    /// <summary>A fault of this library.</summary>
    Fault = 7,
}
