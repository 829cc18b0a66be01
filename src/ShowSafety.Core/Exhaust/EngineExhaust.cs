using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>Everything about the exhaust of one engine, gathered in a fixed order.</summary>
internal sealed class EngineExhaust
{
    private readonly Engine _engine;
    private readonly EngineJetFrame _frame;
    private readonly StateJets[] _states;
    private readonly List<Figure> _figures = [];
    private readonly List<Zone> _zones = [];
    private readonly List<Finding> _findings = [];
    private readonly Pedigree _pedigree;

    /// <summary>Assesses one engine.</summary>
    public EngineExhaust(Plan plan, Engine engine, EngineJetFrame frame)
    {
        _engine = engine;
        _frame = frame;
        EngineSheet sheet = engine.Sheet ?? new();
        _states = [.. sheet.States.Select(s => new StateJets(JetSource.Of(s, sheet, frame.Air), frame))];
        _pedigree = _states.Aggregate(
            frame.Air.Pedigree,
            (weakest, state) => Pedigrees.Weaker(weakest, state.Source.Pedigree)
        );
        Jet = StrongestJet();
        _findings.AddRange(Missing.Of(engine, [.. _states.Select(s => s.Source)]));
        _findings.AddRange(sheet.States.SelectMany(s => SheetCheck.Findings(engine, sheet, s, frame.Air)));
        AddSource();
        AddRoom(plan.Site.Enclosure);
        AddJetZones(plan);
        _zones.AddRange(NearEngine.StartFlame(engine));
        NearEngine intake = NearEngine.Intake(engine, frame.Air);
        _zones.AddRange(intake.Zones);
        _findings.AddRange(intake.Findings);
        _figures.AddRange(intake.Figures);
    }

    /// <summary>Figures of the engine.</summary>
    public IReadOnlyList<Figure> Figures => _figures;

    /// <summary>Zones of the engine.</summary>
    public IReadOnlyList<Zone> Zones => _zones;

    /// <summary>Findings on the engine.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Strongest jet of the engine.</summary>
    public EngineJet Jet { get; }

    private EngineJet StrongestJet()
    {
        StateJets? strongest = _states
            .Where(s => s.Source.ThrustNewtons is not null)
            .MaxBy(s => s.Source.ThrustNewtons);
        bool known = _states.Length > 0 && !Missing.Thrust([.. _states.Select(s => s.Source)]).Any();
        if (strongest?.Source is not { ThrustNewtons: { } best } source)
        {
            return new(_engine.Id, null, null, false);
        }

        double planning = _states.Max(s => s.Source.ThrustHighNewtons ?? 0);
        Quantity thrust = Quantity.CautiousHigh(best, planning, Unit.Newton) with
        {
            Pedigree = source.Pedigree,
            Citations = ["jet-momentum"],
            Sum = "static-thrust",
        };
        return new(_engine.Id, source.StateId, thrust, known);
    }

    private void AddSource()
    {
        if (Jet.Thrust is { } thrust)
        {
            _figures.Add(new("exhaust.thrust", _engine.Id, thrust) { PartId = Jet.StateId });
        }

        if (_engine.ShaftHeightMetres is { } height)
        {
            Quantity contact = Quantity.CautiousLow(
                Surfaces.ContactMetres(height.Value),
                _frame.FloorContactMetres,
                Unit.Metre
            ) with
            {
                Pedigree = height.Pedigree,
                Citations = ["pope-2000"],
                Sum = "floor-contact",
            };
            _figures.Add(new("exhaust.floor-contact", _engine.Id, contact));
        }
    }

    // Room air that the engine itself warms is the business of indoor air; the zones here start from outside air.
    private void AddRoom(Enclosure? enclosure)
    {
        if (enclosure is { Footprint.Count: >= 3 } && Ring(enclosure).Intersects(SiteGeometry.Point(_engine.Place)))
        {
            _findings.Add(
                new("exhaust.inside-enclosure", Severity.Note)
                {
                    ElementId = _engine.Id,
                    Arguments =
                    [
                        FindingArgument.Of("air", Quantity.Plain(_frame.Air.TemperatureCelsius, Unit.Celsius)),
                    ],
                    Citations = ["jet-heat"],
                }
            );
        }

        static NetTopologySuite.Geometries.Geometry Ring(Enclosure e) =>
            SiteGeometry.Polygon(e.Footprint) is { IsValid: true } valid
                ? valid
                : SiteGeometry.Polygon(e.Footprint).ConvexHull();
    }

