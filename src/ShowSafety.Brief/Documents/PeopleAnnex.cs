using System.Globalization;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>Every level and exposure of each group of people, best estimate beside planning value.</summary>
internal static class PeopleAnnex
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return Sections.Head(BriefLabels.PeopleAnnex);
        if (input.Plan.People.Count == 0)
        {
            yield return new Paragraph("The plan names nobody, so nobody's exposure can be told.", TextStyles.Note);
        }

        foreach (PersonGroup group in input.Plan.People)
        {
            yield return new SectionHeading(2, input.Words.Name(group.Id)!);
            yield return new Paragraph(Who(group, input), KeepWithNext: true);
            yield return Values(input, group);
        }
    }

    private static string Who(PersonGroup group, BriefInput input)
    {
        string[] parts =
        [
            Sections.Sentence(BriefLabels.Of(group.Role)),
            group.LegalClass is { } legalClass ? BriefLabels.Of(legalClass) : "legal class not stated",
            Count(group.Adults, "adult", "adults"),
            Count(group.Children, "child", "children"),
            group.ProtectorId is { } protector
                ? $"hearing protector worn: {input.Words.Name(protector)}"
                : "no hearing protector stated",
        ];
        return string.Join("; ", parts) + ".";
    }

    private static string Count(int? number, string one, string many) =>
        number is { } n
            ? n.ToString(CultureInfo.InvariantCulture) + " " + (n == 1 ? one : many)
            : $"number of {many} not stated";

    private static Table Values(BriefInput input, PersonGroup group) =>
        FigureTable.Of(
            input,
            input.Figures.Where(figure => figure.ElementId == group.Id),
            "No level or exposure could be told for this group: see the findings."
        );
}
