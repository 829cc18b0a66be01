using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>The first page: what and when, the one sentence, what stands against running, and the cautions.</summary>
internal static class OpeningSection
{
    // More than these fill the page; all of them stand among the findings.
    private const int MostStops = 12;

    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return new DocumentTitle(BriefLabels.DocumentTitle);
        yield return new Paragraph(input.Headline, TextStyles.Sentence);
        if (input.NotToRun)
        {
            yield return Stops(input);
        }

        yield return new Callout(
            BriefLabels.CautionsHead,
            BriefLabels.Cautions.Select(caution => (RichText)caution).ToValueList()
        );
        yield return new SectionHeading(1, BriefLabels.EventSection);
        yield return Facts(input.Plan, input);
        foreach (Block block in ProgrammeSection.Compose(input))
        {
            yield return block;
        }
    }

    private static Callout Stops(BriefInput input) =>
        new(
            BriefLabels.StopsHead,
            [
                BriefLabels.StopsLead,
                .. input
                    .Of(Severity.Stop)
                    .Take(MostStops)
                    .Select((finding, i) => RichText.Led($"{i + 1}.", input.Words.Sentence(finding))),
                .. Rest(input.Of(Severity.Stop).Count() - MostStops),
            ],
            true
        );

    private static RichText[] Rest(int more) => more > 0 ? [RichText.Strong(BriefLabels.MoreStops(more))] : [];

    private static Table Facts(Plan plan, BriefInput input) =>
        new(
            [new("", 1), new("", 3)],
            [
                ["Plan", plan.Title],
                ["Event", Sections.OrNotStated(plan.Event?.Name)],
                ["Days", Days(plan)],
                ["Venue", Sections.OrNotStated(plan.Event?.Venue)],
                ["Organiser's contact", Sections.OrNotStated(plan.Event?.OrganiserContact)],
                ["Plan prepared by", PreparedBy(plan)],
                ["Brief printed for", BriefLabels.Day(DateOnly.FromDateTime(input.PreparedOn.DateTime))],
                [
                    "Rules chosen",
                    plan.RuleSets.Count == 0 ? BriefLabels.NotStated : string.Join("\n", RuleTitles(plan)),
                ],
                ["Weather it holds for", Weather(plan.Site.Weather)],
            ],
            BriefLabels.NotStated
        )
        {
            HasHead = false,
        };

    private static IEnumerable<string> RuleTitles(Plan plan) =>
        plan.RuleSets.Select(id => RuleSetLibrary.Find(id)?.Title ?? $"{id} ({BriefLabels.UnknownRules})");

    private static string Days(Plan plan) =>
        plan.Event is { Days.Count: > 0 } shown
            ? string.Join("; ", shown.Days.Select(BriefLabels.Day))
            : BriefLabels.NoDate;

    private static string PreparedBy(Plan plan) =>
        plan.Prepared is { By: { } by } prepared
            ? by + (prepared.On is { } on ? ", " + BriefLabels.Day(on) : "")
            : BriefLabels.NotStated;

    private static string Weather(WeatherBand? band)
    {
        string[] parts =
        [
            .. Part("wind up to", band?.HighestWindMetresPerSecond, Unit.MetrePerSecond),
            .. Part("from", band?.LowestTemperatureCelsius, Unit.Celsius),
            .. Part("to", band?.HighestTemperatureCelsius, Unit.Celsius),
        ];
        return parts.Length == 0 ? $"{BriefLabels.NotStated}; cautious values assumed" : string.Join(", ", parts);
    }

    private static string[] Part(string lead, Stated? stated, Unit unit) =>
        stated is null ? [] : [$"{lead} {Core.Wording.ValueFormat.Number(stated.Value, unit)}"];
}
