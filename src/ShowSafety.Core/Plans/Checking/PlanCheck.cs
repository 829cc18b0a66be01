using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Looks whether a plan makes sense and answers with findings. It never refuses a plan.</summary>
public static class PlanCheck
{
    /// <summary>What does not make sense, in a fixed order.</summary>
    public static ValueList<Finding> Check(Plan plan) => [];
}
