using NetTopologySuite.Geometries;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>Row 1: the sectors level flights cross, cut only behind screens whose test covers every piece.</summary>
internal static class DirectFlightZones
{
    private const Phases Turning = Phases.Start | Phases.Running | Phases.RunDown;

    public static IEnumerable<Zone> Of(EngineBurst burst, ScreenLedger screens)
    {
        DirectFlightSector sector = SectorOf(burst);
        Quantity reach = ReachOf(burst.Pieces);
        Polygon open = sector.Area(AirworthinessModel.SmallFragmentSpreadDegrees, ExtentOf(burst, reach));
        Geometry hidden = screens.Hidden(burst, sector, open);
        yield return Make(burst, open, hidden, reach, ZoneEffect.Excludes, "");
        yield return Inner(
            "one-third-disc",
            AirworthinessModel.OneThirdDiscSpreadDegrees,
            p => p.Kind is PieceKind.HalfDisc or PieceKind.OneThirdDisc or PieceKind.QuarterDisc
        );
        yield return Inner(
            "intermediate",
            AirworthinessModel.IntermediateSpreadDegrees,
            p => p.Kind == PieceKind.Intermediate
        );

        Zone Inner(string part, double spread, Func<DebrisPiece, bool> which)
        {
            Quantity partReach = ReachOf([.. burst.Pieces.Where(which)]);
            Polygon area = sector.Area(spread, ExtentOf(burst, partReach));
            return Make(burst, area, hidden, partReach, ZoneEffect.Informs, part);
        }
    }

    public static DirectFlightSector SectorOf(EngineBurst burst) =>
        new()
        {
            Nozzle = burst.Engine.Place,
            IntakeHeadingDegrees = burst.IntakeHeadingDegrees,
            NearestPlaneMetres = burst.Rotors.Min(r => r.NearestPlaneMetres),
            FarthestPlaneMetres = burst.Rotors.Max(r => r.FarthestPlaneMetres),
            PieceHalfSizeMetres = burst.Rotors.Max(r => Math.Max(r.TipRadiusMetres, r.BestThicknessMetres / 2)),
        };

    /// <summary>
    /// Largest reach of direct flight of some pieces: level flight to the line of injury, and no farther than the
    /// piece can land at all, since level flight leaves gravity out.
    /// </summary>
    public static Quantity ReachOf(IReadOnlyList<DebrisPiece> pieces)
    {
        Quantity longest = pieces.MaxBy(p => p.FlatFireDistance.Planning)!.FlatFireDistance;
        double best = pieces.Max(p => Math.Min(p.FlatFireDistance.Best, p.LandingDistance.Best));
        double planning = pieces.Max(p => Math.Min(p.FlatFireDistance.Planning, p.LandingDistance.Planning));
        return Quantity.CautiousHigh(best, Math.Max(best, planning), Unit.Metre) with
        {
            Pedigree = longest.Pedigree,
            Citations = longest.Citations,
            Sum = longest.Sum,
        };
    }

    // Flight starts at the wheel, so the reach is counted from its rim; the sector always covers wheel and casing.
    private static double ExtentOf(EngineBurst burst, Quantity reach)
    {
        double radius = burst.Rotors.Max(r => r.TipRadiusMetres);
        double casing = (RotorReader.Metres(burst.Engine.Sheet?.CasingDiameterMetres)?.Value ?? 0) / 2;
        return Math.Max(reach.Planning + radius, casing);
    }

    private static Zone Make(
        EngineBurst burst,
        Polygon open,
        Geometry hidden,
        Quantity reach,
        ZoneEffect effect,
        string part
    ) =>
        new(
            ZoneRow.DirectFlight,
            burst.Engine.Id,
            effect,
            Audience.Everyone,
            Turning,
            hidden.IsEmpty ? ZoneFrame.Engine : ZoneFrame.Site,
            hidden.IsEmpty ? open : open.Difference(hidden)
        )
        {
            Boundary = Quantity.CautiousLow(
                InjuryEnergy.AbleToInjureJoules,
                InjuryEnergy.AbleToInjureJoules,
                Unit.Joule
            ) with
            {
                Citations = [DebrisSources.AbleToInjure],
                Sum = "energy-lines",
            },
            Reach = reach,
            Part = part,
            Citations = [DebrisSources.AirworthinessModel, DebrisSources.AnglesTooNarrow, DebrisSources.AbleToInjure],
        };
}
