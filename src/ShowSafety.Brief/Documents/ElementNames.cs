using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>The names people know a plan's elements by, by id; an element without a name goes by its id.</summary>
internal static class ElementNames
{
    public static IReadOnlyDictionary<string, string> Of(Plan plan)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((string id, string? name) in Named(plan))
        {
            // Ids are unique within a list only; the first list that uses one gives the name.
            names.TryAdd(id, string.IsNullOrWhiteSpace(name) ? id : name);
        }

        return names;
    }

    private static IEnumerable<(string Id, string? Name)> Named(Plan plan) =>
        [
            .. plan.Engines.Select(e => (e.Id, e.Name)),
            .. plan.Engines.SelectMany(e => e.Sheet?.States ?? []).Select(s => (s.Id, s.Name)),
            .. plan.People.Select(p => (p.Id, p.Name)),
            .. plan.Protectors.Select(p => (p.Id, p.Name)),
            .. plan.Site.Exits.Select(e => (e.Id, e.Name)),
            .. plan.Site.Stands.Select(s => (s.Id, s.Name)),
            .. plan.Site.Structures.Select(s => (s.Id, s.Name)),
            .. plan.Site.Burnables.Select(b => (b.Id, b.Name)),
            .. plan.Viewing?.StewardPosts.Select(p => (p.Id, p.Name)) ?? [],
            .. plan.Viewing?.WheelchairPlaces.Select(p => (p.Id, p.Name)) ?? [],
            .. plan.Gate?.Stopping?.StopPosts.Select(p => (p.Id, p.Name)) ?? [],
        ];
}
