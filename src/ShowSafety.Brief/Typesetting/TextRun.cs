using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Typesetting;

/// <summary>A stretch of text in one face; null takes the face of the style round about it.</summary>
internal sealed record TextRun(string Text, Face? Face = null);

/// <summary>Text in one or several faces.</summary>
internal sealed record RichText(ValueList<TextRun> Runs)
{
    public static readonly RichText Empty = new([]);

    public bool IsEmpty => Runs.All(run => string.IsNullOrWhiteSpace(run.Text));

    public string Plain => string.Concat(Runs.Select(run => run.Text));

    public static implicit operator RichText(string text) => new([new TextRun(text)]);

    public static RichText Strong(string text) => new([new TextRun(text, Face.Semibold)]);

    /// <summary>A strong beginning and the rest in the face of the style.</summary>
    public static RichText Led(string lead, string rest) =>
        new([new TextRun(lead, Face.Semibold), new TextRun(" " + rest)]);
}
