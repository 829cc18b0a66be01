using System.Globalization;
using System.Xml;

namespace ShowSafety.Brief.Drawing;

/// <summary>A hatch as SVG patterns: one for each family of lines, one for the dots.</summary>
internal static class SvgHatch
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    public static IEnumerable<string> Ids(Hatch hatch)
    {
        for (int i = 0; i < hatch.Lines.Count; i++)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"hatch-{hatch.Name}-{i + 1}");
        }

        if (hatch.Dots is not null)
        {
            yield return $"hatch-{hatch.Name}-dots";
        }
    }

    public static void Write(XmlWriter xml, Hatch hatch)
    {
        string[] ids = [.. Ids(hatch)];
        for (int i = 0; i < hatch.Lines.Count; i++)
        {
            WriteLines(xml, ids[i], hatch.Lines[i]);
        }

        if (hatch.Dots is { } dots)
        {
            WriteDots(xml, ids[^1], dots);
        }
    }

    private static void WriteLines(XmlWriter xml, string id, HatchLines lines)
    {
        StartPattern(xml, id, lines.SpacingMillimetres);
        // Angles count anticlockwise on paper, SVG turns clockwise.
        xml.WriteAttributeString("patternTransform", $"rotate({SvgValues.Number(-lines.AngleDegrees)})");
        xml.WriteStartElement("rect", Namespace);
        xml.WriteAttributeString("x", "0");
        xml.WriteAttributeString("y", SvgValues.Number((lines.SpacingMillimetres - lines.WidthMillimetres) / 2));
        xml.WriteAttributeString("width", SvgValues.Number(lines.SpacingMillimetres));
        xml.WriteAttributeString("height", SvgValues.Number(lines.WidthMillimetres));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void WriteDots(XmlWriter xml, string id, HatchDots dots)
    {
        StartPattern(xml, id, dots.SpacingMillimetres);
        xml.WriteStartElement("circle", Namespace);
        xml.WriteAttributeString("cx", SvgValues.Number(dots.SpacingMillimetres / 2));
        xml.WriteAttributeString("cy", SvgValues.Number(dots.SpacingMillimetres / 2));
        xml.WriteAttributeString("r", SvgValues.Number(dots.DiameterMillimetres / 2));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void StartPattern(XmlWriter xml, string id, double spacing)
    {
        xml.WriteStartElement("pattern", Namespace);
        xml.WriteAttributeString("id", id);
        xml.WriteAttributeString("patternUnits", "userSpaceOnUse");
        xml.WriteAttributeString("width", SvgValues.Number(spacing));
        xml.WriteAttributeString("height", SvgValues.Number(spacing));
    }
}
