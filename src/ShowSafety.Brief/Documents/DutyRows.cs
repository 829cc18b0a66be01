using ShowSafety.Core;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>A clause of a rule chosen and what it asks of a group of people, as the brief prints it.</summary>
internal sealed record DutyRow(string Who, string Rule, string Value, string Limit, string Asks);

/// <summary>Lays the verdicts on people flat: every clause that was compared, met or not, or that can't be told.</summary>
internal static class DutyRows
{
    public static ValueList<DutyRow> Of(ExposureAssessment exposure, Phrasebook words) =>
        [.. exposure.People.SelectMany(person => person.Rules.Select(verdict => Row(person, verdict, words)))];

    /// <summary>The rule sets of a plan that are known; one that is not is a finding.</summary>
    public static IEnumerable<RuleSet> Sets(Plan plan) => plan.RuleSets.Select(RuleSetLibrary.Find).OfType<RuleSet>();

    private static DutyRow Row(PersonExposure person, RuleVerdict verdict, Phrasebook words)
    {
        RuleSet? set = RuleSetLibrary.Find(verdict.RuleSetId);
        RuleClause? clause = set?.Clauses.FirstOrDefault(c => c.Id == verdict.ClauseId);
        string comparison = verdict.IsComparison ? $" ({BriefLabels.Comparison})" : "";
        string ear = verdict.AtTheEar ? $", {BriefLabels.AtTheEar}" : "";
        return new(
            $"{words.Name(person.GroupId)}, {BriefLabels.Of(person.Part)}: {set?.Title ?? verdict.RuleSetId}{comparison}",
            $"{clause?.Clause ?? verdict.ClauseId}: {BriefLabels.Of(verdict.Metric)}{ear}",
            verdict.Value is { } value ? ValueFormat.Planning(value) : BriefLabels.CannotTell,
            ValueFormat.Best(verdict.Limit),
            Asks(verdict)
        );
    }

    private static string Asks(RuleVerdict verdict) =>
        verdict.Verdict switch
        {
            Verdict.Meets => BriefLabels.Meets,
            Verdict.Exceeds => Sections.Sentence(BriefLabels.Of(verdict.Duty)),
            _ => Sections.Sentence(BriefLabels.CannotTell),
        };
}
