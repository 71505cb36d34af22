namespace Staging.Core.Plans.Reading;

/// <summary>Stops a reading whose text holds more than it may.</summary>
/// <param name="message">What is too much, and how much may be.</param>
internal sealed class TooLargeException(string message) : Exception(message);
