using ShowSafety.Core;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Layout;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>What a brief is composed from: the plan, its assessment laid flat, and the words for both.</summary>
internal sealed record BriefInput
{
    public required Plan Plan { get; init; }

    /// <summary>Fingerprint of the plan, hexadecimal.</summary>
    public required string PlanHash { get; init; }

    public required DateTimeOffset PreparedOn { get; init; }

    public required bool IsExample { get; init; }

    /// <summary>The one sentence.</summary>
    public required string Headline { get; init; }

    public ValueList<Finding> Findings { get; init; } = [];

    public ValueList<Zone> Zones { get; init; } = [];

    public ValueList<Figure> Figures { get; init; } = [];

    public LayoutAssessment? Layout { get; init; }

    public ValueList<Assumption> Assumptions { get; init; } = [];

    public ValueList<FindOutItem> FindOut { get; init; } = [];

    public ValueList<PersonExposure> People { get; init; } = [];

    public ValueList<DutyRow> Duties { get; init; } = [];

    public Phrasebook Words => field ??= new Phrasebook(ElementNames.Of(Plan));

    public static BriefInput Of(Plan plan, Assessment assessment, DateTimeOffset preparedOn) =>
        new()
        {
            Plan = plan,
            PlanHash = assessment.PlanHash,
            PreparedOn = preparedOn,
            IsExample = assessment.IsExample,
            Headline = assessment.HeadlineSentence,
            Findings = assessment.Findings,
            Zones = [.. assessment.Zones],
            Figures = [.. assessment.Figures],
            Layout = assessment.Layout,
            Assumptions = assessment.Assumptions,
            FindOut = assessment.FindOut,
            People = assessment.Exposure.People,
            Duties = DutyRows.Of(assessment.Exposure, new Phrasebook(assessment.Names)),
        };

    public bool NotToRun => Findings.Any(finding => finding.Severity == Severity.Stop);

    public SourceNumbers Sources => field ??= SourceNumbers.Of(this);

    /// <summary>The marks of every page, in the order they are printed.</summary>
    public IReadOnlyList<string> Marks =>
        [
            .. NotToRun ? [Core.Wording.Headline.NotToRun] : (string[])[],
            .. IsExample ? [Core.Wording.Headline.Example] : (string[])[],
        ];

    public IEnumerable<Finding> Of(Severity severity) => Findings.Where(finding => finding.Severity == severity);
}
