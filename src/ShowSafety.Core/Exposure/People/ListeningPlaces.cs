using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.People;

/// <summary>Where the ears of a group may be: the places tried for the worst one.</summary>
public static class ListeningPlaces
{
    /// <summary>
    /// No ear is reckoned nearer to a nozzle's middle than this, in metres: this project's choice, half an arm's length.
    /// </summary>
    public const double NearestMetres = 0.5;

    private const int BoundaryPoints = 40;
    private const int InteriorPerSide = 5;

    /// <summary>
    /// The place of a group; or corners, boundary, a grid inside and the nearest places to each engine, of its area.
    /// Empty when the plan says neither.
    /// </summary>
    public static ValueList<PlanPoint> Of(PersonGroup group, IReadOnlyCollection<PlanPoint> engines)
    {
        if (group.Area.Count < 3)
        {
            IEnumerable<PlanPoint> stated = group.Place is { } place ? [place] : group.Area;
            return [.. stated.Select(p => Clear(p, engines))];
        }

        Polygon area = SiteGeometry.Polygon(group.Area);
        IEnumerable<PlanPoint> places = Boundary(group.Area).Concat(Interior(area));
        return
        [
            .. places
                .Concat(engines.SelectMany(engine => Nearest(area, engine)))
                .Where(p => engines.All(e => e.DistanceMetres(p) >= NearestMetres * 0.999))
                .Distinct()
                .DefaultIfEmpty(Clear(group.Area[0], engines)),
        ];
    }

    /// <summary>Heights of ears tried, in metres.</summary>
    public static ValueList<double> EarHeights(PersonGroup group, PersonPart part)
    {
        ValueList<double> adult = group.EarHeightMetres is { } stated ? [stated.Value] : Ears.OfAdults;
        return part == PersonPart.Adults ? adult : [.. Ears.OfChildren.Concat(adult).Distinct().Order()];
    }

    private static PlanPoint Clear(PlanPoint place, IReadOnlyCollection<PlanPoint> engines)
    {
        foreach (PlanPoint engine in engines.Where(e => e.DistanceMetres(place) < NearestMetres))
        {
            return engine.Along(engine.BearingDegrees(place), NearestMetres);
        }

        return place;
    }

    private static IEnumerable<PlanPoint> Boundary(ValueList<PlanPoint> ring)
    {
        double perimeter = ring.Select((p, i) => p.DistanceMetres(ring[(i + 1) % ring.Count])).Sum();
        double step = Math.Max(perimeter / BoundaryPoints, 0.25);
        for (int i = 0; i < ring.Count; i++)
        {
            PlanPoint from = ring[i];
            PlanPoint to = ring[(i + 1) % ring.Count];
            double length = from.DistanceMetres(to);
            double heading = from.BearingDegrees(to);
            int pieces = Math.Max(1, (int)Math.Ceiling(length / step));
            for (int k = 0; k < pieces; k++)
            {
                yield return k == 0 ? from : from.Along(heading, length * k / pieces);
            }
        }
    }

    private static IEnumerable<PlanPoint> Interior(Polygon area)
    {
        Envelope box = area.EnvelopeInternal;
        for (int i = 1; i <= InteriorPerSide; i++)
        {
            for (int k = 1; k <= InteriorPerSide; k++)
            {
                var place = new PlanPoint(
                    box.MinX + (box.Width * i / (InteriorPerSide + 1)),
                    box.MinY + (box.Height * k / (InteriorPerSide + 1))
                );
                if (area.Contains(SiteGeometry.Point(place)))
                {
                    yield return place;
                }
            }
        }
    }

    private static IEnumerable<PlanPoint> Nearest(Polygon area, PlanPoint engine)
    {
        Point source = SiteGeometry.Point(engine);
        if (area.Distance(source) >= NearestMetres)
        {
            return [SiteGeometry.PlanPoint(DistanceOp.NearestPoints(area, source)[0])];
        }

        return Enumerable
            .Range(0, 8)
            .Select(i => engine.Along(45.0 * i, NearestMetres))
            .Where(place => area.Contains(SiteGeometry.Point(place)));
    }
}
