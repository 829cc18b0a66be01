using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Enclosures;

/// <summary>The footprint of an enclosure, asked often: whether a place is inside, and how far it is from the edge.</summary>
public sealed class Footprint
{
    // Far above the rounding of a distance, far under anything that matters.
    private const double RoundingMetres = 1e-9;

    private readonly PlanPoint[] _ring;

    /// <summary>Takes a ring of at least three points that does not cross itself.</summary>
    public Footprint(ValueList<PlanPoint> ring)
    {
        _ring = [.. ring];
        AreaSquareMetres = Math.Abs(Sides.Sum(s => Cross(s.From, s.To))) / 2;
    }

    /// <summary>Area in m².</summary>
    public double AreaSquareMetres { get; }

    /// <summary>The sides in order; side 0 runs from the first point to the second.</summary>
    public IEnumerable<(PlanPoint From, PlanPoint To)> Sides =>
        _ring.Select((point, i) => (point, _ring[(i + 1) % _ring.Length]));

    /// <summary>Whether a ring is a footprint at all: valid and with an area.</summary>
    public static bool IsUsable(ValueList<PlanPoint> ring) =>
        ring.Count >= 3
        && ring.All(p => double.IsFinite(p.XMetres) && double.IsFinite(p.YMetres))
        && SiteGeometry.Polygon(ring) is { IsValid: true, Area: > 0 };

    /// <summary>Whether a place is inside, by the even-odd rule.</summary>
    public bool Contains(PlanPoint place)
    {
        bool inside = false;
        for (int i = 0, j = _ring.Length - 1; i < _ring.Length; j = i++)
        {
            PlanPoint a = _ring[i];
            PlanPoint b = _ring[j];
            if (
                a.YMetres > place.YMetres != b.YMetres > place.YMetres
                && place.XMetres
                    < a.XMetres + ((b.XMetres - a.XMetres) * (place.YMetres - a.YMetres) / (b.YMetres - a.YMetres))
            )
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>Distance from a place to the nearest point of the edge in metres.</summary>
    public double EdgeDistanceMetres(PlanPoint place)
    {
        double nearest = double.MaxValue;
        for (int i = 0, j = _ring.Length - 1; i < _ring.Length; j = i++)
        {
            nearest = Math.Min(nearest, SquareToSegment(place, _ring[j], _ring[i]));
        }

        return Math.Sqrt(nearest);
    }

    /// <summary>
    /// A distance in metres that no place of a patch is nearer than, 0 when some place may be inside. Two outlines that
    /// do not cross are nearest at a corner of either.
    /// </summary>
    public double NearestMetres(in Patch patch)
    {
        Span<PlanPoint> corners = stackalloc PlanPoint[Patch.CornerCount];
        patch.WriteCorners(corners);
        if (Contains(corners[0]) || Holds(corners, _ring[0]))
        {
            return 0;
        }

        double nearest = double.MaxValue;
        for (int i = 0, j = _ring.Length - 1; i < _ring.Length; j = i++)
        {
            for (int k = 0, l = corners.Length - 1; k < corners.Length; l = k++)
            {
                if (MayCross(_ring[j], _ring[i], corners[l], corners[k]))
                {
                    return 0;
                }

                nearest = Math.Min(nearest, SquareToSegment(corners[k], _ring[j], _ring[i]));
                nearest = Math.Min(nearest, SquareToSegment(_ring[i], corners[l], corners[k]));
            }
        }

        return Math.Max(0, Math.Sqrt(nearest) - RoundingMetres);
    }

    private static bool Holds(ReadOnlySpan<PlanPoint> corners, PlanPoint place)
    {
        bool left = false;
        bool right = false;
        for (int k = 0, l = corners.Length - 1; k < corners.Length; l = k++)
        {
            double turn = Turn(corners[l], corners[k], place);
            left |= turn > 0;
            right |= turn < 0;
        }

        return !(left && right);
    }

    private static bool MayCross(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) =>
        Turn(a, b, c) * Turn(a, b, d) <= 0 && Turn(c, d, a) * Turn(c, d, b) <= 0;

    private static double Turn(PlanPoint a, PlanPoint b, PlanPoint c) =>
        ((b.XMetres - a.XMetres) * (c.YMetres - a.YMetres)) - ((b.YMetres - a.YMetres) * (c.XMetres - a.XMetres));

    private static double SquareToSegment(PlanPoint place, PlanPoint a, PlanPoint b)
    {
        double dx = b.XMetres - a.XMetres;
        double dy = b.YMetres - a.YMetres;
        double length = (dx * dx) + (dy * dy);
        double along = ((place.XMetres - a.XMetres) * dx) + ((place.YMetres - a.YMetres) * dy);
        double share = length > 0 ? Math.Clamp(along / length, 0, 1) : 0;
        double offX = place.XMetres - a.XMetres - (share * dx);
        double offY = place.YMetres - a.YMetres - (share * dy);
        return (offX * offX) + (offY * offY);
    }

    private static double Cross(PlanPoint a, PlanPoint b) => (a.XMetres * b.YMetres) - (b.XMetres * a.YMetres);
}
