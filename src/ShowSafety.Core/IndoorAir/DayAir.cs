using ShowSafety.Core.Measures;

namespace ShowSafety.Core.IndoorAir;

/// <summary>The air of one day, best estimate and planning, substance by substance.</summary>
internal sealed class DayAir
{
    private readonly Dictionary<AirSubstance, (RoomHistory Best, RoomHistory Planning)> _histories = [];
    private readonly RoomFacts _room;

    /// <summary>Solves a day in a room whose volume and fresh air are known.</summary>
    public DayAir(RoomFacts room, RoomDay day)
    {
        _room = room;
        Day = day;
        foreach (AirSubstance substance in Enum.GetValues<AirSubstance>())
        {
            SourceStretch[] stretches = [.. Stretches(day, substance)];
            if (stretches.Length > 0)
            {
                _histories[substance] = (
                    new(Balance(room, substance, false), stretches),
                    new(Balance(room, substance, true), stretches)
                );
            }
        }

        Comparisons = [.. AirLimits.All.Select(Compare).OfType<AirComparison>()];
    }

    /// <summary>The day.</summary>
    public RoomDay Day { get; }

    /// <summary>Every limit whose substance is known.</summary>
    public ValueList<AirComparison> Comparisons { get; }

    /// <summary>Largest share of any visitors' limit, to find the worst day.</summary>
    public double WorstShare =>
        Comparisons
            .Where(c => c.Limit.Group == AirLimitGroup.Visitors)
            .Select(c => c.LargestMean.Planning / c.Limit.Value)
            .DefaultIfEmpty(0)
            .Max();

    /// <summary>Last shut-down, minutes after the first light-up.</summary>
    public double EndMinutes => Day.Steps.Max(s => s.ToSeconds) / 60;

    /// <summary>Planning history of a substance; null where its source is unknown.</summary>
    public RoomHistory? Planning(AirSubstance substance) =>
        _histories.TryGetValue(substance, out (RoomHistory Best, RoomHistory Planning) pair) ? pair.Planning : null;

    /// <summary>Highest value of the day; null where the source is unknown.</summary>
    public Quantity? Peak(AirSubstance substance, Unit unit) =>
        _histories.TryGetValue(substance, out (RoomHistory Best, RoomHistory Planning) pair)
            ? Mean(pair, 0, unit)
            : null;

    /// <summary>Dose of carbon monoxide over the day's runs, 1 at incapacitation; null where it cannot be told.</summary>
    public Quantity? CarbonMonoxideDose()
    {
        if (!_histories.TryGetValue(AirSubstance.CarbonMonoxide, out (RoomHistory Best, RoomHistory Planning) pair))
        {
            return null;
        }

        double best = Dose(pair.Best);
        return Quantity.CautiousHigh(best, Math.Max(best, Dose(pair.Planning)), Unit.One) with
        {
            Citations = ["iso-13571-fed"],
            Sum = "co-dose",
        };
    }

    /// <summary>
    /// Minutes after the first light-up at which all visitors' values have fallen to every limit of their substance,
    /// so that a stay of any length keeps them; null for never.
    /// </summary>
    public double? ClearMinutes()
    {
        double latest = EndMinutes;
        foreach (AirLimit limit in AirLimits.All.Where(l => l.Group == AirLimitGroup.Visitors))
        {
            if (Planning(limit.Substance) is { } history)
            {
                if (history.ClearAt(limit.Value) is not { } seconds)
                {
                    return null;
                }

                latest = Math.Max(latest, seconds / 60);
            }
        }

        return latest;
    }

    /// <summary>First moment at which the room is warmer than the model describes, minutes; null for never.</summary>
    public double? OutOfRangeMinutes() =>
        Planning(AirSubstance.Temperature)?.FirstOver(0, _room.OutsideCelsius + AirLimits.LargestRiseKelvin) / 60;

    private static double Dose(RoomHistory history) =>
        Gases.CarbonMonoxideDose(
            Gases.Ppm((history.IntegralTo(history.EndSeconds) - history.IntegralTo(0)) / 60, Gases.CarbonMonoxide)
        );

    private AirComparison? Compare(AirLimit limit)
    {
        if (!_histories.TryGetValue(limit.Substance, out (RoomHistory Best, RoomHistory Planning) pair))
        {
            return null;
        }

        double window = 60 * limit.WindowMinutes;
        Quantity mean = Mean(pair, window, limit.Unit) with { Citations = [limit.Citation, "room-balance"] };
        return new(limit, mean, pair.Planning.FirstOver(window, limit.Value) / 60);
    }

    private Quantity Mean((RoomHistory Best, RoomHistory Planning) pair, double windowSeconds, Unit unit)
    {
        double best = pair.Best.LargestMean(windowSeconds).Mean;
        double planning = Math.Max(best, pair.Planning.LargestMean(windowSeconds).Mean);
        return Quantity.CautiousHigh(best, planning, unit) with
        {
            Pedigree =
                _room.Volume!.Pedigree > _room.FreshAir!.Pedigree ? _room.Volume.Pedigree : _room.FreshAir.Pedigree,
            Citations = ["room-balance"],
            Sum = "room-concentration",
        };
    }

    private static RoomBalance Balance(RoomFacts room, AirSubstance substance, bool planning) =>
        substance switch
        {
            AirSubstance.Temperature => room.Heat(planning),
            AirSubstance.CarbonDioxide => room.Gas(planning, AirLimits.OutdoorCarbonDioxidePpm),
            _ => room.Gas(planning, 0),
        };

    private static IEnumerable<SourceStretch> Stretches(RoomDay day, AirSubstance substance) =>
        from step in day.Steps
        let source = RoomSources.Of(step, substance)
        where source is not null && step.ToSeconds > step.FromSeconds
        select new SourceStretch(step.FromSeconds, step.ToSeconds, source.Value);
}
