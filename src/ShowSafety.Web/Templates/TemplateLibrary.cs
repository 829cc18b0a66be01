using System.Collections.Frozen;
using ShowSafety.Core.Plans;

namespace ShowSafety.Web.Templates;

/// <summary>A plan a user starts from.</summary>
/// <param name="Name">Name in the address.</param>
/// <param name="Title">Title of the plan.</param>
/// <param name="Notes">What the plan says of itself, or null.</param>
internal sealed record TemplateSummary(string Name, string Title, string? Notes);

/// <summary>The templates that come with the program, read once.</summary>
internal sealed class TemplateLibrary
{
    private readonly FrozenDictionary<string, Plan> plans = Directory
        .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "site-templates"), "*.json")
        .ToFrozenDictionary(file => Path.GetFileNameWithoutExtension(file), Read, StringComparer.Ordinal);

    /// <summary>All of them by name.</summary>
    public IReadOnlyList<TemplateSummary> All =>
        [
            .. plans
                .OrderBy(p => p.Key, StringComparer.Ordinal)
                .Select(p => new TemplateSummary(p.Key, p.Value.Title, p.Value.Notes)),
        ];

    /// <summary>The template with a name, or null.</summary>
    public Plan? Find(string name) => plans.GetValueOrDefault(name);

    private static Plan Read(string file) =>
        PlanReader.Read(File.ReadAllBytes(file)).Plan
        ?? throw new InvalidOperationException($"The template {Path.GetFileName(file)} can't be read.");
}
