using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Typesetting;

/// <summary>A component of a document: what it says, not where it stands.</summary>
internal abstract record Block;

/// <summary>A heading of level 1 to 3. It never stands last on a page, and has its place in the outline.</summary>
internal sealed record SectionHeading(int Level, string Text) : Block;

/// <summary>The document's own title, set larger; heading level 1 with an outline entry of its own.</summary>
internal sealed record DocumentTitle(string Text) : Block;

/// <summary>A paragraph; <see cref="KeepWithNext"/> holds it on the page of what follows.</summary>
internal sealed record Paragraph(RichText Text, TextStyle? Style = null, bool KeepWithNext = false) : Block;

/// <summary>A list with bullets or numbers, or with boxes to tick by hand.</summary>
internal sealed record ListBlock(ValueList<RichText> Items, ListMark Mark = ListMark.Bullet) : Block;

internal enum ListMark
{
    Bullet,
    Number,
    TickBox,
}

/// <summary>How a column sets its cells.</summary>
internal enum ColumnAlignment
{
    Left,
    Right,
}

/// <summary>A column: its head, its share of the table's width, and how its cells are set.</summary>
internal sealed record TableColumn(string Head, double Share, ColumnAlignment Alignment = ColumnAlignment.Left);

/// <summary>
/// A table with a head that is repeated on every page it runs over; rows are kept whole. A table without rows says
/// so in the words of <see cref="WhenEmpty"/>: an empty frame could be read as "nothing to worry about". A row of one
/// cell in a table of several columns heads the rows below it, and is repeated with the head of the table.
/// </summary>
internal sealed record Table(
    ValueList<TableColumn> Columns,
    ValueList<ValueList<RichText>> Rows,
    string WhenEmpty,
    bool FirstColumnIsHead = true
) : Block
{
    /// <summary>A table of names and values needs no head above it.</summary>
    public bool HasHead { get; init; } = true;
}

/// <summary>A picture in its own size, with the text that stands for it where it can't be seen, and a caption.</summary>
internal sealed record Illustration(PaperPicture Picture, string AltText, string? Caption = null) : Block;

/// <summary>Paragraphs set apart by a heavy bar, under a heading of their own: for what must not be missed.</summary>
internal sealed record Callout(string Title, ValueList<RichText> Paragraphs, bool Reversed = false) : Block;

/// <summary>Lines to sign on, left empty whatever the program may know.</summary>
internal sealed record SignatureLines(ValueList<string> Roles, ValueList<string> Fields) : Block;

/// <summary>Blocks held on one page as long as one page can hold them.</summary>
internal sealed record KeepTogether(ValueList<Block> Blocks) : Block;

/// <summary>What follows begins a new page.</summary>
internal sealed record PageBreak : Block;
