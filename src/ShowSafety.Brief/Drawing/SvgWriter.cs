using System.Globalization;
using System.Text;
using System.Xml;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;
using static ShowSafety.Brief.Drawing.SvgValues;

namespace ShowSafety.Brief.Drawing;

/// <summary>
/// Writes a picture as SVG 1.1: the view box in millimetres, hatches as patterns, words as text. The same picture gives
/// the same characters, whatever the machine's language.
/// </summary>
internal sealed class SvgWriter
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    // Lines along the edge of the picture have half their width outside it.
    private const double Edge = 2;

    private const string FontFamily = "'Source Sans 3', 'Source Sans Pro', Arial, sans-serif";

    private readonly PaperPicture picture;
    private readonly XmlWriter xml;
    private readonly List<PaperBox> clips;

    private SvgWriter(PaperPicture picture, XmlWriter xml)
    {
        this.picture = picture;
        this.xml = xml;
        clips = [.. picture.Layers.Select(layer => layer.Clip).OfType<PaperBox>().Distinct()];
    }

    public static string Write(PaperPicture picture)
    {
        var text = new StringBuilder();
        var settings = new XmlWriterSettings
        {
            Indent = true,
            NewLineChars = "\n",
            OmitXmlDeclaration = true,
        };
        using (var xml = XmlWriter.Create(text, settings))
        {
            new SvgWriter(picture, xml).WriteAll();
        }

        return text.Append('\n').ToString();
    }

    private void WriteAll()
    {
        xml.WriteStartElement("svg", Namespace);
        string width = Number(picture.WidthMillimetres + (2 * Edge));
        string height = Number(picture.HeightMillimetres + (2 * Edge));
        Attribute("width", width + "mm");
        Attribute("height", height + "mm");
        Attribute("viewBox", $"{Number(-Edge)} {Number(-Edge)} {width} {height}");
        Attribute("role", "img");
        Attribute("aria-labelledby", "drawing-title drawing-desc");
        WriteText("title", "drawing-title", picture.Title);
        WriteText("desc", "drawing-desc", picture.Description);
        WriteDefinitions();
        foreach (PaperLayer layer in picture.Layers)
        {
            WriteLayer(layer);
        }

        xml.WriteEndElement();
    }

    private void WriteText(string element, string id, string text)
    {
        xml.WriteStartElement(element, Namespace);
        Attribute("id", id);
        xml.WriteString(XmlText.Clean(text));
        xml.WriteEndElement();
    }

    private void WriteDefinitions()
    {
        xml.WriteStartElement("defs", Namespace);
        foreach (
            Hatch hatch in Paths()
                .Select(path => path.Hatch)
                .OfType<Hatch>()
                .Distinct()
                .OrderBy(h => h.Name, StringComparer.Ordinal)
        )
        {
            SvgHatch.Write(xml, hatch);
        }

        for (int i = 0; i < clips.Count; i++)
        {
            WriteClip(WindowId(i), clips[i]);
        }

        xml.WriteEndElement();
    }

    private void WriteClip(string id, PaperBox window)
    {
        xml.WriteStartElement("clipPath", Namespace);
        Attribute("id", id);
        xml.WriteStartElement("rect", Namespace);
        Attribute("x", Number(window.Left));
        Attribute("y", Number(window.Top));
        Attribute("width", Number(window.Width));
        Attribute("height", Number(window.Height));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static string WindowId(int index) => string.Create(CultureInfo.InvariantCulture, $"window-{index + 1}");

    private IEnumerable<PaperPath> Paths() => picture.Layers.SelectMany(l => l.Items).OfType<PaperPath>();

    private void WriteLayer(PaperLayer layer)
    {
        xml.WriteStartElement("g", Namespace);
        Attribute("data-layer", XmlText.Clean(layer.Name));
        if (layer.Clip is { } clip)
        {
            Attribute("clip-path", $"url(#{WindowId(clips.IndexOf(clip))})");
        }

        foreach (PaperItem item in layer.Items)
        {
            WriteItem(item);
        }

        xml.WriteEndElement();
    }

    private void WriteItem(PaperItem item)
    {
        switch (item)
        {
            case PaperPath path:
                WritePath(path);
                break;
            case PaperDisc disc:
                WriteDisc(disc);
                break;
            case PaperText text:
                WriteText(text);
                break;
        }
    }

    private void WritePath(PaperPath path)
    {
        string data = Data(path);
        if (path.Closed && path.FillGrey is { } grey)
        {
            Fill(data, Grey(grey));
        }

        foreach (string id in path is { Closed: true, Hatch: { } hatch } ? SvgHatch.Ids(hatch) : [])
        {
            Fill(data, $"url(#{id})");
        }

        if (path.Outline is { } pen)
        {
            xml.WriteStartElement("path", Namespace);
            Attribute("d", data);
            Attribute("fill", "none");
            Pen(pen);
            xml.WriteEndElement();
        }
    }

    private void Fill(string data, string fill)
    {
        xml.WriteStartElement("path", Namespace);
        Attribute("d", data);
        Attribute("fill", fill);
        Attribute("fill-rule", "evenodd");
        xml.WriteEndElement();
    }

    private void WriteDisc(PaperDisc disc)
    {
        xml.WriteStartElement("circle", Namespace);
        Attribute("cx", Number(disc.Centre.X));
        Attribute("cy", Number(disc.Centre.Y));
        Attribute("r", Number(disc.Radius));
        Attribute("fill", disc.FillGrey is { } grey ? Grey(grey) : "none");
        if (disc.Outline is { } pen)
        {
            Pen(pen);
        }

        xml.WriteEndElement();
    }

    private void WriteText(PaperText text)
    {
        xml.WriteStartElement("text", Namespace);
        Attribute("x", Number(text.Start.X));
        Attribute("y", Number(text.Start.Y));
        Attribute("font-family", FontFamily);
        Attribute("font-size", Number(Paper.ToMillimetres(text.Style.SizePoints)));
        Attribute(
            "font-weight",
            text.Style.Face switch
            {
                Face.Bold => "700",
                Face.Semibold => "600",
                _ => "400",
            }
        );
        Attribute("fill", Grey(text.Style.Grey));
        // Where another typeface has to stand in, the words still keep to the room that was found for them.
        Attribute("textLength", Number(text.WidthMillimetres));
        Attribute("lengthAdjust", "spacingAndGlyphs");
        xml.WriteString(XmlText.Clean(text.Text));
        xml.WriteEndElement();
    }

    private void Pen(Stroke pen)
    {
        Attribute("stroke", Grey(pen.Grey));
        Attribute("stroke-width", Number(pen.WidthMillimetres));
        Attribute("stroke-linejoin", "round");
        if (pen.DashesMillimetres.Count > 0)
        {
            Attribute("stroke-dasharray", string.Join(' ', pen.DashesMillimetres.Select(Number)));
        }
    }

    private static string Data(PaperPath path)
    {
        var data = new StringBuilder();
        foreach (ValueList<PaperPoint> ring in path.Rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                data.Append(i == 0 ? 'M' : 'L').Append(Number(ring[i].X)).Append(' ').Append(Number(ring[i].Y));
            }

            data.Append(path.Closed && ring.Count > 0 ? "Z" : "");
        }

        return data.ToString();
    }

    private void Attribute(string name, string value) => xml.WriteAttributeString(name, value);
}
