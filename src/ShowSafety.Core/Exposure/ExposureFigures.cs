using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure;

/// <summary>The printed figures of a person's exposure.</summary>
public static class ExposureFigures
{
    /// <summary>The figures that are known, in a fixed order; the part is adults or children.</summary>
    public static IEnumerable<Figure> Of(PersonExposure person)
    {
        (string Key, Quantity? Value)[] all =
        [
            ("exposure.highest-level", person.HighestLevel),
            ("exposure.daily-level", person.DailyLevel),
            ("exposure.whole-day-level", person.WholeDayLevel),
            ("exposure.weekly-level", person.WeeklyLevel),
            ("exposure.sound-exposure", person.SoundExposure),
            ("exposure.peak", person.Peak),
            ("exposure.level-at-ear", person.LevelAtEar),
        ];
        string part = person.Part == PersonPart.Adults ? "adults" : "children";
        return all.Where(figure => figure.Value is not null)
            .Select(figure => new Figure(figure.Key, person.GroupId, figure.Value!) { PartId = part });
    }
}