    private void AddJetZones(Plan plan)
    {
        var drawn = new List<(ZoneKind Kind, ThresholdZone Zone)>();
        foreach (ZoneKind kind in ZoneKind.Speeds.Concat(ZoneKind.Heats))
        {
            AddWarmDay(kind);
            if (Worst(kind) is { } worst)
            {
                drawn.Add((kind, worst));
                AddZone(kind, worst);
            }
        }

        AddSurfaceFindings(drawn);
        _findings.AddRange(ThingsInJet.Of(plan, _engine, drawn));
        var walls = new WallsInJet(_frame, _states, _pedigree);
        _figures.AddRange(walls.Figures);
        _findings.AddRange(walls.Findings);
    }

    private ThresholdZone? Worst(ZoneKind kind) =>
        _states
            .Select(s => kind.IsSpeed ? s.Speed(kind.Limit) : s.Heat(Rise(kind)))
            .OfType<ThresholdZone>()
            .MaxBy(z => z.PlanningMetres);

    private double Rise(ZoneKind kind) =>
        Math.Max(ExhaustThresholds.SmallestRiseKelvin, kind.Limit - _frame.Air.TemperatureCelsius);

    private void AddZone(ZoneKind kind, ThresholdZone worst)
    {
        Quantity reach = Quantity.CautiousHigh(worst.BestMetres, worst.PlanningMetres, Unit.Metre) with
        {
            Pedigree = _pedigree,
            Citations =
            [
                "fischer-1979",
                "pope-2000",
                kind.IsSpeed ? "choice-gust-factor" : "jet-heat",
                .. worst.MeetsFloor || worst.BesideWall ? ["attached-jet", "launder-rodi-1983"] : (string[])[],
            ],
            Sum = kind.IsSpeed ? "jet-speed-reach" : "jet-heat-reach",
        };
        // The zone of loose things is the crew's; its reach is printed once.
        if (kind.Thing != BurnableKind.LooseItems)
        {
            _figures.Add(new(kind.Key, _engine.Id, reach) { PartId = worst.StateId });
        }

        if (worst.Area.IsEmpty)
        {
            return;
        }

        ZoneFrame frame = worst.BesideWall ? ZoneFrame.Site : ZoneFrame.Engine;
        _zones.Add(
            new(kind.Row, _engine.Id, kind.Effect, kind.Whom, kind.When, frame, worst.Area)
            {
                Boundary = Quantity.Plain(kind.Limit, kind.Unit) with { Citations = kind.Citations },
                Reach = reach,
                Part = kind.Part,
                Citations = kind.Citations,
            }
        );
    }

    private void AddWarmDay(ZoneKind kind)
    {
        if (!kind.IsSpeed && kind.Thing is null && kind.Limit - _frame.Air.TemperatureCelsius < 1)
        {
            _findings.Add(
                new("exhaust.day-as-hot-as-limit", Severity.Act)
                {
                    ElementId = _engine.Id,
                    Field = "WeatherBand.HighestTemperatureCelsius",
                    Row = kind.Row,
                    CannotTell = true,
                    Arguments =
                    [
                        FindingArgument.Of("air", Quantity.Plain(_frame.Air.TemperatureCelsius, Unit.Celsius)),
                        FindingArgument.Of("limit", Quantity.Plain(kind.Limit, Unit.Celsius)),
                        FindingArgument.Of("rise", Quantity.Plain(ExhaustThresholds.SmallestRiseKelvin, Unit.Kelvin)),
                    ],
                    Citations = kind.Citations,
                }
            );
        }
    }

    private void AddSurfaceFindings(List<(ZoneKind Kind, ThresholdZone Zone)> drawn)
    {
        if (drawn.Any(d => d.Zone.MeetsFloor))
        {
            _findings.Add(
                new("exhaust.meets-floor", Severity.Note)
                {
                    ElementId = _engine.Id,
                    Arguments =
                    [
                        FindingArgument.Of(
                            "distance",
                            Quantity.Plain(_frame.FloorContactMetres, Unit.Metre) with
                            {
                                Sum = "floor-contact",
                            }
                        ),
                    ],
                    Citations = ["attached-jet", "pope-2000", "launder-rodi-1983"],
                }
            );
        }

        if (drawn.Any(d => d.Zone.BesideWall))
        {
            _findings.Add(
                new("exhaust.beside-wall", Severity.Note) { ElementId = _engine.Id, Citations = ["attached-jet"] }
            );
        }
    }
}
