using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Documents;

/// <summary>The brief: its furniture and its sections in order.</summary>
internal static class BriefDocument
{
    public static PrintedDocument Compose(BriefInput input) =>
        new(
            $"{BriefLabels.DocumentTitle}: {input.Plan.Title}",
            BriefLabels.Subject,
            input.PreparedOn,
            new PageFurniture(
                input.Plan.Event?.Name ?? BriefLabels.UnnamedEvent,
                BriefLabels.OnDays(input.Plan.Event?.Days ?? []),
                BriefLabels.PlanVersion(input.PlanHash),
                input.Marks
            ),
            [.. SectionsOf(input).SelectMany(section => section)]
        );

    private static IEnumerable<IEnumerable<Block>> SectionsOf(BriefInput input) =>
        [
            OpeningSection.Compose(input),
            FindingsSection.BeforeTheRun(input),
            SitePlanSection.Compose(input),
            [new PageBreak()],
            PeopleSection.Compose(input),
            ZonesSection.Compose(input),
            ValuesSection.Air(input),
            FindOutSection.Compose(input),
            PapersSection.Compose(input),
            SignaturesSection.Compose(input),
            [new PageBreak()],
            FindingsSection.ForInformation(input),
            PeopleAnnex.Compose(input),
            RulesSection.Compose(input),
            ValuesSection.Others(input),
            AssumptionsSection.Compose(input),
            SourcesSection.Compose(input),
        ];
}
