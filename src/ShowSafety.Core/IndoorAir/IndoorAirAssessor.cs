using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.IndoorAir;

/// <summary>Assesses the air inside the enclosure over the programme.</summary>
public static class IndoorAirAssessor
{
    // The series runs on while the room clears, up to this many minutes after the last shut-down.
    private const double LongestTailMinutes = 240;

    /// <summary>
    /// The room's air from run to run against public guidance and limits at work. Outdoors nothing is said. Never throws
    /// on an odd plan: what is missing is a finding.
    /// </summary>
    public static IndoorAirAssessment Assess(Plan plan)
    {
        if (plan.Site.Enclosure is not { } enclosure || plan.Engines.Count == 0)
        {
            return new();
        }

        var room = new RoomFacts(plan, enclosure);
        // A footprint that encloses nothing cannot tell who is outside, so every engine counts as inside.
        Engine[] inside = [.. plan.Engines.Where(e => room.Outline.IsEmpty || room.Holds(e) || room.IsBlownInto(e))];
        if (inside.Length == 0)
        {
            return new();
        }

        IReadOnlyList<RoomDay> days = RoomDay.Of(plan, inside);
        DayAir? worst = room.IsKnown ? days.Select(d => new DayAir(room, d)).MaxBy(d => d.WorstShare) : null;
        Finding[] missing = [.. MissingAir.Of(room, inside, days)];
        bool canTell = worst is not null && missing.All(f => !f.CannotTell);
        var outcome = new RoomOutcome(room, inside, worst, canTell);
        return new()
        {
            Figures = outcome.Figures,
            Zones = outcome.Zones,
            Findings = [.. missing, .. outcome.Findings],
            Day = worst?.Day.Day,
            FirstLightUp = worst?.Day.FirstLightUp,
            Series = worst is null ? [] : Series(worst),
            Comparisons = worst?.Comparisons ?? [],
            CanTell = canTell,
        };
    }

    private static ValueList<RoomAirPoint> Series(DayAir air)
    {
        double end = Math.Min(air.ClearMinutes() ?? double.PositiveInfinity, air.EndMinutes + LongestTailMinutes);
        IEnumerable<double> minutes = Enumerable
            .Range(0, (int)Math.Floor(end) + 1)
            .Select(m => (double)m)
            .Concat(air.Day.Steps.SelectMany(s => new[] { s.FromSeconds / 60, s.ToSeconds / 60 }))
            .Append(end);
        double range = air.OutOfRangeMinutes() ?? double.PositiveInfinity;
        return
        [
            .. minutes
                .Distinct()
                .Order()
                .Select(m => new RoomAirPoint(
                    m,
                    air.Planning(AirSubstance.CarbonMonoxide)?.At(60 * m),
                    air.Planning(AirSubstance.CarbonDioxide)?.At(60 * m),
                    air.Planning(AirSubstance.NitrogenDioxide)?.At(60 * m),
                    m < range ? air.Planning(AirSubstance.Temperature)?.At(60 * m) : null
                )),
        ];
    }
}
