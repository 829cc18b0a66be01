using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors.Reflections;

namespace ShowSafety.Core.Sound.Outdoors.Bounds;

/// <summary>
/// One wall seen from one source: where its reflection can be heard at all, and from which frequency on. The height of
/// the wall is left out, which can only let more through.
/// </summary>
internal sealed class WallRange
{
    private const double SoundSpeedMetresPerSecond = 340;
    private const double TouchMetres = 1e-6;

    // Inwards, far above the rounding of the sums and far under anything that matters.
    private const double RoundingShare = 1e-9;

    private readonly ReflectingWall _wall;
    private readonly MirrorLine _mirror;
    private readonly double _away;

    private WallRange(ReflectingWall wall, MirrorLine mirror, double away, Emitter source)
    {
        _wall = wall;
        _mirror = mirror;
        _away = away;
        Image = mirror.Image(source);
    }

    /// <summary>The image of the source.</summary>
    public Emitter Image { get; }

    /// <summary>A wall seen from a source, or null for a wall without length.</summary>
    public static WallRange? Of(ReflectingWall wall, Emitter source)
    {
        double length = wall.From.DistanceMetres(wall.To);
        if (!(length > 0) || !(wall.SizeMetres > 0))
        {
            return null;
        }

        double x = (wall.To.YMetres - wall.From.YMetres) / length;
        double y = (wall.From.XMetres - wall.To.XMetres) / length;
        double away =
            (x * (source.Place.XMetres - wall.From.XMetres)) + (y * (source.Place.YMetres - wall.From.YMetres));
        double sign = away < 0 ? -1 : 1;
        double offset = (x * wall.From.XMetres) + (y * wall.From.YMetres);
        return new(wall, new(sign * x, sign * y, sign * offset), Math.Abs(away), source);
    }

    /// <summary>Whether any place of a patch may hear it.</summary>
    public bool MayReach(in Patch patch)
    {
        // From the wall's own plane it may be heard on both sides.
        if (_away <= TouchMetres)
        {
            return true;
        }

        // What touches the very end of the wall is drawn out by the way behind it.
        double drawnOut = 1 + (patch.DistancesMetres(Image.Place).Most / _away);
        double slack = -patch.RadiusMetres - (TouchMetres * drawnOut);
        return _mirror.HasOnSourceSide(patch)
            && Inside(_wall.From, _wall.To, patch.Middle) >= slack
            && Inside(_wall.To, _wall.From, patch.Middle) >= slack;
    }

    /// <summary>Takes off what the wall keeps: each band by the most that it can throw back to any place of a patch.</summary>
    public void Reflect(in Patch patch, Span<double> factors)
    {
        double leastHertz = LeastHertz(patch) * (1 - RoundingShare);
        for (int band = 0; band < factors.Length; band++)
        {
            factors[band] *= OctaveBand.NominalHertz(band) > leastHertz ? Math.Clamp(_wall.Reflected[band], 0, 1) : 0;
        }
    }

    // The size condition in terms of both distances a and b from the wall and the length L of the way:
    // f > 2c/l² · L³ a b/(a + b)⁴, where a b/(a + b)⁴ is least at an end of the range of b.
    private double LeastHertz(in Patch patch)
    {
        double middle = _mirror.DistanceMetres(patch.Middle);
        double least = Math.Max(0, Math.Abs(middle) - patch.RadiusMetres);
        double most = Math.Abs(middle) + patch.RadiusMetres;
        double length = patch.DistancesMetres(Image.Place).Least;
        double shape = Math.Min(Shape(least), Shape(most));
        double hertz =
            2 * SoundSpeedMetresPerSecond * length * length * length * shape / (_wall.SizeMetres * _wall.SizeMetres);
        return double.IsFinite(hertz) ? hertz : 0;
    }

    private double Shape(double away)
    {
        double sum = _away + away;
        return sum > 0 ? _away * away / (sum * sum * sum * sum) : 0;
    }

    // How far a place lies on the inner side of the ray from the image by one end, seen towards the other end.
    private double Inside(PlanPoint end, PlanPoint other, PlanPoint place)
    {
        double x = end.XMetres - Image.Place.XMetres;
        double y = end.YMetres - Image.Place.YMetres;
        double length = Math.Sqrt((x * x) + (y * y));
        double Side(PlanPoint p) =>
            ((x * (p.YMetres - Image.Place.YMetres)) - (y * (p.XMetres - Image.Place.XMetres))) / length;
        return Side(other) < 0 ? -Side(place) : Side(place);
    }
}
