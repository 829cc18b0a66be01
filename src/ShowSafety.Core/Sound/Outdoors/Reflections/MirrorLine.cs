using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors.Reflections;

/// <summary>The line of an upright wall's face as a mirror, with the source on its positive side.</summary>
/// <param name="NormalX">x of the unit normal towards the source.</param>
/// <param name="NormalY">y of that normal.</param>
/// <param name="Offset">Normal times a point on the line.</param>
public sealed record MirrorLine(double NormalX, double NormalY, double Offset)
{
    private const double RoundingMetres = 1e-9;

    /// <summary>Distance of a place from the line in metres, negative on the side away from the source.</summary>
    public double DistanceMetres(PlanPoint place) => (place.XMetres * NormalX) + (place.YMetres * NormalY) - Offset;

    /// <summary>Whether any place of a patch is on the source's side.</summary>
    public bool HasOnSourceSide(in Patch patch)
    {
        Span<PlanPoint> corners = stackalloc PlanPoint[Patch.CornerCount];
        patch.WriteCorners(corners);
        foreach (PlanPoint corner in corners)
        {
            if (DistanceMetres(corner) >= -RoundingMetres)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The image of an emitter in this line.</summary>
    public Emitter Image(Emitter source)
    {
        double away = 2 * DistanceMetres(source.Place);
        double along = 2 * ((source.AxisX * NormalX) + (source.AxisY * NormalY));
        return new(
            new(source.Place.XMetres - (away * NormalX), source.Place.YMetres - (away * NormalY)),
            source.AxisX - (along * NormalX),
            source.AxisY - (along * NormalY)
        );
    }
}
