using System.Text;
using ShowSafety.Brief;
using ShowSafety.Core;
using ShowSafety.Core.Plans;

namespace ShowSafety.Web.Outputs;

/// <summary>Makes the documents of a plan.</summary>
internal static class Documents
{
    private const int MostNameCharacters = 60;

    /// <summary>The brief as PDF.</summary>
    public static byte[] Brief(Plan plan, DateTimeOffset preparedOn, CancellationToken cancel)
    {
        using var pdf = new MemoryStream();
        BriefWriter.Write(plan, Assessor.Assess(plan, cancel), pdf, preparedOn);
        return pdf.ToArray();
    }

    /// <summary>The site plan as SVG, UTF-8.</summary>
    public static byte[] SitePlan(Plan plan, CancellationToken cancel) =>
        Encoding.UTF8.GetBytes(SitePlanWriter.Svg(plan, Assessor.AssessWithoutCosts(plan, cancel)));

    /// <summary>The name of a file to keep: letters and digits of the title, joined by hyphens, and what it is.</summary>
    public static string FileName(string title, string what)
    {
        var name = new StringBuilder();
        foreach (var c in title.Take(MostNameCharacters))
        {
            if (char.IsLetterOrDigit(c))
            {
                name.Append(c);
            }
            else if (name.Length > 0 && name[^1] != '-')
            {
                name.Append('-');
            }
        }

        var words = name.ToString().Trim('-');
        return words.Length == 0 ? what : $"{words}-{what}";
    }
}
