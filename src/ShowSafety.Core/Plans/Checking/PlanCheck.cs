using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// Looks whether a plan makes sense and answers with findings. It never refuses a plan: people draw half of one, drag
/// things about and come back tomorrow. What the physics makes of the plan is the rooms' business, not asked here.
/// </summary>
public static class PlanCheck
{
    /// <summary>What does not make sense, in a fixed order.</summary>
    public static ValueList<Finding> Check(Plan plan) =>
        [
            .. ReferenceCheck.Findings(plan),
            .. PlaceCheck.Findings(plan),
            .. EnclosureCheck.Findings(plan),
            .. EngineSheetCheck.Findings(plan),
            .. ProgrammeCheck.Findings(plan),
            .. PeopleCheck.Findings(plan),
        ];
}
