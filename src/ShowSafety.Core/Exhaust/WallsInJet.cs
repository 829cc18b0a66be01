using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exhaust;

/// <summary>
/// Walls the jet strikes: air temperature and pressure at the hottest and hardest hit points. No jet along the wall is
/// calculated, and no wall is credited with stopping the jet.
/// </summary>
internal sealed class WallsInJet
{
    // Design wind pressure of tents up to 5 m high: EN 13782 (memory).
    private const double TentDesignPascals = 500;
    private const int Samples = 60;

    private readonly EngineJetFrame _frame;
    private readonly IReadOnlyList<StateJets> _states;
    private readonly Pedigree _pedigree;

    /// <summary>Looks at every wall.</summary>
    public WallsInJet(EngineJetFrame frame, IReadOnlyList<StateJets> states, Pedigree pedigree)
    {
        _frame = frame;
        _states = states;
        _pedigree = pedigree;
        WallHit[] hits =
        [
            .. frame
                .Pieces.Select(Hit)
                .OfType<WallHit>()
                .GroupBy(h => h.OwnerId)
                .Select(g => g.Aggregate((a, b) => a.Worse(b))),
        ];
        Figures = [.. hits.SelectMany(FiguresOf)];
        Findings = [.. hits.Select(FindingOf), .. hits.Where(IsBlownIn).Select(BlownIn)];
    }

    /// <summary>Figures at the walls.</summary>
    public ValueList<Figure> Figures { get; }

    /// <summary>Findings on the walls.</summary>
    public ValueList<Finding> Findings { get; }

    private WallHit? Hit(WallPiece piece)
    {
        WallHit[] hits = [.. Points(piece).SelectMany(p => _states.Select(s => At(piece, s, p))).OfType<WallHit>()];
        return hits.Length == 0 ? null : hits.Aggregate((a, b) => a.Worse(b));
    }

    // Even points and the one where the axis meets the piece, if it does.
    private IEnumerable<Coordinate> Points(WallPiece piece)
    {
        Coordinate from = SiteGeometry.Coordinate(piece.From);
        Coordinate to = SiteGeometry.Coordinate(piece.To);
        (double axialFrom, double sideFrom) = Signed(from);
        (double axialTo, double sideTo) = Signed(to);
        IEnumerable<double> shares = Enumerable.Range(0, Samples + 1).Select(i => (double)i / Samples);
        if (sideFrom * sideTo < 0)
        {
            shares = shares.Append(sideFrom / (sideFrom - sideTo));
        }

        return axialFrom < 0 && axialTo < 0
            ? []
            : shares.Select(t => new Coordinate(from.X + (t * (to.X - from.X)), from.Y + (t * (to.Y - from.Y))));
    }

    private (double Axial, double Side) Signed(Coordinate point)
    {
        (double sin, double cos) = Math.SinCos(Heading.ToRadians(_frame.Engine.ExhaustHeadingDegrees));
        double x = point.X - _frame.Engine.Place.XMetres;
        double y = point.Y - _frame.Engine.Place.YMetres;
        return ((x * sin) + (y * cos), (x * cos) - (y * sin));
    }

    private WallHit? At(WallPiece piece, StateJets state, Coordinate point)
    {
        (double axial, double radial) = _frame.Of(point);
        var planes = new Planes(axial > _frame.FloorContactMetres, false);
        if (axial < 0 || state.PlanningSpeed(planes) is not { } speed)
        {
            return null;
        }

        double planningSpeed = speed.ValueAt(axial, radial);
        double? rise = state.PlanningRise(planes)?.ValueAt(axial, radial);
        double? bestRise = state.BestRise?.ValueAt(axial, radial);
        bool struck =
            planningSpeed >= ExhaustThresholds.PublicSpeedMetresPerSecond
            || _frame.Air.TemperatureCelsius + rise >= ExhaustThresholds.FabricCelsius;
        return struck
            ? new(piece.OwnerId, piece.Kind, SiteGeometry.PlanPoint(point), Math.Max(axial, 0.01))
            {
                BestRise = Math.Min(bestRise ?? 0, rise ?? 0),
                PlanningRise = rise,
                BestPascals = Pressure(state.Source.ThrustNewtons ?? 0, axial, radial, 1),
                PlanningPascals = Pressure(state.Source.ThrustHighNewtons ?? 0, axial, radial, JetConstants.GustFactor),
            }
            : null;
    }

    // The larger of the fit at the point of impact and the free jet's dynamic pressure, not over that at the nozzle.
    private double Pressure(double thrust, double axial, double radial, double gust)
    {
        double nozzle = thrust / (2 * Math.PI * _frame.NozzleRadiusMetres * _frame.NozzleRadiusMetres);
        double distance = Math.Max(axial, _frame.NozzleRadiusMetres);
        double beside = Math.Max(0, radial - _frame.NozzleRadiusMetres);
        double largest = Math.Max(
            Impingement.PressurePascals(thrust, distance),
            Impingement.FreeJetPressurePascals(JetConstants.SpeedCoefficient, thrust, distance)
        );
        double profile = Impingement.PressureProfile(beside / distance);
        return gust * gust * Math.Min(nozzle, largest) * profile;
    }

    private IEnumerable<Figure> FiguresOf(WallHit hit)
    {
        string engine = _frame.Engine.Id;
        yield return new("exhaust.wall-distance", engine, Distance(hit)) { PartId = hit.OwnerId };
        yield return new("exhaust.wall-pressure", engine, PressureOf(hit)) { PartId = hit.OwnerId };
        if (Temperature(hit) is { } temperature)
        {
            yield return new("exhaust.wall-temperature", engine, temperature) { PartId = hit.OwnerId };
        }
    }

