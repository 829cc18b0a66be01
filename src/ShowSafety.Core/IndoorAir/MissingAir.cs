using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.IndoorAir;

/// <summary>What the plan lacks for a verdict on the air, as findings.</summary>
internal static class MissingAir
{
    /// <summary>The findings, in a fixed order.</summary>
    public static IEnumerable<Finding> Of(RoomFacts room, IReadOnlyList<Engine> engines, IReadOnlyList<RoomDay> days)
    {
        string id = room.Enclosure.Id;
        if (room.Outline.IsEmpty)
        {
            yield return CannotTell("indoor-air.footprint-odd", id, "Enclosure.Footprint");
        }
        else if (room.Volume is null)
        {
            yield return CannotTell("indoor-air.volume-missing", id, "Enclosure.EavesHeightMetres");
        }

        if (room.FreshAir is null)
        {
            yield return CannotTell("indoor-air.fresh-air-missing", id, "Enclosure.FreshAirCubicMetresPerSecond");
        }

        if (days.Count == 0)
        {
            yield return CannotTell("indoor-air.programme-missing", id, "Plan.Programme");
        }

        foreach (Finding finding in engines.SelectMany(e => OfEngine(room, e, days)))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> OfEngine(RoomFacts room, Engine engine, IReadOnlyList<RoomDay> days)
    {
        if (!room.Outline.IsEmpty && !room.Holds(engine))
        {
            yield return new("indoor-air.engine-blows-in", Severity.Note)
            {
                ElementId = engine.Id,
                Place = engine.Place,
                Row = ZoneRow.IndoorAir,
                Citations = ["choice-heat-stays-inside"],
            };
        }

        IEnumerable<RoomStep> used = days.SelectMany(d => d.Steps)
            .Where(s => s.Engine.Id == engine.Id)
            .DistinctBy(s => s.StateId);
        foreach (Finding finding in used.SelectMany(s => OfState(engine, s)))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> OfState(Engine engine, RoomStep step)
    {
        if (step.State is not { } state)
        {
            yield return State("indoor-air.state-unknown", engine, step.StateId, "ThrottleStep.StateId");
            yield break;
        }

        string name = state.Name ?? state.Id;
        if (state.FuelFlowKilogramsPerSecond is null)
        {
            yield return State(
                "indoor-air.fuel-flow-missing",
                engine,
                name,
                "ThrottleState.FuelFlowKilogramsPerSecond"
            );
        }

        if (state.CarbonMonoxideGramsPerKilogram is null)
        {
            yield return State(
                "indoor-air.carbon-monoxide-missing",
                engine,
                name,
                "ThrottleState.CarbonMonoxideGramsPerKilogram"
            );
        }

        if (state.NitrogenOxidesGramsPerKilogram is null)
        {
            yield return State(
                "indoor-air.nitrogen-oxides-missing",
                engine,
                name,
                "ThrottleState.NitrogenOxidesGramsPerKilogram"
            );
        }
    }

    private static Finding State(string code, Engine engine, string state, string field) =>
        CannotTell(code, engine.Id, field) with
        {
            Arguments = [FindingArgument.Of("state", state)],
        };

    private static Finding CannotTell(string code, string elementId, string field) =>
        new(code, Severity.Stop)
        {
            ElementId = elementId,
            Field = field,
            CannotTell = true,
            Row = ZoneRow.IndoorAir,
            Citations = ["room-balance"],
        };
}
