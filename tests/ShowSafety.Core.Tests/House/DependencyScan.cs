using System.Collections.Concurrent;
using System.Reflection;
using ArchUnitNET.Loader;

namespace ShowSafety.Core.Tests.House;

/// <summary>Finds who uses whom in a compiled assembly, method bodies included.</summary>
internal static class DependencyScan
{
    /// <summary>Dependencies between different rooms below the namespace <paramref name="root"/>.</summary>
    public static IReadOnlyList<Dependency> BetweenRooms(Assembly assembly, string root) =>
        [.. Of(assembly, root).Where(d => Arrows.IsBelow(d.ToType, root) && d.FromRoom != d.ToRoom)];

    /// <summary>Uses of types that do not belong to <paramref name="root"/>, room by room.</summary>
    public static IReadOnlyList<Dependency> OnOthers(Assembly assembly, string root) =>
        [.. Of(assembly, root).Where(d => !Arrows.IsBelow(d.ToType, root))];

    private static readonly ConcurrentDictionary<(Assembly, string), Lazy<IReadOnlyList<Dependency>>> Scans = new();

    // A scan takes seconds, and several tests look at the same one.
    private static IReadOnlyList<Dependency> Of(Assembly assembly, string root) =>
        Scans.GetOrAdd((assembly, root), _ => new(() => [.. Scan(assembly, root)])).Value;

    private static IEnumerable<Dependency> Scan(Assembly assembly, string root) =>
        new ArchLoader()
            .LoadNamespacesWithinAssembly(assembly, root)
            .Build()
            .Types.Where(type => Arrows.IsBelow(type.FullName, root))
            .SelectMany(type => type.Dependencies)
            .Select(use => (From: use.Origin.FullName, To: use.Target.FullName))
            // The parameter of a generic method goes by the method's whole signature: it is no type of anybody's.
            .Where(use => !use.To.Contains(' ', StringComparison.Ordinal))
            .Distinct()
            .Select(use => new Dependency(Arrows.RoomOf(use.From, root), use.From, Arrows.RoomOf(use.To, root), use.To))
            .OrderBy(use => use.ToString(), StringComparer.Ordinal);
}
