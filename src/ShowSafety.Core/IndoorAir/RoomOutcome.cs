using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.IndoorAir;

/// <summary>Figures, zone and findings of the worst day.</summary>
internal sealed class RoomOutcome
{
    private readonly RoomFacts _room;
    private readonly List<Figure> _figures = [];
    private readonly List<Finding> _findings = [];

    /// <summary>Draws the conclusions; without a solved day only what the room itself tells.</summary>
    public RoomOutcome(RoomFacts room, IReadOnlyList<Engine> engines, DayAir? air, bool canTell)
    {
        _room = room;
        AddRoom();
        AddCeiling(engines);
        if (air is null)
        {
            return;
        }

        AddPeaks(air);
        AddExceeded(air, AirLimitGroup.Everyone, Severity.Stop);
        AddExceeded(air, AirLimitGroup.Visitors, Severity.Stop);
        AddExceeded(air, AirLimitGroup.Workers, Severity.Act);
        AddRange(air);
        AddVisitorsZone(air, canTell);
    }

    /// <summary>Figures.</summary>
    public ValueList<Figure> Figures => [.. _figures];

    /// <summary>The zone of row 16, when visitors must leave.</summary>
    public ValueList<Zone> Zones { get; private set; } = [];

    /// <summary>Findings.</summary>
    public ValueList<Finding> Findings => [.. _findings];

    private string Id => _room.Enclosure.Id;

    private void AddRoom()
    {
        if (_room.Volume is { } volume)
        {
            _figures.Add(new("indoor-air.volume", Id, volume));
        }

        if (_room.FreshAir is { } fresh)
        {
            _figures.Add(new("indoor-air.fresh-air", Id, fresh));
        }
    }

    private void AddPeaks(DayAir air)
    {
        Add("indoor-air.peak-carbon-monoxide", air.Peak(AirSubstance.CarbonMonoxide, Unit.MilligramPerCubicMetre));
        Add("indoor-air.peak-carbon-dioxide", air.Peak(AirSubstance.CarbonDioxide, Unit.PartPerMillion));
        Add("indoor-air.peak-nitrogen-dioxide", air.Peak(AirSubstance.NitrogenDioxide, Unit.MilligramPerCubicMetre));
        Add("indoor-air.co-dose", air.CarbonMonoxideDose());
        if (air.OutOfRangeMinutes() is null)
        {
            Add(
                "indoor-air.peak-temperature",
                air.Peak(AirSubstance.Temperature, Unit.Celsius) is { } peak ? peak with { Sum = "room-heat" } : null
            );
        }
    }

    private void Add(string key, Quantity? value)
    {
        if (value is not null)
        {
            _figures.Add(new(key, Id, value));
        }
    }

    // One finding a substance and group: the limit passed first.
    private void AddExceeded(DayAir air, AirLimitGroup group, Severity severity) =>
        _findings.AddRange(
            air.Comparisons.Where(c => c.Limit.Group == group && c.OverFromMinutes is not null)
                .GroupBy(c => c.Limit.Substance)
                .Select(g => g.MinBy(c => c.OverFromMinutes)!)
                .Select(c => Over(c, severity))
        );

    private Finding Over(AirComparison passed, Severity severity) =>
        new(CodeOf(passed.Limit), severity)
        {
            ElementId = Id,
            Arguments =
            [
                FindingArgument.Of("substance", NameOf(passed.Limit.Substance)),
                FindingArgument.Of("mean", passed.LargestMean),
                FindingArgument.Of("limit", Quantity.Plain(passed.Limit.Value, passed.Limit.Unit)),
                FindingArgument.Of("window", Quantity.Plain(passed.Limit.WindowMinutes, Unit.Minute)),
                FindingArgument.Of("moment", Quantity.Plain(passed.OverFromMinutes ?? 0, Unit.Minute)),
            ],
            Row = ZoneRow.IndoorAir,
            Citations = [passed.Limit.Citation],
        };

    private void AddRange(DayAir air)
    {
        if (air.OutOfRangeMinutes() is { } minutes)
        {
            _findings.Add(
                new("indoor-air.rise-out-of-range", Severity.Stop)
                {
                    ElementId = Id,
                    Arguments =
                    [
                        FindingArgument.Of("rise", Quantity.Plain(AirLimits.LargestRiseKelvin, Unit.Kelvin)),
                        FindingArgument.Of("moment", Quantity.Plain(minutes, Unit.Minute)),
                    ],
                    CannotTell = true,
                    Row = ZoneRow.IndoorAir,
                    Citations = ["choice-largest-rise"],
                }
            );
        }
    }

