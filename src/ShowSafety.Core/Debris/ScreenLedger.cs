using NetTopologySuite.Geometries;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>Goes through the debris screens of a plan engine by engine and notes what each of them does.</summary>
internal sealed class ScreenLedger(Plan plan)
{
    private readonly List<Finding> _findings = [];
    private readonly HashSet<DebrisScreen> _met = [];

    /// <summary>Ground hidden from an engine's wheels by screens that hold every piece.</summary>
    public Geometry Hidden(EngineBurst burst, DirectFlightSector sector, Polygon open)
    {
        var hidden = new List<Geometry>();
        foreach (DebrisScreen screen in plan.DebrisScreens.Where(s => IsLine(s) && Stands(s, open)))
        {
            _met.Add(screen);
            Finding? why = WhyNot(screen, burst);
            if (why is not null)
            {
                _findings.Add(why);
                continue;
            }

            double reach = open.EnvelopeInternal.Diameter;
            // Left unclipped: cutting along an edge shared with the sector would leave slivers by rounding.
            Geometry shadow = ScreenShadow.Behind(sector, screen.Line, reach);
            hidden.Add(shadow);
            bool hides = shadow.Intersects(open);
            _findings.Add(Found(hides ? "debris.screen-holds" : "debris.screen-too-short", screen, burst));
        }

        return SiteGeometry.Union(hidden);
    }

    /// <summary>Findings about all screens, those no engine meets last.</summary>
    public IEnumerable<Finding> Findings() =>
        _findings.Concat(
            plan.DebrisScreens.Where(s => !_met.Contains(s))
                .Select(s => new Finding("debris.screen-beside", Severity.Note)
                {
                    ElementId = s.Id,
                    Place = PlaceOf(s),
                })
        );

    private static bool IsLine(DebrisScreen screen) =>
        screen.Line.Count >= 2
        && screen.Line.All(p => double.IsFinite(p.XMetres) && double.IsFinite(p.YMetres))
        && screen.Line.Distinct().Count() >= 2;

    private static bool Stands(DebrisScreen screen, Polygon open) => SiteGeometry.Line(screen.Line).Intersects(open);

    private static Finding? WhyNot(DebrisScreen screen, EngineBurst burst)
    {
        (ScreenVerdict verdict, DebrisPiece? piece) = ScreenCoverage.Judge(screen, burst.Pieces);
        return verdict switch
        {
            ScreenVerdict.NoEvidence => Found("debris.screen-without-evidence", screen, burst) with
            {
                CannotTell = true,
                Field = Missing(screen),
            },
            ScreenVerdict.Acrylic => Found("debris.screen-acrylic", screen, burst),
            ScreenVerdict.TestTooWeak => Found("debris.screen-test-too-weak", screen, burst, piece),
            ScreenVerdict.ProjectileTooLight => Found("debris.screen-projectile-too-light", screen, burst, piece),
            _ when burst.SomethingUnknown => Found("debris.screen-pieces-unknown", screen, burst) with
            {
                CannotTell = true,
            },
            _ => WhyTooLow(screen, burst),
        };
    }

    private static Finding? WhyTooLow(DebrisScreen screen, EngineBurst burst)
    {
        Stated? height = Readable.Within(screen.HeightMetres, 0, 100);
        Stated? shaft = Readable.Within(burst.Engine.ShaftHeightMetres, 0, 20);
        if (height is null || shaft is null)
        {
            return Found("debris.screen-height-unknown", screen, burst) with
            {
                CannotTell = true,
                Field = height is null
                    ? $"{nameof(DebrisScreen)}.{nameof(DebrisScreen.HeightMetres)}"
                    : $"{nameof(Engine)}.{nameof(Engine.ShaftHeightMetres)}",
            };
        }

        double radius = burst.Rotors.Max(r => r.TipRadiusMetres);
        return ScreenShadow.IsTallEnough(height.Value, shaft.Value, radius)
            ? null
            : Found("debris.screen-too-low", screen, burst) with
            {
                Arguments =
                [
                    FindingArgument.Of("engine", burst.EngineName),
                    FindingArgument.Of(
                        "needed",
                        Quantity.Plain(Math.Max(ScreenShadow.StandingHeadMetres, shaft.Value + radius), Unit.Metre)
                    ),
                ],
            };
    }

    private static string Missing(DebrisScreen screen) =>
        screen.Evidence switch
        {
            null => $"{nameof(DebrisScreen)}.{nameof(DebrisScreen.Evidence)}",
            { TestedEnergyJoules: null } => Of(nameof(ScreenEvidence.TestedEnergyJoules)),
            { ProjectileKilograms: null } => Of(nameof(ScreenEvidence.ProjectileKilograms)),
            { ProjectileDiameterMetres: null } => Of(nameof(ScreenEvidence.ProjectileDiameterMetres)),
            _ => Of(nameof(ScreenEvidence.Reference)),
        };

    private static string Of(string member) => $"{nameof(ScreenEvidence)}.{member}";

    private static Finding Found(string code, DebrisScreen screen, EngineBurst burst, DebrisPiece? piece = null)
    {
        Severity severity = code == "debris.screen-holds" ? Severity.Note : Severity.Act;
        FindingArgument[] worst = piece is null
            ? []
            :
            [
                FindingArgument.Of("rotor", piece.RotorId),
                FindingArgument.Of("energy", piece.Translation),
                FindingArgument.Of("mass", piece.Mass),
                FindingArgument.Of("edge", piece.EdgeDiameter),
            ];
        return new(code, severity)
        {
            ElementId = screen.Id,
            Place = PlaceOf(screen),
            Row = ZoneRow.DirectFlight,
            Arguments = [FindingArgument.Of("engine", burst.EngineName), .. worst],
            Citations = [DebrisSources.ChoiceScreen, DebrisSources.GuardTest, DebrisSources.GuardMaterials],
        };
    }

    private static PlanPoint? PlaceOf(DebrisScreen screen) => screen.Line.Count > 0 ? screen.Line[0] : null;
}
