using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>Zones close round the engine: start flame and intake.</summary>
internal sealed record NearEngine(ValueList<Zone> Zones, ValueList<Figure> Figures, ValueList<Finding> Findings)
{
    private const string FlowField = "ThrottleState.AirMassFlowKilogramsPerSecond";

    /// <summary>
    /// Row 8: an allowance for flame behind the nozzle and for spilt fuel under the engine. The steady jet says nothing
    /// about a hot start, so both lengths are choices.
    /// </summary>
    public static ValueList<Zone> StartFlame(Engine engine)
    {
        double length = Math.Max(engine.Sheet?.LengthMetres?.Value ?? 0, engine.Bench?.LengthMetres?.Value / 2 ?? 0);
        Geometry spill = SiteGeometry.Widened(
            SiteGeometry.Line([
                engine.Place,
                engine.Place.Along(engine.ExhaustHeadingDegrees + 180, Math.Max(length, 0.01)),
            ]),
            ExhaustThresholds.StartSpillMetres
        );
        Quantity reach = Quantity.Plain(ExhaustThresholds.StartFlameMetres, Unit.Metre) with
        {
            Citations = ["choice-start-flame"],
        };
        return
        [
            new(
                ZoneRow.StartFlame,
                engine.Id,
                ZoneEffect.Excludes,
                Audience.Everyone,
                Phases.Start,
                ZoneFrame.Engine,
                SiteGeometry.Union([Flame(engine), spill])
            )
            {
                Reach = reach,
                Citations = ["choice-start-flame"],
            },
        ];
    }

    /// <summary>Row 9: an arm's reach round the intake, or the reach of the air speed that lifts loose cloth.</summary>
    public static NearEngine Intake(Engine engine, AmbientAir air)
    {
        double? flow = engine.Sheet?.States.Max(s => s.AirMassFlowKilogramsPerSecond?.Value);
        double area = Area(engine.Sheet?.IntakeDiameterMetres?.Value);
        double volume = (flow ?? 0) / air.Density;
        double best = Suction.OpeningReach(volume, ExhaustThresholds.ClothSpeedMetresPerSecond, area);
        double planning = Math.Max(best, Suction.WallSinkReach(volume, ExhaustThresholds.ClothSpeedMetresPerSecond));
        Quantity suction = Quantity.CautiousHigh(best, planning, Unit.Metre) with
        {
            Citations = ["dallavalle", "choice-cloth-speed"],
            Sum = "intake-reach",
        };
        Figure[] figures = flow is null ? [] : [new("exhaust.intake-reach", engine.Id, suction)];
        Finding[] missing = [.. MissingForIntake(engine, flow)];
        ValueList<Zone> zones = engine.Sheet?.LengthMetres is { } length
            ? IntakeZones(engine, length.Value, Math.Max(ExhaustThresholds.IntakeArmMetres, planning))
            : [];
        return new(zones, [.. figures], [.. missing]);
    }

    private static Polygon Flame(Engine engine)
    {
        const int steps = 12;
        const double half = ExhaustThresholds.StartFlameHalfAngleDegrees;
        // Corners beyond the arc by the secant of half a step, so that the arc lies inside.
        double corner = ExhaustThresholds.StartFlameMetres / Math.Cos(Heading.ToRadians(half / steps));
        IEnumerable<PlanPoint> arc = Enumerable
            .Range(0, steps + 1)
            .Select(i => engine.Place.Along(engine.ExhaustHeadingDegrees - half + (2 * half * i / steps), corner));
        return SiteGeometry.Polygon([engine.Place, .. arc]);
    }

    private static double Area(double? diameterMetres) => Math.PI / 4 * (diameterMetres ?? 0) * (diameterMetres ?? 0);

    private static ValueList<Zone> IntakeZones(Engine engine, double lengthMetres, double reachMetres)
    {
        Polygon area = SiteGeometry.CircleAround(
            engine.Place.Along(engine.ExhaustHeadingDegrees + 180, lengthMetres),
            reachMetres
        );
        Zone visitors = new(
            ZoneRow.Intake,
            engine.Id,
            ZoneEffect.Excludes,
            Audience.Visitors | Audience.Children,
            Phases.Start | Phases.Running,
            ZoneFrame.Engine,
            area
        )
        {
            Reach = Quantity.Plain(reachMetres, Unit.Metre),
            Citations = ["iso-13857", "dallavalle"],
        };
        return
        [
            visitors,
            visitors with
            {
                Effect = ZoneEffect.Requires,
                Whom = Audience.Crew | Audience.Exhibitors,
                Part = "nothing-loose",
            },
        ];
    }

    private static IEnumerable<Finding> MissingForIntake(Engine engine, double? flow)
    {
        if (engine.Sheet?.LengthMetres is null)
        {
            yield return CannotTell(engine, "exhaust.intake-place-missing", "EngineSheet.LengthMetres");
        }

        if (flow is null)
        {
            yield return CannotTell(engine, "exhaust.intake-flow-missing", FlowField);
        }
    }

    private static Finding CannotTell(Engine engine, string code, string field) =>
        new(code, Severity.Act)
        {
            ElementId = engine.Id,
            Field = field,
            CannotTell = true,
            Row = ZoneRow.Intake,
            Citations = ["iso-13857"],
        };
}
