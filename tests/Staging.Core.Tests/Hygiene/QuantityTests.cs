using System.Text.RegularExpressions;

namespace Staging.Core.Tests.Hygiene;

/// <summary>
/// Quantities live at the public boundary. A file may name UnitsNet when it declares a public type, when it carries numbers
/// across the boundary (<c>*Lowering.cs</c>, <c>*Lifting.cs</c>, <c>Guard.Quantities.cs</c>), or when it reads and writes plans, which is
/// boundary throughout. Every other file works in SI doubles.
/// </summary>
public partial class QuantityTests
{
    [Fact]
    public void Internal_files_do_not_name_the_units_library() => Violations.None(Repository.Library.SelectMany(Leaks));

    [Theory]
    [InlineData("src/Staging.Core/Gaps/Kernel.cs", "using UnitsNet;\nnamespace Staging.Core.Gaps;\ninternal struct Kernel;")]
    [InlineData("src/Staging.Core/Gaps/Kernel.cs", "namespace Staging.Core.Gaps;\ninternal class Kernel { public UnitsNet.Length L; }")]
    [InlineData("src/Staging.Core/Gaps/Kernel.cs", "using UnitsNet;\ninternal class Kernel\n{\n    public class Inner;\n}")]
    public void A_quantity_in_a_kernel_is_caught(string path, string text) => Assert.Single(Leaks(new SourceFile(path, text)));

    [Theory]
    [InlineData("src/Staging.Core/Gaps/GapLowering.cs", "using UnitsNet;\ninternal static class GapLowering;")]
    [InlineData("src/Staging.Core/Gaps/GapGeometry.cs", "using UnitsNet;\npublic sealed record GapGeometry;")]
    [InlineData("src/Staging.Core/Gaps/Kernel.cs", "// not UnitsNet.Length\ninternal struct Kernel;")]
    public void The_boundary_may_name_it(string path, string text) => Assert.Empty(Leaks(new SourceFile(path, text)));

    private static IEnumerable<string> Leaks(SourceFile file)
    {
        bool boundary = file.DeclaresPublicType || BoundaryName().IsMatch(file.Path);
        if (!boundary && UnitsLibrary().IsMatch(file.Code))
            yield return $"{file.Path}: names UnitsNet, but declares no public type and is no Lowering or Lifting file";
    }

    [GeneratedRegex(@"\bUnitsNet\b")]
    private static partial Regex UnitsLibrary();

    [GeneratedRegex(@"(Lowering|Lifting|/Guard\.Quantities)\.cs$|^src/Staging\.Core/Plans/")]
    private static partial Regex BoundaryName();
}
