using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.People;

/// <summary>What the assessment of every person needs.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Sound">The sound of its engines.</param>
/// <param name="Timeline">Its programme.</param>
/// <param name="RuleSets">The rule sets chosen and known.</param>
public sealed record PersonContext(Plan Plan, ISoundLevels Sound, Timeline Timeline, ValueList<RuleSet> RuleSets)
{
    /// <summary>Places of the engines.</summary>
    public ValueList<PlanPoint> EnginePlaces { get; } = [.. Plan.Engines.Select(e => e.Place)];

    /// <summary>The listed protector with an id, or null.</summary>
    public HearingProtector? Protector(string? id) =>
        id is null ? null : Plan.Protectors.FirstOrDefault(p => p.Id == id);
}
