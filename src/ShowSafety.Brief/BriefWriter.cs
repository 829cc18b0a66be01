using ShowSafety.Brief.Documents;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief;

/// <summary>Writes the brief of a plan as a tagged PDF, A4. The same plan, assessment and date give the same bytes.</summary>
public static class BriefWriter
{
    /// <summary>Writes the brief.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="assessment">The assessment of that very plan.</param>
    /// <param name="stream">Where to write; left open.</param>
    /// <param name="preparedOn">The date printed on the brief and stated in the file.</param>
    /// <exception cref="ArgumentException">The assessment is of another plan.</exception>
    public static void Write(Plan plan, Assessment assessment, Stream stream, DateTimeOffset preparedOn)
    {
        Matching.Demand(plan, assessment);
        PdfDocumentWriter.Write(BriefDocument.Compose(BriefInput.Of(plan, assessment, preparedOn)), stream);
    }
}

/// <summary>Writes the site plan of a plan as an SVG drawing to a stated scale, for A4 paper; details and legend stand below it.</summary>
public static class SitePlanWriter
{
    /// <summary>The site plan as SVG text.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="assessment">The assessment of that very plan.</param>
    /// <exception cref="ArgumentException">The assessment is of another plan.</exception>
    public static string Svg(Plan plan, Assessment assessment)
    {
        Matching.Demand(plan, assessment);
        // The drawing carries no date: it belongs to the plan's version alone.
        BriefInput input = BriefInput.Of(plan, assessment, DateTimeOffset.UnixEpoch);
        return Drawing.SvgWriter.Write(SitePlanSheet.Of(SitePlanDrawing.Of(input)));
    }
}

/// <summary>A brief that shows one plan with the results of another could hurt somebody.</summary>
internal static class Matching
{
    public static void Demand(Plan plan, Assessment assessment)
    {
        if (PlanHash.Of(plan) != assessment.PlanHash)
        {
            throw new ArgumentException("The assessment is of another version of the plan.", nameof(assessment));
        }
    }
}
