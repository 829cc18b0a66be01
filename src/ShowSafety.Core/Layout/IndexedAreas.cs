using NetTopologySuite.Geometries;

namespace ShowSafety.Core.Layout;

/// <summary>The indexes of one assessment's areas, so that every check asks the same one. Not for several threads.</summary>
internal sealed class IndexedAreas
{
    // By reference: comparing two polygons point by point would cost more than it saves.
    private readonly Dictionary<Geometry, IndexedArea> _areas = new(ReferenceEqualityComparer.Instance);

    /// <summary>The index of an area.</summary>
    public IndexedArea Of(Geometry area) =>
        _areas.TryGetValue(area, out IndexedArea? known) ? known : _areas[area] = new(area);
}
