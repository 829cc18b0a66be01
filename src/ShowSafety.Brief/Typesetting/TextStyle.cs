namespace ShowSafety.Brief.Typesetting;

/// <summary>The faces carried along with the program.</summary>
internal enum Face
{
    Regular,
    Semibold,
    Bold,
    Italic,
}

/// <summary>Face, size and line spacing in points, and grey from 0 (black) to 1 (white).</summary>
internal sealed record TextStyle(Face Face, double SizePoints, double LeadingPoints, double Grey = 0)
{
    // Shares of the size: room for ascending and for descending letters, rounded up from the face's outlines, and the
    // height of its capitals (its OS/2 table).
    private const double AscenderShare = 0.75;
    private const double CapitalShare = 0.66;
    private const double DescenderShare = 0.25;

    public double LeadingMillimetres => Paper.ToMillimetres(LeadingPoints);

    public double AscenderMillimetres => Paper.ToMillimetres(SizePoints * AscenderShare);

    public double CapitalMillimetres => Paper.ToMillimetres(SizePoints * CapitalShare);

    public double DescenderMillimetres => Paper.ToMillimetres(SizePoints * DescenderShare);

    /// <summary>From the top of a line to its baseline, the type set in the middle of its leading.</summary>
    public double BaselineMillimetres =>
        ((LeadingMillimetres - AscenderMillimetres - DescenderMillimetres) / 2) + AscenderMillimetres;

    public TextStyle With(Face face) => this with { Face = face };
}

/// <summary>Every text style of the printed pages: large enough to be read outdoors, black before grey.</summary>
internal static class TextStyles
{
    public static readonly TextStyle Title = new(Face.Bold, 24, 28);
    public static readonly TextStyle Sentence = new(Face.Semibold, 15, 20);
    public static readonly TextStyle Heading1 = new(Face.Bold, 16, 20);
    public static readonly TextStyle Heading2 = new(Face.Semibold, 12.5, 16);
    public static readonly TextStyle Heading3 = new(Face.Semibold, 10.5, 14.5);
    public static readonly TextStyle Body = new(Face.Regular, 10.5, 14.5);
    public static readonly TextStyle Note = new(Face.Italic, 9.5, 13);
    public static readonly TextStyle Cell = new(Face.Regular, 9.5, 12.5);
    public static readonly TextStyle CellHead = new(Face.Semibold, 9, 12);
    public static readonly TextStyle Furniture = new(Face.Regular, 8.5, 11);
    public static readonly TextStyle FurnitureMark = new(Face.Bold, 10, 12);
    public static readonly TextStyle DrawingLabel = new(Face.Regular, 8, 9.6);
    public static readonly TextStyle DrawingStrong = new(Face.Bold, 8.5, 10.2);
    public static readonly TextStyle DrawingBanner = new(Face.Bold, 13, 16);
}
