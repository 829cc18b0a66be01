using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// From a reading at a microphone to the power levels of an omnidirectional source that would be as loud there, with
/// the very path that predicts levels later.
/// </summary>
public static class MeasurementReduction
{
    /// <summary>Whether the ground of a reading is counted as hard (floor image) or porous.</summary>
    public static bool IsHard(GroundKind ground) => ground is GroundKind.Hard or GroundKind.Boards;

    /// <summary>Whether distance and heights of a reading describe a place: finite, distance above 0.</summary>
    public static bool HasPlace(SoundMeasurement reading) =>
        reading.DistanceMetres > 0
        && double.IsFinite(reading.DistanceMetres)
        && double.IsFinite(reading.MicrophoneHeightMetres)
        && double.IsFinite(reading.SourceHeightMetres)
        && reading.MicrophoneHeightMetres >= 0
        && reading.SourceHeightMetres >= 0;

    /// <summary>Where a reading that <see cref="HasPlace"/> was taken, seen from the nozzle.</summary>
    public static MicrophonePlace PlaceOf(SoundMeasurement reading) =>
        new(
            reading.DistanceMetres,
            reading.SourceHeightMetres,
            reading.MicrophoneHeightMetres,
            GroundFactors.Even(SiteGround.FactorOf(reading.Ground))
        );

    /// <summary>
    /// Angle between the exhaust axis and the line from the nozzle to the microphone in degrees, which is a little
    /// nearer to 90 than the angle along the ground; null when the reading has no angle.
    /// </summary>
    public static double? SlantAngleDegrees(SoundMeasurement reading)
    {
        if (reading.AngleDegrees is not { } along || !double.IsFinite(along))
        {
            return null;
        }

        double slant = OutdoorPath.SlantMetres(
            reading.DistanceMetres,
            reading.SourceHeightMetres - reading.MicrophoneHeightMetres
        );
        double cosine = Math.Cos(Heading.ToRadians(along)) * reading.DistanceMetres / slant;
        return Heading.ToDegrees(Math.Acos(Math.Clamp(cosine, -1, 1)));
    }
}
