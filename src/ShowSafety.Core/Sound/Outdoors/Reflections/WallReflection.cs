using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Sound.Outdoors.Reflections;

/// <summary>
/// Sound on its way from a source to a receiver by way of one wall, as from the source's image behind it: first order,
/// ISO 9613-2:1996 clause 7.5.
/// </summary>
/// <param name="Wall">The wall.</param>
/// <param name="Mirror">The line of the wall, the source on its positive side.</param>
/// <param name="Point">Where on the wall the sound is thrown back.</param>
/// <param name="SourceLegMetres">d_so, from the source to that point.</param>
/// <param name="ReceiverLegMetres">d_or, from that point to the receiver.</param>
/// <param name="IncidenceCosine">cos β, β the angle of incidence from the wall's normal, above 0 to 1.</param>
public sealed record WallReflection(
    ReflectingWall Wall,
    MirrorLine Mirror,
    RaisedPoint Point,
    double SourceLegMetres,
    double ReceiverLegMetres,
    double IncidenceCosine
)
{
    private const double SoundSpeedMetresPerSecond = 340;
    private const double TouchMetres = 1e-9;
    private const double GrazingCosine = 1e-6;

    /// <summary>Length of the way in metres: the straight distance from the image to the receiver.</summary>
    public double LengthMetres => SourceLegMetres + ReceiverLegMetres;

    /// <summary>
    /// The frequency in hertz above which the wall is large enough, equation (19) with a sound speed of 340 m/s:
    /// 1/λ > 2/(l_min cos β)² · d_so d_or/(d_so + d_or).
    /// </summary>
    public double LeastHertz
    {
        get
        {
            double seen = Wall.SizeMetres * IncidenceCosine;
            double leg = SourceLegMetres * ReceiverLegMetres / LengthMetres;
            // At the wall itself any size is large enough.
            return leg > 0 ? Math.Min(double.MaxValue, SoundSpeedMetresPerSecond * 2 * leg / (seen * seen)) : 0;
        }
    }

    /// <summary>
    /// Share of the energy that arrives in an octave band, 0 to 1: ρ where the wall is large enough for the nominal
    /// midband wavelength, otherwise 0. The standard leaves out ρ under 0.2; here it counts.
    /// </summary>
    /// <param name="band">Octave band, 0 (63 Hz) to 7 (8 kHz).</param>
    public double EnergyShare(int band) =>
        OctaveBand.NominalHertz(band) > LeastHertz ? Math.Clamp(Wall.Reflected[band], 0, 1) : 0;

    /// <summary>The way by a wall, or null when no point of the wall throws sound from the one to the other.</summary>
    /// <param name="source">The source.</param>
    /// <param name="receiver">The receiver.</param>
    /// <param name="wall">The wall.</param>
    public static WallReflection? Of(RaisedPoint source, RaisedPoint receiver, ReflectingWall wall)
    {
        double length = wall.From.DistanceMetres(wall.To);
        if (!(length > 0) || !(wall.SizeMetres > 0))
        {
            return null;
        }

        (MirrorLine mirror, double from, double to) = Facing(wall, length, source.Place, receiver.Place);
        // On two sides, or both in the wall's own plane: nothing is thrown back.
        if (to < 0 || !(from + to > TouchMetres))
        {
            return null;
        }

        RaisedPoint point = MirrorPoint(source, receiver, mirror, from, from / (from + to));
        return IsOnWall(point, wall, length) ? Through(source, receiver, wall, mirror, point, from + to) : null;
    }

    private static WallReflection? Through(
        RaisedPoint source,
        RaisedPoint receiver,
        ReflectingWall wall,
        MirrorLine mirror,
        RaisedPoint point,
        double across
    )
    {
        double first = source.DistanceMetres(point);
        double last = point.DistanceMetres(receiver);
        double cosine = Math.Min(1, across / (first + last));
        // Along the wall the size condition can't be met, and what is left of the cosine is rounding.
        return cosine > GrazingCosine ? new(wall, mirror, point, first, last, cosine) : null;
    }

    private static (MirrorLine Mirror, double From, double To) Facing(
        ReflectingWall wall,
        double length,
        PlanPoint source,
        PlanPoint receiver
    )
    {
        double x = (wall.To.YMetres - wall.From.YMetres) / length;
        double y = (wall.From.XMetres - wall.To.XMetres) / length;
        double from = Away(source);
        double to = Away(receiver);
        // Somebody in the wall's own plane is on the side of the other.
        double sign = from != 0 ? Math.Sign(from) : Math.Sign(to);
        double offset = (x * wall.From.XMetres) + (y * wall.From.YMetres);
        return (new(sign * x, sign * y, sign * offset), sign * from, sign * to);

        double Away(PlanPoint place)
        {
            double away = (x * (place.XMetres - wall.From.XMetres)) + (y * (place.YMetres - wall.From.YMetres));
            return Math.Abs(away) > TouchMetres ? away : 0;
        }
    }

    private static RaisedPoint MirrorPoint(
        RaisedPoint source,
        RaisedPoint receiver,
        MirrorLine mirror,
        double from,
        double share
    )
    {
        var image = new PlanPoint(
            source.Place.XMetres - (2 * from * mirror.NormalX),
            source.Place.YMetres - (2 * from * mirror.NormalY)
        );
        return new(
            PlanLines.Between(image, receiver.Place, share),
            source.HeightMetres + (share * (receiver.HeightMetres - source.HeightMetres))
        );
    }

    private static bool IsOnWall(RaisedPoint point, ReflectingWall wall, double length)
    {
        double along =
            (
                ((point.Place.XMetres - wall.From.XMetres) * (wall.To.XMetres - wall.From.XMetres))
                + ((point.Place.YMetres - wall.From.YMetres) * (wall.To.YMetres - wall.From.YMetres))
            ) / length;
        return along >= -TouchMetres
            && along <= length + TouchMetres
            && !(point.HeightMetres > wall.HeightMetres + TouchMetres);
    }
}
