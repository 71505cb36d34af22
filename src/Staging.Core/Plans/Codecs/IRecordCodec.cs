using System.Collections.Immutable;

namespace Staging.Core.Plans.Codecs;

/// <summary>What the description of any record tells of itself, so that it can be checked against the record.</summary>
internal interface IRecordCodec
{
    /// <summary>The record.</summary>
    Type Record { get; }

    /// <summary>Its keys.</summary>
    ImmutableArray<KeyDescription> Facts { get; }
}
