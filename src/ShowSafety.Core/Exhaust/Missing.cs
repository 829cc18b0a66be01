using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>What an engine sheet lacks for the jet, as findings.</summary>
internal static class Missing
{
    private const string ThrustField = "ThrottleState.ThrustNewtons";
    private const string TemperatureField = "ThrottleState.ExhaustTotalTemperatureCelsius";
    private const string FlowField = "ThrottleState.AirMassFlowKilogramsPerSecond";

    /// <summary>The findings, in a fixed order.</summary>
    public static IEnumerable<Finding> Of(Engine engine, ValueList<JetSource> sources)
    {
        if (sources.Count == 0)
        {
            return [.. NoStates(engine)];
        }

        return
        [
            .. Thrust(sources).SelectMany(s => CannotTellThrust(engine, s.StateId)),
            .. sources.Where(s => s.ThrustNewtons is null).Except(Thrust(sources)).Select(s => Bounded(engine, s)),
            .. sources.Where(s => s.ThrustDerived).Select(s => Derived(engine, s)),
            .. sources.Where(s => s.ExitCelsius is null).SelectMany(s => CannotTellHeat(engine, s, TemperatureField)),
            .. sources
                .Where(s => s is { ExitCelsius: not null, HeatWatts: null })
                .SelectMany(s => CannotTellHeat(engine, s, FlowField)),
            .. sources.Where(s => s.HeatFromFuel).Select(s => FromFuel(engine, s)),
        ];
    }

    /// <summary>States without a thrust that no state of at least their shaft speed bounds.</summary>
    public static IEnumerable<JetSource> Thrust(ValueList<JetSource> sources) =>
        sources.Where(s =>
            s.ThrustNewtons is null
            && !sources.Any(other => other.ThrustNewtons is not null && other.ShaftSpeed >= s.ShaftSpeed)
        );

    private static IEnumerable<Finding> NoStates(Engine engine) =>
        [
            .. CannotTellThrust(engine, null),
            Heat(engine, ZoneRow.JetHeatPublic, null, TemperatureField),
            Heat(engine, ZoneRow.JetHeatCrew, null, TemperatureField),
            Heat(engine, ZoneRow.JetHeatMaterials, null, TemperatureField),
        ];

    private static IEnumerable<Finding> CannotTellThrust(Engine engine, string? stateId) =>
        new[] { ZoneRow.JetSpeedPublic, ZoneRow.JetSpeedCrew }.Select(row => new Finding(
            "exhaust.thrust-missing",
            Severity.Stop
        )
        {
            ElementId = engine.Id,
            Arguments = [FindingArgument.Of("state", stateId ?? "every state")],
            Field = ThrustField,
            CannotTell = true,
            Row = row,
            Citations = ["jet-momentum"],
        });

    private static IEnumerable<Finding> CannotTellHeat(Engine engine, JetSource source, string field) =>
        [
            Heat(engine, ZoneRow.JetHeatPublic, source.StateId, field),
            Heat(engine, ZoneRow.JetHeatCrew, source.StateId, field),
            Heat(engine, ZoneRow.JetHeatMaterials, source.StateId, field),
        ];

    private static Finding Heat(Engine engine, ZoneRow row, string? stateId, string field) =>
        new(field == FlowField ? "exhaust.flow-missing" : "exhaust.temperature-missing", Severity.Act)
        {
            ElementId = engine.Id,
            Arguments = [FindingArgument.Of("state", stateId ?? "every state")],
            Field = field,
            CannotTell = true,
            Row = row,
            Citations = ["jet-heat"],
        };

    private static Finding Bounded(Engine engine, JetSource source) =>
        new("exhaust.thrust-bounded", Severity.Note)
        {
            ElementId = engine.Id,
            Arguments = [FindingArgument.Of("state", source.StateId)],
            Field = ThrustField,
        };

    private static Finding Derived(Engine engine, JetSource source) =>
        new("exhaust.thrust-derived", Severity.Note)
        {
            ElementId = engine.Id,
            Arguments =
            [
                FindingArgument.Of("state", source.StateId),
                FindingArgument.Of("thrust", Quantity.Plain(source.ThrustNewtons ?? 0, Unit.Newton)),
            ],
            Field = ThrustField,
            Citations = ["jet-momentum"],
        };

    private static Finding FromFuel(Engine engine, JetSource source) =>
        new("exhaust.heat-from-fuel", Severity.Note)
        {
            ElementId = engine.Id,
            Arguments =
            [
                FindingArgument.Of("state", source.StateId),
                FindingArgument.Of("heat", Quantity.Plain((source.HeatWatts ?? 0) / 1000, Unit.Kilowatt)),
            ],
            Field = FlowField,
            Citations = ["jet-energy"],
        };
}
