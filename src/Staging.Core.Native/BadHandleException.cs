namespace Staging.Core.Native;

/// <summary>A handle that stands for nothing, or for something else.</summary>
internal sealed class BadHandleException(string message) : Exception(message);
