using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Primitive polynomials over two elements and initial direction numbers, dimensions 2 to 40.</summary>
/// <remarks>
/// S. Joe and F. Y. Kuo, "Constructing Sobol sequences with better two-dimensional projections", SIAM J. Sci. Comput.
/// 30 (2008) 2635-2654, the table they published as new-joe-kuo-6: degree s, inner coefficients a, numbers m. Copied
/// from two independent public listings that agree. Tests show that every polynomial is primitive, every m odd and
/// below 2^k, and that the points have the net properties.
/// </remarks>
internal static class SobolTable
{
    public static ImmutableArray<Row> Rows { get; } =
    [
        new(1, 0, [1]),
        new(2, 1, [1, 3]),
        new(3, 1, [1, 3, 1]),
        new(3, 2, [1, 1, 1]),
        new(4, 1, [1, 1, 3, 3]),
        new(4, 4, [1, 3, 5, 13]),
        new(5, 2, [1, 1, 5, 5, 17]),
        new(5, 4, [1, 1, 5, 5, 5]),
        new(5, 7, [1, 1, 7, 11, 19]),
        new(5, 11, [1, 1, 5, 1, 1]),
        new(5, 13, [1, 1, 1, 3, 11]),
        new(5, 14, [1, 3, 5, 5, 31]),
        new(6, 1, [1, 3, 3, 9, 7, 49]),
        new(6, 13, [1, 1, 1, 15, 21, 21]),
        new(6, 16, [1, 3, 1, 13, 27, 49]),
        new(6, 19, [1, 1, 1, 15, 7, 5]),
        new(6, 22, [1, 3, 1, 15, 13, 25]),
        new(6, 25, [1, 1, 5, 5, 19, 61]),
        new(7, 1, [1, 3, 7, 11, 23, 15, 103]),
        new(7, 4, [1, 3, 7, 13, 13, 15, 69]),
        new(7, 7, [1, 1, 3, 13, 7, 35, 63]),
        new(7, 8, [1, 3, 5, 9, 1, 25, 53]),
        new(7, 14, [1, 3, 1, 13, 9, 35, 107]),
        new(7, 19, [1, 3, 1, 5, 27, 61, 31]),
        new(7, 21, [1, 1, 5, 11, 19, 41, 61]),
        new(7, 28, [1, 3, 5, 3, 3, 13, 69]),
        new(7, 31, [1, 1, 7, 13, 1, 19, 1]),
        new(7, 32, [1, 3, 7, 5, 13, 19, 59]),
        new(7, 37, [1, 1, 3, 9, 25, 29, 41]),
        new(7, 41, [1, 3, 5, 13, 23, 1, 55]),
        new(7, 42, [1, 3, 7, 3, 13, 59, 17]),
        new(7, 50, [1, 3, 1, 3, 5, 53, 69]),
        new(7, 55, [1, 1, 5, 5, 23, 33, 13]),
        new(7, 56, [1, 1, 7, 7, 1, 61, 123]),
        new(7, 59, [1, 1, 7, 9, 13, 61, 49]),
        new(7, 62, [1, 3, 3, 5, 3, 55, 33]),
        new(8, 14, [1, 3, 1, 15, 31, 13, 49, 245]),
        new(8, 21, [1, 3, 5, 15, 31, 59, 63, 97]),
        new(8, 22, [1, 3, 1, 11, 11, 11, 77, 249]),
    ];

    /// <summary>One dimension: degree s, coefficients a without the first and last, initial numbers m.</summary>
    internal sealed record Row(int S, uint A, ImmutableArray<uint> M);
}
