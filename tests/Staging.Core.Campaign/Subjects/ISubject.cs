using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;

namespace Staging.Core.Campaign.Subjects;

/// <summary>A kind of case: how one is drawn, and what it has to keep.</summary>
internal interface ISubject
{
    /// <summary>Its name on the command line.</summary>
    string Name { get; }

    /// <summary>What its steps are, and how they are limited.</summary>
    string Steps { get; }

    /// <summary>The gas model of a case, where its kind has one.</summary>
    /// <param name="draws">Its values.</param>
    /// <returns>One of <see cref="GapSubject.Models"/>, or null.</returns>
    string? ModelOf(Draws draws) => null;

    /// <summary>Makes a case; what refuses a value throws.</summary>
    /// <param name="draws">Its values.</param>
    /// <returns>What is then run.</returns>
    Action<Facts> Make(Draws draws);
}
