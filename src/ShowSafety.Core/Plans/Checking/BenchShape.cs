using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The rectangle a bench covers on the plan.</summary>
public static class BenchShape
{
    /// <summary>
    /// The four corners: the bench lies under the middle of the engine and is turned with it. Empty when its length or
    /// width is unknown. The engine's middle is half its length ahead of the nozzle, the nozzle itself when the length
    /// is unknown.
    /// </summary>
    public static ValueList<PlanPoint> Of(Engine engine)
    {
        if (engine.Bench is not { LengthMetres.Value: > 0 and var length, WidthMetres.Value: > 0 and var width })
        {
            return [];
        }

        double heading = engine.ExhaustHeadingDegrees;
        PlanPoint middle = engine.Place.Along(heading + 180, (engine.Sheet?.LengthMetres?.Value ?? 0) / 2);
        PlanPoint behind = middle.Along(heading, length / 2);
        PlanPoint ahead = middle.Along(heading, -length / 2);
        return
        [
            behind.Along(heading + 90, width / 2),
            behind.Along(heading - 90, width / 2),
            ahead.Along(heading - 90, width / 2),
            ahead.Along(heading + 90, width / 2),
        ];
    }
}
