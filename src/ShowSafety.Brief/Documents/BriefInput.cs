using ShowSafety.Core;
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

    public ValueList<FindOutRow> FindOut { get; init; } = [];

    public ValueList<DutyRow> Duties { get; init; } = [];

    /// <summary>Titles of the rule sets chosen.</summary>
    public ValueList<string> RuleTitles { get; init; } = [];

    /// <summary>What each rule set asks the user to confirm with the authority.</summary>
    public ValueList<string> RuleNotes { get; init; } = [];

    public Phrasebook Words => field ??= new Phrasebook(ElementNames.Of(Plan));

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

/// <summary>A fact to be found out, as the brief prints it.</summary>
internal sealed record FindOutRow(string Where, string What, string How, string Cost);

/// <summary>A clause of a rule chosen and what it asks of a group of people, as the brief prints it.</summary>
internal sealed record DutyRow(string Who, string Rule, string Value, string Limit, string Duty);
