using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>The part of the gate that asks where a reading was taken: in the open, in a described room, or in an unknown one.</summary>
internal static class RoomGate
{
    private const string Field = "SoundMeasurement.Room";

    /// <summary>Parts of the uncertainty; says what the room did.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="room">What was taken off for the room, or null.</param>
    /// <param name="say">Where it is said.</param>
    public static ValueList<UncertaintyPart> Pass(SoundMeasurement reading, RoomCorrection? room, Lapses say)
    {
        if (reading.Outdoors)
        {
            if (reading.Room is not null)
            {
                say.About("sound.room-though-outdoors", Severity.Act, Field);
            }

            return [];
        }

        if (room is null)
        {
            string code = reading.Room is null ? "sound.measured-indoors" : "sound.room-incomplete";
            say.About(code, Severity.Act, reading.Room is null ? "SoundMeasurement.Outdoors" : Field);
            return [LevelUncertainty.Indoors];
        }

        (string verdict, Severity severity) = room.Verdict switch
        {
            RoomVerdict.Engineering => ("sound.room-taken-off", Severity.Note),
            RoomVerdict.Survey => ("sound.room-live", Severity.Act),
            _ => ("sound.room-too-live", Severity.Act),
        };
        say.About(verdict, severity, Field, SoundFindings.Decibels("correction", room.FormulaDbA));
        return
        [
            LevelUncertainty.Indoors,
            .. room.Verdict == RoomVerdict.Engineering ? [] : new[] { LevelUncertainty.LiveRoom },
        ];
    }
}
