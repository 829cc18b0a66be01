using System.Globalization;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>
/// One line for the adults and one for the children of each group: how loud, how much in a day, what reaches the ear,
/// what is asked. Everything behind the line stands in an annex.
/// </summary>
internal static class PeopleSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return Sections.Head(BriefLabels.PeopleSection);
        yield return new Paragraph(BriefLabels.BestAndPlanning);
        yield return new Table(
            [
                new("Who", 2.6),
                new("Loudest while running", 1.5, ColumnAlignment.Right),
                new("L_EX,8h of the day", 1.4, ColumnAlignment.Right),
                new("C-weighted peak", 1.4, ColumnAlignment.Right),
                new("At the ear", 1.4, ColumnAlignment.Right),
                new("Wears, and what is asked", 3.4),
            ],
            input.People.Select(person => Row(input, person)).ToValueList(),
            "The plan names nobody, so nobody's exposure can be told."
        );
    }

    private static ValueList<RichText> Row(BriefInput input, PersonExposure person) =>
        [
            $"{input.Words.Name(person.GroupId)}, {Counted(input, person)}",
            Told(person, person.HighestLevel),
            Told(person, person.WholeDayLevel),
            Told(person, person.Peak),
            person.LevelAtEar is { } atEar ? ValueFormat.Planning(atEar) : "—",
            Asked(input, person),
        ];

    private static string Counted(BriefInput input, PersonExposure person)
    {
        PersonGroup? group = input.Plan.People.FirstOrDefault(g => g.Id == person.GroupId);
        int? number = person.Part == PersonPart.Children ? group?.Children : group?.Adults;
        return number is { } n
            ? $"{n.ToString(CultureInfo.InvariantCulture)} {BriefLabels.Counted(person.Part, n)}"
            : $"{BriefLabels.Of(person.Part)}, number not stated";
    }

    private static string Told(PersonExposure person, Quantity? value) =>
        value is not null ? ValueFormat.Planning(value)
        : person.Hearing == HearingState.NothingRuns ? BriefLabels.NothingRuns
        : BriefLabels.CannotTell;

    private static string Asked(BriefInput input, PersonExposure person)
    {
        string? protector = input.Plan.People.FirstOrDefault(g => g.Id == person.GroupId)?.ProtectorId;
        string wears = protector is null ? "nothing stated" : input.Words.Name(protector)!;
        string[] asked =
        [
            .. person.HighestLevel?.Planning >= 85 ? [BriefLabels.InHearingZone] : (string[])[],
            .. person
                .Rules.Where(rule => rule.Verdict == Verdict.Exceeds)
                .Select(rule => BriefLabels.Of(rule.Duty))
                .Distinct(),
            .. person.Rules.Any(rule => rule.Verdict == Verdict.CannotTell) ? [BriefLabels.CannotTell] : (string[])[],
        ];
        return Sections.Sentence(wears) + (asked.Length == 0 ? "" : ". " + Sections.Sentence(string.Join("; ", asked)));
    }
}
