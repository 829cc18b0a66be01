using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Crowd;

/// <summary>Whether visitors can reach hot and spinning parts over or through the barrier.</summary>
/// <param name="Figures">Reach over the barrier, engine by engine.</param>
/// <param name="Zones">Where the barrier must not stand.</param>
/// <param name="Findings">What is missing or no barrier.</param>
internal sealed record ReachCheck(ValueList<Figure> Figures, ValueList<Zone> Zones, ValueList<Finding> Findings)
{
    /// <summary>Judges all engines behind the plan's barrier.</summary>
    public static ReachCheck Of(Plan plan)
    {
        var reaches = plan.Engines.Select(engine => (Engine: engine, Reach: Reach(engine, plan.CrowdLine))).ToList();
        return new(
            [.. reaches.Select(r => new Figure("crowd.reach-over-barrier", r.Engine.Id, r.Reach))],
            [.. reaches.Select(r => Zone(r.Engine, r.Reach))],
            plan.Engines.Count == 0 ? [] : [.. BarrierFindings(plan), .. plan.Engines.SelectMany(EngineFindings)]
        );
    }

    // Without a barrier of the table the longest reach it lists.
    private static Quantity Reach(Engine engine, CrowdLine? line)
    {
        Stated? height = line?.Infill is BarrierInfill.Rope ? null : line?.HeightMetres;
        double? millimetres = height.Positive() is { } barrier ? OverBarrier(engine, barrier) : null;
        double metres = (millimetres ?? ReachTable.LongestReachMillimetres) / 1000;
        return Quantity.CautiousHigh(metres, metres, Unit.Metre) with
        {
            Pedigree = millimetres is null ? Pedigree.Assumed : StatedNumbers.Weakest(height, engine.ShaftHeightMetres),
            Sum = "reach-over-barrier",
            Citations = [SiteSources.CrowdReach],
        };
    }

    private static double? OverBarrier(Engine engine, double barrierMetres)
    {
        double radius = EngineBody.RadiusMetres(engine);
        return engine.ShaftHeightMetres.Positive() is { } shaft
            ? ReachTable.OverHeights(1000 * (shaft - radius), 1000 * (shaft + radius), 1000 * barrierMetres)
            : ReachTable.OverHeights(0, double.MaxValue, 1000 * barrierMetres);
    }

    private static Zone Zone(Engine engine, Quantity reach)
    {
        double radius = EngineBody.RadiusMetres(engine);
        return new(
            ZoneRow.HotAndSpinningParts,
            engine.Id,
            ZoneEffect.Excludes,
            Audience.Visitors | Audience.Children,
            Phases.Always,
            ZoneFrame.Engine,
            SiteGeometry.Widened(EngineBody.Axis(engine), radius + reach.Planning)
        )
        {
            Boundary = reach,
            Reach = reach,
            Citations = [SiteSources.CrowdReach],
        };
    }

    private static IEnumerable<Finding> BarrierFindings(Plan plan)
    {
        // A missing line is one finding of its own, not three.
        if (plan.CrowdLine is not { } line)
        {
            yield break;
        }

        if (line.Infill == BarrierInfill.Rope)
        {
            yield return Barrier("crowd.rope-is-no-barrier");
            yield break;
        }

        foreach (Finding finding in HeightFindings(line).Concat(ChildrenFindings(plan, line)))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> HeightFindings(CrowdLine line)
    {
        if (line.HeightMetres.Positive() is not { } height)
        {
            yield return Unknown(
                typeof(CrowdLine),
                "crowd.barrier-height-missing",
                nameof(CrowdLine.HeightMetres),
                null
            );
        }
        else if (height * 1000 < ReachTable.LowestBarrierMillimetres)
        {
            yield return Barrier("crowd.barrier-too-low") with
            {
                Arguments = [HeightOf(line, height)],
            };
        }
        else if (height * 1000 < ReachTable.BarrierAloneMillimetres)
        {
            yield return new("crowd.barrier-needs-stewards", Severity.Note)
            {
                Row = ZoneRow.HotAndSpinningParts,
                Arguments = [HeightOf(line, height)],
                Citations = [SiteSources.CrowdReach],
            };
        }
    }

    private static FindingArgument HeightOf(CrowdLine line, double height) =>
        FindingArgument.Of(
            "height",
            Quantity.CautiousLow(height, height, Unit.Metre) with
            {
                Pedigree = line.HeightMetres!.Pedigree,
            }
        );

    // The table is for people of 14 and over; children reach through what adults only reach over.
    private static IEnumerable<Finding> ChildrenFindings(Plan plan, CrowdLine line)
    {
        var visitors = plan.People.Where(g => g.Role == PersonRole.Visitor).ToList();
        bool noChildren = visitors.Count > 0 && visitors.All(g => g.Children == 0);
        if (line.Infill is null)
        {
            yield return Unknown(typeof(CrowdLine), "crowd.barrier-infill-missing", nameof(CrowdLine.Infill), null);
        }
        else if (line.Infill == BarrierInfill.Rails && !noChildren)
        {
            yield return Unknown(typeof(CrowdLine), "crowd.children-reach-through", nameof(CrowdLine.Infill), null);
        }
    }

    private static IEnumerable<Finding> EngineFindings(Engine engine)
    {
        if (engine.ShaftHeightMetres.Positive() is null)
        {
            yield return Unknown(
                typeof(Engine),
                "crowd.shaft-height-missing",
                nameof(Engine.ShaftHeightMetres),
                engine.Id
            );
        }

        if (EngineBody.LengthMetres(engine) is null)
        {
            yield return Size(
                "crowd.engine-length-missing",
                nameof(EngineSheet.LengthMetres),
                EngineBody.AssumedLengthMetres
            );
        }

        if (engine.Sheet?.CasingDiameterMetres.Positive() is null)
        {
            yield return Size(
                "crowd.casing-diameter-missing",
                nameof(EngineSheet.CasingDiameterMetres),
                2 * EngineBody.AssumedRadiusMetres
            );
        }

        Finding Size(string code, string member, double assumed) =>
            Unknown(typeof(EngineSheet), code, member, engine.Id) with
            {
                Arguments = [FindingArgument.Of("assumed", Quantity.CautiousHigh(assumed, assumed, Unit.Metre))],
                Citations = [SiteSources.CrowdAssumedSize],
            };
    }

    private static Finding Barrier(string code) =>
        new(code, Severity.Act) { Row = ZoneRow.HotAndSpinningParts, Citations = [SiteSources.CrowdReach] };

    private static Finding Unknown(Type owner, string code, string member, string? elementId) =>
        CannotTell.Without(owner, code, Severity.Act, member, elementId, ZoneRow.HotAndSpinningParts) with
        {
            Citations = [SiteSources.CrowdReach],
        };
}
