using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Exposure.Zones;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure;

/// <summary>
/// For how long may one stand there? From the programme, the people and the levels: exposures, verdicts of the rule
/// sets chosen, hearing protectors, rows 12 to 15 of the zones table.
/// </summary>
public static class ExposureAssessor
{
    /// <summary>Assesses the exposure of everybody on a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sound">The sound of its engines.</param>
    public static ExposureAssessment Assess(Plan plan, ISoundLevels sound)
    {
        Timeline timeline = TimelineBuilder.Build(plan);
        ValueList<RuleSet> rules = [.. plan.RuleSets.Distinct().Select(RuleSetLibrary.Find).OfType<RuleSet>()];
        var context = new PersonContext(plan, sound, timeline, rules);
        var findings = new List<Finding>(timeline.Findings.Concat(RuleSetFindings(plan)));
        var people = new List<PersonExposure>();
        foreach (PersonGroup group in plan.People)
        {
            PersonExposure[] parts =
            [
                .. GroupFindings.Parts(group).Select(part => PersonAssessor.Assess(context, group, part)),
            ];
            people.AddRange(parts);
            findings.AddRange(parts.Length > 0 ? GroupFindings.Of(group, rules) : []);
            findings.AddRange(parts.SelectMany(person => PersonFindings.Of(context, group, person)));
        }

        NeighbourLevel[] neighbours = [.. plan.People.SelectMany(group => NeighbourLevels.Of(context, group))];
        (ValueList<Zone> zones, ValueList<Finding> zoneFindings) = SoundZones.Of(context);
        return new()
        {
            People = [.. people],
            Figures = [.. people.SelectMany(ExposureFigures.Of), .. neighbours.Select(n => n.Figure)],
            Zones = zones,
            Findings =
            [
                .. findings,
                .. neighbours.Select(n => n.Finding),
                .. ProtectorFindings.TooFew(plan),
                .. zoneFindings,
            ],
        };
    }

    private static IEnumerable<Finding> RuleSetFindings(Plan plan)
    {
        if (plan.RuleSets.Count == 0)
        {
            yield return new("exposure.no-rule-set", Severity.Act) { CannotTell = true, Field = "Plan.RuleSets" };
        }

        foreach (string id in plan.RuleSets.Distinct().Where(id => RuleSetLibrary.Find(id) is null))
        {
            yield return new("exposure.rule-set-unknown", Severity.Act)
            {
                CannotTell = true,
                Field = "Plan.RuleSets",
                Arguments = [FindingArgument.Of("ruleSet", id)],
            };
        }
    }
}
