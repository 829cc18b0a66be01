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
    public static Assessment Assess(Plan plan, CancellationToken cancel = default)
    {
        Assessment assessment = WithoutCosts(plan, cancel);
        return assessment with { FindOut = FindOutList.Of(plan, assessment, cancel) };
    }

    /// <summary>
    /// The assessment for a plan that is being moved about: everything but what not knowing costs in metres, which
    /// takes an assessment of its own for each fact.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="cancel">Ends the work early when nobody waits for it any more.</param>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static Assessment AssessWithoutCosts(Plan plan, CancellationToken cancel = default)
    {
        Assessment assessment = WithoutCosts(plan, cancel);
        return assessment with { FindOut = FindOutList.Unpriced(plan, assessment) };
    }

    /// <summary>The assessment without the prices of what is not known, which take assessments of their own.</summary>
    internal static Assessment WithoutCosts(Plan plan, CancellationToken cancel = default)
    {
        cancel.ThrowIfCancellationRequested();
        SoundField field = SoundField.Build(plan);
        SoundAssessment sound = SoundAssessor.Assess(plan, field);
        cancel.ThrowIfCancellationRequested();
        ExposureAssessment exposure = ExposureAssessor.Assess(plan, field);
        cancel.ThrowIfCancellationRequested();
        ExhaustAssessment exhaust = ExhaustAssessor.Assess(plan);
        IndoorAirAssessment indoorAir = IndoorAirAssessor.Assess(plan);
        cancel.ThrowIfCancellationRequested();
        DebrisAssessment debris = DebrisAssessor.Assess(plan);
        SuppliesAssessment supplies = SuppliesAssessor.Assess(plan);
        CrowdAssessment crowd = CrowdAssessor.Assess(plan);
        GateAssessment gate = GateAssessor.Assess(plan);
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
