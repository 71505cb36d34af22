using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>
/// Quantities live at the public boundary. A file may name UnitsNet when it declares a public type, when all it declares are static classes
/// (they convert to and from SI and keep nothing), or when it reads and writes plans, which is boundary throughout. No internal type that has
/// instances holds or computes with a quantity: it works in SI doubles.
/// </summary>
public partial class QuantityTests
{
    /// <summary>Internal types with instances that may name it, each with its reason.</summary>
    private static readonly Dictionary<string, string> Allowed = new()
    {
        ["src/Staging.Core/Gaps/Results/OutcomeDiagnosis.cs"] = "puts the numbers that a cause quotes into the outcome",
    };

    [Fact]
    public void Internal_files_do_not_name_the_units_library() => Violations.None(Repository.Library.SelectMany(Leaks));

    [Theory]
    [InlineData("src/Staging.Core/Gaps/Kernel.cs", "using UnitsNet;\nnamespace Staging.Core.Gaps;\ninternal struct Kernel;")]
    [InlineData("src/Staging.Core/Gaps/Kernel.cs", "namespace Staging.Core.Gaps;\ninternal class Kernel { public UnitsNet.Length L; }")]
    [InlineData("src/Staging.Core/Gaps/Kernel.cs", "using UnitsNet;\ninternal class Kernel\n{\n    public class Inner;\n}")]
    [InlineData("src/Staging.Core/Gaps/KernelToSi.cs", "using UnitsNet;\ninternal class KernelToSi;")]
    [InlineData("src/Staging.Core/Gaps/Kernel.cs", "using UnitsNet;\ninternal static class Kernel\n{\n    private readonly struct Kept;\n}")]
    public void A_quantity_in_a_kernel_is_caught(string path, string text) => Assert.Single(Leaks(new SourceFile(path, text)));

    [Theory]
    [InlineData("src/Staging.Core/Gaps/GapToSi.cs", "using UnitsNet;\ninternal static class GapToSi\n{\n    public static double ToSi(Length l) => l.Meters;\n}")]
    [InlineData("src/Staging.Core/Gaps/GapGeometry.cs", "using UnitsNet;\npublic sealed record GapGeometry;")]
    [InlineData("src/Staging.Core/Gaps/Kernel.cs", "// not UnitsNet.Length\ninternal struct Kernel;")]
    public void The_boundary_may_name_it(string path, string text) => Assert.Empty(Leaks(new SourceFile(path, text)));

    private static IEnumerable<string> Leaks(SourceFile file)
    {
        bool boundary = file.DeclaresPublicType || file.IsStatic || Allowed.ContainsKey(file.Path)
            || file.Path.StartsWith("src/Staging.Core/Plans/", StringComparison.Ordinal);
        if (!boundary && UnitsLibrary().IsMatch(file.Code))
            yield return $"{file.Path}: names UnitsNet, but declares no public type and is not static throughout";
    }

    [GeneratedRegex(@"\bUnitsNet\b")]
    private static partial Regex UnitsLibrary();
}
