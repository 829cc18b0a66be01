using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>What everybody who reads the brief must know about the burst of one engine.</summary>
internal static class EngineFindings
{
    public static IEnumerable<Finding> Of(EngineBurst burst)
    {
        yield return DirectFlight(burst);
        if (EyeHazard(burst) is { } eyes)
        {
            yield return eyes;
        }

        if (Readable.Within(burst.Engine.ShaftHeightMetres, 0, 20) is null)
        {
            yield return ShaftHeight(burst);
        }
    }

    // Distance alone does not make the plane of a rotor harmless, and the sectors are the least to keep clear.
    private static Finding DirectFlight(EngineBurst burst) =>
        About(burst, "debris.direct-flight", Severity.Note) with
        {
            Arguments =
            [
                FindingArgument.Of("reach", DirectFlightZones.ReachOf(burst.Pieces)),
                FindingArgument.Of("energy", burst.Pieces.MaxBy(p => p.Translation.Planning)!.Translation),
            ],
            Citations = [DebrisSources.AirworthinessModel, DebrisSources.AnglesTooNarrow, DebrisSources.ChoiceDragLow],
        };

    private static Finding? EyeHazard(EngineBurst burst)
    {
        DebrisPiece sharpest = burst.Pieces.MaxBy(p => p.EnergyPerArea.Planning)!;
        double limit = EyeCriteria.HalfRiskEnergyPerArea(EyeInjury.CornealAbrasion);
        return sharpest.EnergyPerArea.Planning < limit
            ? null
            : About(burst, "debris.eye-protection", Severity.Act) with
            {
                Arguments =
                [
                    FindingArgument.Of("energy", sharpest.EnergyPerArea),
                    FindingArgument.Of(
                        "rupture",
                        Quantity.Plain(
                            EyeCriteria.HalfRiskEnergyPerArea(EyeInjury.GlobeRupture),
                            Unit.JoulePerSquareMetre
                        )
                    ),
                ],
                Citations = [DebrisSources.Eye],
            };
    }

    private static Finding ShaftHeight(EngineBurst burst) =>
        About(burst, "debris.shaft-height-assumed", Severity.Act) with
        {
            Field = $"{nameof(Engine)}.{nameof(Engine.ShaftHeightMetres)}",
            Arguments = [FindingArgument.Of("height", Quantity.Plain(FlightAir.GreatestShaftHeightMetres, Unit.Metre))],
        };

    private static Finding About(EngineBurst burst, string code, Severity severity) =>
        new(code, severity)
        {
            ElementId = burst.Engine.Id,
            Place = burst.Engine.Place,
            Row = ZoneRow.DirectFlight,
        };
}
