using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Codecs;

/// <summary>What is told of the starting sets of one kind of object.</summary>
internal interface IStartingSets
{
    /// <summary>Kind of the objects, in words.</summary>
    string Of { get; }

    /// <summary>Name, meaning and values of each.</summary>
    ImmutableArray<(string Name, string Meaning, JsonObject Whole)> All { get; }
}
