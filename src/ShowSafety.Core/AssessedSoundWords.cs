using System.Globalization;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core;

/// <summary>Says how a part of the sound gets to a place.</summary>
internal static class AssessedSoundWords
{
    // What changes a level by less is left unsaid.
    private const double LeastDb = 0.05;

    /// <summary>The sentence about a part.</summary>
    public static string Of(LevelPart part, Phrasebook names)
    {
        string level = ValueFormat.Number(part.LevelDbA, Unit.DecibelA);
        string engine = names.Name(part.EngineId) ?? part.EngineId;
        return part.Kind switch
        {
            LevelPartKind.Straight => $"Straight from {engine}: {level}{Way(part.Terms!)}.",
            LevelPartKind.Wall =>
                $"{engine} thrown back by {names.Name(part.StructureId!)}: {level}{Way(part.Terms!)}.",
            _ => $"{engine} as the sound of {names.Name(part.StructureId!)}: {level}.",
        };
    }

    private static string Way(LevelTerms terms)
    {
        string[] taken =
        [
            .. new (double Db, string By)[]
            {
                (terms.SpreadDb, "distance"),
                (terms.AirDb, "the air"),
                (terms.GroundDb, "the ground"),
                (terms.ScreenDb, $"what stands in the way ({Ends(terms.ScreenBandsDb)})"),
                (terms.WallDb, "the wall"),
            }
                .Where(t => t.Db >= LeastDb)
                .Select(t => $"{ValueFormat.Number(t.Db, Unit.Decibel)} by {t.By}"),
        ];
        string added =
            terms.GroundDb <= -LeastDb ? $"; the ground adds {ValueFormat.Number(-terms.GroundDb, Unit.Decibel)}" : "";
        string power = ValueFormat.Number(terms.PowerDbA, Unit.DecibelA);
        string angle = terms.AngleDegrees.ToString("0", CultureInfo.InvariantCulture) + "°";
        return $" of a power level of {power} at {angle} from the exhaust, taken off {Listed(taken)}{added}";
    }

    // Low notes bend round what stands in the way: both ends of the bands show by how much.
    private static string Ends(BandValues screenDb) =>
        $"{ValueFormat.Number(screenDb[0], Unit.Decibel)} at 63 Hz, {ValueFormat.Number(screenDb[OctaveBand.Count - 1], Unit.Decibel)} at 8 kHz";

    private static string Listed(string[] parts) =>
        parts.Length switch
        {
            0 => "nothing",
            1 => parts[0],
            _ => $"{string.Join(", ", parts[..^1])} and {parts[^1]}",
        };
}
