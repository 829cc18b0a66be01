using ShowSafety.Core.Crowd;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Gate;
using ShowSafety.Core.IndoorAir;
using ShowSafety.Core.Layout;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Supplies;

namespace ShowSafety.Core;

/// <summary>The one pure function: a plan goes in, an assessment comes out.</summary>
public static class Assessor
{
    /// <summary>Assesses a plan. Never throws for a plan that <see cref="PlanReader"/> accepts.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="cancel">Ends the work early when nobody waits for it any more.</param>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static Assessment Assess(Plan plan, CancellationToken cancel = default) => Assess(plan, null, cancel);

    /// <summary>The same with a memory of what was worked out before; it saves time and changes nothing.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="memory">The memory, or null.</param>
    /// <param name="cancel">Ends the work early when nobody waits for it any more.</param>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static Assessment Assess(Plan plan, AssessorMemory? memory, CancellationToken cancel = default)
    {
        Assessment assessment = WithoutCosts(plan, memory, cancel);
        return assessment with { FindOut = FindOutList.Of(plan, assessment, memory, cancel) };
    }

    /// <summary>The assessment for a plan that is being moved about, without a memory.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="cancel">Ends the work early when nobody waits for it any more.</param>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static Assessment AssessWithoutCosts(Plan plan, CancellationToken cancel = default) =>
        AssessWithoutCosts(plan, null, cancel);

    /// <summary>
    /// The assessment for a plan that is being moved about: everything but what not knowing costs in metres, which
    /// takes an assessment of its own for each fact.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="memory">What was worked out before, or null; it saves time and changes nothing.</param>
    /// <param name="cancel">Ends the work early when nobody waits for it any more.</param>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static Assessment AssessWithoutCosts(Plan plan, AssessorMemory? memory, CancellationToken cancel = default)
    {
        Assessment assessment = WithoutCosts(plan, memory, cancel);
        return assessment with { FindOut = FindOutList.Unpriced(plan, assessment) };
    }

    /// <summary>The assessment without the prices of what is not known, which take assessments of their own.</summary>
    internal static Assessment WithoutCosts(
        Plan plan,
        AssessorMemory? memory = null,
        CancellationToken cancel = default
    )
    {
        SoundField field = Stage("field", AssessedParts.OfSound(plan), SoundField.Build);
        SoundAssessment sound = Stage("sound", AssessedParts.OfSound(plan), p => SoundAssessor.Assess(p, field));
        ExposureAssessment exposure = Stage(
            "exposure",
            AssessedParts.OfExposure(plan),
            p => ExposureAssessor.Assess(p, field)
        );
        ExhaustAssessment exhaust = Stage("exhaust", AssessedParts.OfExhaust(plan), ExhaustAssessor.Assess);
        IndoorAirAssessment indoorAir = Stage("indoorAir", AssessedParts.OfIndoorAir(plan), IndoorAirAssessor.Assess);
        DebrisAssessment debris = Stage("debris", AssessedParts.OfDebris(plan), DebrisAssessor.Assess);
        SuppliesAssessment supplies = Stage("supplies", AssessedParts.OfSupplies(plan), SuppliesAssessor.Assess);
        CrowdAssessment crowd = Stage("crowd", AssessedParts.OfCrowd(plan), CrowdAssessor.Assess);
        GateAssessment gate = Stage("gate", AssessedParts.OfGate(plan), GateAssessor.Assess);
        RoomAssessment[] rooms = [debris, exhaust, sound, exposure, indoorAir, supplies, crowd, gate];
        cancel.ThrowIfCancellationRequested();
        LayoutAssessment layout = LayoutAssessor.Assess(plan, [.. rooms.SelectMany(r => r.Zones)]);
        return new()
        {
            PlanHash = PlanHash.Of(plan),
            IsExample = PlanExamples.IsExample(plan),
            Sound = sound,
            Exposure = exposure,
            Exhaust = exhaust,
            IndoorAir = indoorAir,
            Debris = debris,
            Supplies = supplies,
            Crowd = crowd,
            Gate = gate,
            Layout = layout,
            Findings = Ordered([.. PlanCheck.Check(plan), .. rooms.Append(layout).SelectMany(r => r.Findings)]),
            Assumptions = AssumptionList.Of(plan),
            FindOut = [],
            Names = ElementNames.Of(plan),
        };

        T Stage<T>(string name, Plan part, Func<Plan, T> work)
            where T : class
        {
            cancel.ThrowIfCancellationRequested();
            return memory is null ? work(part) : memory.Recall(name, part, work);
        }
    }

    private static ValueList<Finding> Ordered(IEnumerable<Finding> findings) =>
        [
            .. findings
                .OrderByDescending(f => f.Severity)
                .ThenBy(f => f.Row ?? (ZoneRow)99)
                .ThenBy(f => f.Code, StringComparer.Ordinal)
                .ThenBy(f => f.ElementId, StringComparer.Ordinal),
        ];
}
