using System.Collections.Frozen;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure.Rules;

/// <summary>The rule sets that come with the project, read once from its own resources, in order of their ids.</summary>
public static class RuleSetLibrary
{
    private const string Prefix = "RuleSets/";

    /// <summary>All rule sets.</summary>
    public static ValueList<RuleSet> All { get; } =
    [
        .. typeof(RuleSetLibrary)
            .Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(Load),
    ];

    private static readonly FrozenDictionary<string, RuleSet> ById = All.ToFrozenDictionary(set => set.Id);

    /// <summary>The rule set with an id, or null.</summary>
    public static RuleSet? Find(string id) => ById.GetValueOrDefault(id);

    private static RuleSet Load(string name)
    {
        using Stream stream = typeof(RuleSetLibrary).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        RuleSet set = RuleSetReader.Read(reader.ReadToEnd());
        return name == $"{Prefix}{set.Id}.json"
            ? set
            : throw new FormatException($"The rule set in {name} calls itself {set.Id}.");
    }
}
