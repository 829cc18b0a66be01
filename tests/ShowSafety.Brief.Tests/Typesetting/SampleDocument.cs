using ShowSafety.Brief.Drawing;
using ShowSafety.Brief.Tests.Drawing;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Tests.Typesetting;

/// <summary>Documents of invented words for the tests.</summary>
internal static class SampleDocument
{
    public static readonly DateTimeOffset PreparedOn = new(2026, 5, 3, 9, 30, 0, TimeSpan.Zero);

    public static readonly PaperPicture Picture = DrawingSheet.Compose(SampleDrawing.Hall(), 170, 190);

    public static PrintedDocument Of(params Block[] blocks) =>
        new(
            "Sample brief",
            "A sample for the tests",
            PreparedOn,
            new PageFurniture("Spring open day, Alderwick hall", "Saturday 9 May 2026", "Plan 4f2a91c07b", ["EXAMPLE"]),
            blocks
        );

    public static byte[] Pdf(params Block[] blocks) => Pdf(Of(blocks));

    public static byte[] Pdf(PrintedDocument document)
    {
        using var stream = new MemoryStream();
        PdfDocumentWriter.Write(document, stream);
        return stream.ToArray();
    }

    public static string Words(int count) =>
        string.Join(
            ' ',
            Enumerable
                .Range(0, count)
                .Select(i =>
                    i % 7 == 0 ? "measured"
                    : i % 3 == 0 ? "the"
                    : "level"
                )
        );

    public static Table Rows(int count) =>
        new(
            [new("Place", 1), new("What is there", 3), new("Level, dB(A)", 1, ColumnAlignment.Right)],
            Enumerable
                .Range(1, count)
                .Select(i => (ValueList<RichText>)[$"P{i}", $"Row number {i}, {Words(i % 23)}", $"{90 + (i % 10)}.5"])
                .ToValueList(),
            "Nothing listed."
        );

    public static Block[] Full(PaperPicture picture) =>
        [
            new DocumentTitle("Brief for a running demonstration"),
            new Paragraph("NOT TO RUN: two things are missing.", TextStyles.Sentence),
            new Callout(
                "NOT TO RUN",
                [
                    "The trip test of the shaft speed limiter has not been shown.",
                    RichText.Led(
                        "Remedy:",
                        "run the trip test, write down date, speed and who saw it, and add it to the plan. " + Words(40)
                    ),
                ],
                true
            ),
            new Callout(
                "What this brief is",
                ["It is a planning aid, valid for one date, weather band, engine and plan version. " + Words(30)]
            ),
            new SectionHeading(1, "Levels and exposures"),
            new Paragraph("é – ° ² ³ · × ≥ ≤ ± µ → L₀₁₂₃₉ " + Words(120)),
            new SectionHeading(2, "By person"),
            Rows(40),
            new SectionHeading(2, "To be found out"),
            new ListBlock(
                ["Weigh the bench: " + Words(40), "Measure the background level.", "Ask the venue about the floor."],
                ListMark.TickBox
            ),
            new ListBlock(["First " + Words(30), "Second"], ListMark.Number),
            new PageBreak(),
            new SectionHeading(1, "Site plan"),
            new Illustration(picture, picture.Description, "Figure 1. The site, zones by hatch and label."),
            new SectionHeading(1, "Signatures"),
            new KeepTogether([
                new Paragraph("Signed by hand on the printed brief, never filled in by the program."),
                new SignatureLines(
                    ["Engineer running the engine", "Organiser", "For the venue"],
                    ["Name", "Signature", "Date and time"]
                ),
            ]),
        ];
}
