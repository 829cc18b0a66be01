using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Crowd;

/// <summary>Whether the people in one space have room and a way out without the widest exit.</summary>
/// <param name="Figures">People by area and by exits.</param>
/// <param name="Findings">What is too little or can't be told.</param>
internal sealed record CapacityCheck(ValueList<Figure> Figures, ValueList<Finding> Findings)
{
    /// <summary>People per m² above which a standing crowd becomes unstable (a borough's crowd guide).</summary>
    private const double UnstablePerSquareMetre = 4;

    /// <summary>Judges one space.</summary>
    public static CapacityCheck Of(CrowdSpace space)
    {
        Quantity? byArea = ByArea(space);
        Quantity? byExits = ByExits(space);
        return new(
            [.. Figure("crowd.capacity-by-area", space, byArea), .. Figure("crowd.capacity-by-exits", space, byExits)],
            [.. ExitFindings(space), .. Room(space, byArea), .. WayOut(space, byExits)]
        );
    }

    private static IEnumerable<Figure> Figure(string key, CrowdSpace space, Quantity? value) =>
        value is null ? [] : [new(key, space.ElementId, value)];

    private static double AreaSquareMetres(CrowdSpace space) =>
        SiteGeometry
            .Union(space.Visitors.Where(g => g.Area.Count > 2).Select(g => SiteGeometry.Polygon(g.Area).Buffer(0)))
            .Area;

    private static Quantity? ByArea(CrowdSpace space)
    {
        double area = AreaSquareMetres(space);
        if (!(area > 0))
        {
            return null;
        }

        double people = Capacity.ByArea(area, Capacity.AreaPerPersonSquareMetres);
        return Quantity.CautiousLow(people, people, Unit.Person) with
        {
            Sum = "capacity-by-area",
            Citations = [SiteSources.CrowdArea],
        };
    }

    private static Quantity? ByExits(CrowdSpace space)
    {
        if (space.Exits.Count == 0)
        {
            return null;
        }

        double[] widths = [.. space.Exits.Select(e => e.WidthMetres.Positive()).OfType<double>()];
        double width = Capacity.WidthWithoutTheWidestMetres(widths);
        double flow = space.IsEnclosed
            ? Capacity.ByFlow(width, Capacity.EnclosedFlowPerMetreMinute, Capacity.EnclosedMinutes)
            : Capacity.ByFlow(width, Capacity.OpenAirFlowPerMetreMinute, Capacity.OpenAirMinutes);
        double planning = space.IsEnclosed ? Math.Min(flow, Capacity.OfExitsWithoutTheWidest(widths)) : flow;
        return Quantity.CautiousLow(flow, planning, Unit.Person) with
        {
            Pedigree = StatedNumbers.Weakest(space.Exits.Select(e => e.WidthMetres)),
            Sum = "capacity-by-exits",
            Citations = space.IsEnclosed
                ? [SiteSources.CrowdEnclosedFlow, SiteSources.CrowdEnclosedTime, SiteSources.CrowdExitWidths]
                : [SiteSources.CrowdOpenAirFlow],
        };
    }

    private static IEnumerable<Finding> ExitFindings(CrowdSpace space)
    {
        if (space.Exits.Count == 0)
        {
            yield return CannotTell.Without(
                typeof(Site),
                "crowd.exits-missing",
                space.IsEnclosed ? Severity.Stop : Severity.Act,
                nameof(Site.Exits),
                space.ElementId
            );
        }
        else if (space.Exits.Count == 1)
        {
            yield return new("crowd.one-exit", space.IsEnclosed ? Severity.Stop : Severity.Act)
            {
                ElementId = space.Exits[0].Id,
                Place = space.Exits[0].Place,
                Citations = [SiteSources.CrowdEnclosedFlow],
            };
        }

        foreach (SiteExit exit in space.Exits.Where(e => e.WidthMetres.Positive() is null))
        {
            yield return CannotTell.Without(
                typeof(SiteExit),
                "crowd.exit-width-missing",
                Severity.Act,
                nameof(SiteExit.WidthMetres),
                exit.Id
            ) with
            {
                Place = exit.Place,
            };
        }
    }

    private static IEnumerable<Finding> Room(CrowdSpace space, Quantity? byArea)
    {
        long people = CountCheck.Known(space.Visitors.Where(g => g.Area.Count > 2));
        if (byArea is not null && people > byArea.Planning)
        {
            bool unstable = people > UnstablePerSquareMetre * AreaSquareMetres(space);
            yield return new("crowd.area-too-small", unstable ? Severity.Stop : Severity.Act)
            {
                ElementId = space.ElementId,
                Arguments =
                [
                    FindingArgument.Of("people", Quantity.Plain(people, Unit.Person)),
                    FindingArgument.Of("capacity", byArea),
                ],
                Citations = [SiteSources.CrowdArea, SiteSources.CrowdUnstable],
            };
        }
    }

    private static IEnumerable<Finding> WayOut(CrowdSpace space, Quantity? byExits)
    {
        long people = CountCheck.Known(space.Visitors) + CountCheck.Known(space.Others);
        if (byExits is not null && people > byExits.Planning)
        {
            yield return new("crowd.exits-too-small", space.IsEnclosed ? Severity.Stop : Severity.Act)
            {
                ElementId = space.ElementId,
                Arguments =
                [
                    FindingArgument.Of("people", Quantity.Plain(people, Unit.Person)),
                    FindingArgument.Of("capacity", byExits),
                ],
                Citations = byExits.Citations,
            };
        }
    }
}
