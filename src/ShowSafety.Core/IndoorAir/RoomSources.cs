using ShowSafety.Core.Plans;

namespace ShowSafety.Core.IndoorAir;

/// <summary>A throttle step of an engine that heats and fouls the room.</summary>
/// <param name="Engine">Engine.</param>
/// <param name="StateId">Id of the state as the programme has it.</param>
/// <param name="State">The state; null where the sheet has none of that id.</param>
/// <param name="FromSeconds">From, seconds after the first light-up.</param>
/// <param name="ToSeconds">To, seconds after the first light-up.</param>
internal sealed record RoomStep(
    Engine Engine,
    string StateId,
    ThrottleState? State,
    double FromSeconds,
    double ToSeconds
);

/// <summary>One day of the programme in the room.</summary>
/// <param name="Day">Day; null where every day is alike.</param>
/// <param name="FirstLightUp">First light-up.</param>
/// <param name="Steps">Steps of all engines that share the room.</param>
internal sealed record RoomDay(DateOnly? Day, TimeOnly FirstLightUp, IReadOnlyList<RoomStep> Steps)
{
    /// <summary>The days of a programme on which the given engines run. The air of the day before is taken as gone.</summary>
    public static IReadOnlyList<RoomDay> Of(Plan plan, IReadOnlyCollection<Engine> engines)
    {
        Run[] runs = [.. (plan.Programme?.Runs ?? []).Where(r => engines.Any(e => e.Id == r.EngineId))];
        DateOnly?[] days = [.. runs.Select(r => r.Day).OfType<DateOnly>().Distinct().Order()];
        IEnumerable<DateOnly?> all = runs.Any(r => r.Day is null) || days.Length == 0 ? days.Append(null) : days;
        return
        [
            .. all.Select(day => Build(day, [.. runs.Where(r => r.Day is null || r.Day == day)], engines))
                .OfType<RoomDay>(),
        ];
    }

    private static RoomDay? Build(DateOnly? day, Run[] runs, IReadOnlyCollection<Engine> engines)
    {
        if (runs.Length == 0)
        {
            return null;
        }

        TimeOnly first = runs.Min(r => r.StartsAt);
        return new(day, first, [.. runs.SelectMany(r => StepsOf(r, first, engines))]);
    }

    private static IEnumerable<RoomStep> StepsOf(Run run, TimeOnly first, IReadOnlyCollection<Engine> engines)
    {
        Engine engine = engines.First(e => e.Id == run.EngineId);
        double at = (run.StartsAt.ToTimeSpan() - first.ToTimeSpan()).TotalSeconds;
        foreach (ThrottleStep step in run.Steps)
        {
            double seconds = Math.Max(0, step.Seconds);
            ThrottleState? state = engine.Sheet?.States.FirstOrDefault(s => s.Id == step.StateId);
            yield return new(engine, step.StateId, state, at, at + seconds);
            at += seconds;
        }
    }
}

/// <summary>What a step puts into the room per second, in the unit of each balance; null where the sheet is silent.</summary>
internal static class RoomSources
{
    /// <summary>Source of a substance: mg/s for gases in mg/m³, ppm m³/s for carbon dioxide, W for heat.</summary>
    public static double? Of(RoomStep step, AirSubstance substance)
    {
        double? fuel = step.State?.FuelFlowKilogramsPerSecond?.Value;
        return substance switch
        {
            AirSubstance.CarbonMonoxide => 1000 * fuel * step.State?.CarbonMonoxideGramsPerKilogram?.Value,
            AirSubstance.CarbonDioxide => Gases.Ppm(1e6, Gases.CarbonDioxide)
                * fuel
                * FuelProducts.Of(step.Engine.Sheet?.Fuel).CarbonDioxide,
            AirSubstance.NitrogenDioxide => 1000 * fuel * Oxides(step) * DioxideShare(step),
            AirSubstance.NitricOxide => 1000
                * fuel
                * Oxides(step)
                * MonoxideShare(step)
                * (Gases.NitricOxide / Gases.NitrogenDioxide),
            _ => fuel * 1e6 * HeatingValue(step),
        };
    }

    private static double? Oxides(RoomStep step) => step.State?.NitrogenOxidesGramsPerKilogram?.Value;

    private static double DioxideShare(RoomStep step) =>
        (step.State?.NitrogenDioxideShare).Or<ThrottleState>(nameof(ThrottleState.NitrogenDioxideShare)).Value;

    // An unknown share is cautious at 1 for the dioxide and at 0 for the monoxide.
    private static double MonoxideShare(RoomStep step) => 1 - (step.State?.NitrogenDioxideShare?.Value ?? 0);

    private static double HeatingValue(RoomStep step) =>
        (step.Engine.Sheet?.LowerHeatingValueMegajoulesPerKilogram)
            .Or<EngineSheet>(nameof(EngineSheet.LowerHeatingValueMegajoulesPerKilogram))
            .Value;
}