    private void AddVisitorsZone(DayAir air, bool canTell)
    {
        AirComparison? first = air
            .Comparisons.Where(c =>
                c.Limit.Group is AirLimitGroup.Visitors or AirLimitGroup.Everyone && c.OverFromMinutes is not null
            )
            .MinBy(c => c.OverFromMinutes);
        if (first is null)
        {
            AddKept(canTell && air.OutOfRangeMinutes() is null);
            return;
        }

        Add("indoor-air.visitors-out-from", Quantity.Plain(first.OverFromMinutes ?? 0, Unit.Minute));
        AddClearing(air);
        Zones =
        [
            new(
                ZoneRow.IndoorAir,
                Id,
                ZoneEffect.Excludes,
                Audience.Visitors | Audience.Children,
                Phases.Start | Phases.Running | Phases.RunDown | Phases.CoolDown,
                ZoneFrame.Site,
                _room.Outline
            )
            {
                Boundary = Quantity.Plain(first.Limit.Value, first.Limit.Unit) with
                {
                    Citations = [first.Limit.Citation],
                },
                Citations = [first.Limit.Citation],
            },
        ];
    }

    private void AddKept(bool canTell)
    {
        if (canTell)
        {
            _findings.Add(
                new("indoor-air.guidance-kept", Severity.Note)
                {
                    ElementId = Id,
                    Row = ZoneRow.IndoorAir,
                    Citations = ["room-balance"],
                }
            );
        }
    }

    private void AddClearing(DayAir air)
    {
        if (air.ClearMinutes() is { } clear)
        {
            Add(
                "indoor-air.time-to-clear",
                Quantity.Plain(clear - air.EndMinutes, Unit.Minute) with
                {
                    Citations = ["room-balance"],
                    Sum = "room-clearing",
                }
            );
            return;
        }

        _findings.Add(
            new("indoor-air.never-clears", Severity.Stop)
            {
                ElementId = Id,
                Field = "Enclosure.FreshAirCubicMetresPerSecond",
                Row = ZoneRow.IndoorAir,
                Citations = ["room-balance"],
            }
        );
    }

    private void AddCeiling(IReadOnlyList<Engine> engines)
    {
        double? fuel = engines
            .Select(e => (e, Flow: e.Sheet?.States.Max(s => s.FuelFlowKilogramsPerSecond?.Value)))
            .Sum(x => x.Flow);
        if (_room.Enclosure.EavesHeightMetres is not { } eaves || !(fuel > 0))
        {
            return;
        }

        double lowest = engines.Min(e => eaves.Value - (e.ShaftHeightMetres?.Value ?? 0));
        double kilowatts = engines.Sum(PowerKilowatts);
        Quantity rise = Quantity.CautiousHigh(
            CeilingJet.RiseKelvin(kilowatts, Math.Max(0.5, eaves.Value)),
            CeilingJet.RiseKelvin(kilowatts, Math.Max(0.5, Math.Min(lowest, eaves.Value))),
            Unit.Kelvin
        ) with
        {
            Citations = ["alpert-1972"],
            Sum = "ceiling-jet",
        };
        Add("indoor-air.ceiling-rise", rise);
        if (_room.Enclosure.HeatDetectors != false && _room.OutsideCelsius + rise.Planning >= AirLimits.DetectorCelsius)
        {
            _findings.Add(
                new("indoor-air.heat-detectors", Severity.Act)
                {
                    ElementId = Id,
                    Field = "Enclosure.HeatDetectors",
                    Arguments = [FindingArgument.Of("rise", rise)],
                    Citations = ["alpert-1972", "en-54-5"],
                }
            );
        }
    }

    private static double PowerKilowatts(Engine engine) =>
        (engine.Sheet?.States.Max(s => s.FuelFlowKilogramsPerSecond?.Value) ?? 0)
        * 1000
        * (engine.Sheet?.LowerHeatingValueMegajoulesPerKilogram)
            .Or<EngineSheet>(nameof(EngineSheet.LowerHeatingValueMegajoulesPerKilogram))
            .Value;

    private static string CodeOf(AirLimit limit) =>
        (limit.Group, limit.WindowMinutes > 0) switch
        {
            (AirLimitGroup.Visitors, true) => "indoor-air.visitors-over",
            (AirLimitGroup.Visitors, false) => "indoor-air.visitors-over-at-once",
            (AirLimitGroup.Workers, true) => "indoor-air.workers-over",
            (AirLimitGroup.Workers, false) => "indoor-air.workers-over-at-once",
            _ => "indoor-air.danger-at-once",
        };

    private static string NameOf(AirSubstance substance) =>
        substance switch
        {
            AirSubstance.CarbonMonoxide => "carbon monoxide",
            AirSubstance.CarbonDioxide => "carbon dioxide",
            AirSubstance.NitrogenDioxide => "nitrogen dioxide",
            AirSubstance.NitricOxide => "nitric oxide",
            _ => "air temperature",
        };
}