    private static Quantity Distance(WallHit hit) => Quantity.Plain(hit.DistanceMetres, Unit.Metre);

    private Quantity PressureOf(WallHit hit) =>
        Quantity.CautiousHigh(hit.BestPascals, Math.Max(hit.BestPascals, hit.PlanningPascals), Unit.Pascal) with
        {
            Pedigree = _pedigree,
            Citations = ["beltaos-rajaratnam-1974", "fischer-1979", "choice-gust-factor"],
            Sum = "wall-pressure",
        };

    private Quantity? Temperature(WallHit hit) =>
        hit.PlanningRise is { } rise
            ? Quantity.CautiousHigh(
                _frame.Air.TemperatureCelsius + hit.BestRise,
                _frame.Air.TemperatureCelsius + rise,
                Unit.Celsius
            ) with
            {
                Pedigree = _pedigree,
                Citations = ["adiabatic-wall", "jet-heat"],
                Sum = "wall-temperature",
            }
            : null;

    private Finding FindingOf(WallHit hit)
    {
        (string code, Severity severity) = Verdict(hit);
        return new(code, severity)
        {
            ElementId = hit.OwnerId,
            Place = hit.Place,
            Arguments =
            [
                FindingArgument.Of("engine", _frame.Engine.Name ?? _frame.Engine.Id),
                FindingArgument.Of("distance", Distance(hit)),
                FindingArgument.Of("pressure", PressureOf(hit)),
                .. Temperature(hit) is { } t ? [FindingArgument.Of("temperature", t)] : (FindingArgument[])[],
            ],
            Row = ZoneRow.JetHeatMaterials,
            CannotTell = hit.PlanningRise is null,
            Field = hit.PlanningRise is null ? "ThrottleState.ExhaustTotalTemperatureCelsius" : null,
            Citations =
                hit.Kind == WallKind.Fabric
                    ? ["tent-membrane", "adiabatic-wall"]
                    : ["babrauskas-2007", "adiabatic-wall"],
        };
    }

    private (string Code, Severity Severity) Verdict(WallHit hit)
    {
        bool fabric = hit.Kind == WallKind.Fabric;
        double? celsius = _frame.Air.TemperatureCelsius + hit.PlanningRise;
        double limit = fabric ? ExhaustThresholds.FabricCelsius : ExhaustThresholds.WoodCelsius;
        return celsius switch
        {
            null => ("exhaust.wall-heat-unknown", fabric ? Severity.Stop : Severity.Act),
            _ when hit.Kind == WallKind.Deflector => ("exhaust.deflector-in-jet", Severity.Note),
            { } hot when hot >= limit && fabric => ("exhaust.fabric-wall-too-hot", Severity.Stop),
            { } hot when hot >= limit => ("exhaust.wall-hot", Severity.Act),
            _ => ("exhaust.wall-in-jet", Severity.Note),
        };
    }

    private static bool IsBlownIn(WallHit hit) =>
        hit.Kind == WallKind.Fabric && hit.PlanningPascals > TentDesignPascals;

    private Finding BlownIn(WallHit hit) =>
        new("exhaust.fabric-wall-load", Severity.Act)
        {
            ElementId = hit.OwnerId,
            Place = hit.Place,
            Arguments =
            [
                FindingArgument.Of("engine", _frame.Engine.Name ?? _frame.Engine.Id),
                FindingArgument.Of("pressure", PressureOf(hit)),
                FindingArgument.Of("design", Quantity.Plain(TentDesignPascals, Unit.Pascal)),
            ],
            Citations = ["en-13782", "beltaos-rajaratnam-1974"],
        };
}

/// <summary>What a jet does to a wall at its worst points.</summary>
/// <param name="OwnerId">Id of the wall's owner.</param>
/// <param name="Kind">What the wall is to a jet.</param>
/// <param name="Place">Hottest point, or the hardest hit where no temperature is known.</param>
/// <param name="DistanceMetres">Smallest distance from the nozzle along the jet, m.</param>
internal sealed record WallHit(string OwnerId, WallKind Kind, PlanPoint Place, double DistanceMetres)
{
    /// <summary>Best estimate of the temperature rise, K.</summary>
    public double BestRise { get; init; }

    /// <summary>Temperature rise to plan with, K; null when it cannot be told.</summary>
    public double? PlanningRise { get; init; }

    /// <summary>Best estimate of the pressure, Pa.</summary>
    public double BestPascals { get; init; }

    /// <summary>Pressure to plan with, Pa.</summary>
    public double PlanningPascals { get; init; }

    /// <summary>The worse of both, value by value.</summary>
    public WallHit Worse(WallHit other)
    {
        bool hotter = (other.PlanningRise ?? 0) > (PlanningRise ?? 0);
        bool harder = PlanningRise is null && other.PlanningPascals > PlanningPascals;
        return this with
        {
            Place = hotter || harder ? other.Place : Place,
            DistanceMetres = Math.Min(DistanceMetres, other.DistanceMetres),
            BestRise = Math.Max(BestRise, other.BestRise),
            PlanningRise =
                PlanningRise is { } a && other.PlanningRise is { } b
                    ? Math.Max(a, b)
                    : PlanningRise ?? other.PlanningRise,
            BestPascals = Math.Max(BestPascals, other.BestPascals),
            PlanningPascals = Math.Max(PlanningPascals, other.PlanningPascals),
        };
    }
}
