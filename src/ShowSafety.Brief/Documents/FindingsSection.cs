using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>Findings, gravest first, each with its remedy; what must be closed has room to write who closed it.</summary>
internal static class FindingsSection
{
    /// <summary>What stands against running and what must be closed by name: the part everybody must read.</summary>
    public static IEnumerable<Block> BeforeTheRun(BriefInput input) =>
        [
            Sections.Head(BriefLabels.FindingsSection),
            new SectionHeading(2, BriefLabels.Of(Severity.Stop)),
            Others(input, Severity.Stop),
            new SectionHeading(2, BriefLabels.Of(Severity.Act)),
            Acts(input),
            .. PlanNotes(input.Plan.Notes),
        ];

    /// <summary>What is worth knowing, for the annex.</summary>
    public static IEnumerable<Block> ForInformation(BriefInput input) =>
        [Sections.Head(BriefLabels.NotesAnnex), Others(input, Severity.Note)];

    private static IEnumerable<Block> PlanNotes(string? notes) =>
        string.IsNullOrWhiteSpace(notes) ? [] : [new SectionHeading(2, BriefLabels.PlanNotes), new Paragraph(notes)];

    private static Table Acts(BriefInput input) =>
        new(
            [new("What", 4), new("What to do", 4), new("Closed by, date and time", 2.4)],
            input
                .Of(Severity.Act)
                .Select(finding =>
                    (ValueList<RichText>)[What(input, finding), input.Words.Remedy(finding), Closed(input, finding)]
                )
                .ToValueList(),
            "Nothing to close.",
            false
        );

    private static Table Others(BriefInput input, Severity severity) =>
        new(
            [new("What", 5), new("What to do", 4)],
            input
                .Of(severity)
                .Select(finding => (ValueList<RichText>)[What(input, finding), input.Words.Remedy(finding)])
                .ToValueList(),
            severity == Severity.Stop
                ? "No stop was found with the data given. What could not be told would stand here."
                : "None.",
            false
        );

    private static RichText What(BriefInput input, Finding finding) =>
        Sections.WithSources(input.Words.Sentence(finding), input.Sources.Quoted(finding.Citations));

    /// <summary>What the plan records; else blank, to be filled in by hand.</summary>
    private static RichText Closed(BriefInput input, Finding finding)
    {
        Acceptance? acceptance = input.Plan.Decisions?.Acceptances.FirstOrDefault(a =>
            a.Finding == finding.Code && a.ElementId == finding.ElementId
        );
        return acceptance is null
            ? RichText.Empty
            : $"In the plan: {acceptance.By}{(acceptance.On is { } on ? ", " + BriefLabels.Day(on) : "")}. {acceptance.Note}";
    }
}
