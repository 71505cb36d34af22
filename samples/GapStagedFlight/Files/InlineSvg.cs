using System.Xml.Linq;
using GapStagedFlight.Figures;
using Samples;

namespace GapStagedFlight.Files;

/// <summary>A figure as part of a page: as wide as there is room, its ids its own, and named for those who hear the page.</summary>
internal static class InlineSvg
{
    public static string Of(DrawnFigure figure, string name)
    {
        XElement svg = XElement.Parse(figure.Svg());
        foreach (XAttribute a in svg.DescendantsAndSelf().Attributes().Where(a => !a.IsNamespaceDeclaration))
        {
            if (a.Name.LocalName == "id")
                a.Value = $"{name}-{a.Value}";
            else if (a.Value.StartsWith("url(#", StringComparison.Ordinal))
                a.Value = $"url(#{name}-{a.Value["url(#".Length..]}";
            else if (a.Name.LocalName == "href" && a.Value.StartsWith('#'))
                a.Value = $"#{name}-{a.Value[1..]}";
        }

        svg.SetAttributeValue("width", null);
        svg.SetAttributeValue("height", null);
        svg.SetAttributeValue("viewBox", FormattableString.Invariant($"0 0 {Figure.Width} {Figure.Height}"));
        svg.SetAttributeValue("role", "img");
        svg.SetAttributeValue("aria-label", figure.Title);
        return svg.ToString(SaveOptions.DisableFormatting);
    }
}
