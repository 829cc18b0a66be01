using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>Compares readings with the textbook power of the jet, to catch a wrong distance, weighting or unit.</summary>
internal static class JetPowerCheck
{
    /// <summary>Says when the readings lie farther from the estimate than its spread.</summary>
    /// <param name="engine">The engine.</param>
    /// <param name="state">The throttle state, or null when the sheet has none.</param>
    /// <param name="measuredDb">Power level of the whole source in dB by the readings.</param>
    /// <param name="findings">Where it is said.</param>
    public static void Judge(Engine engine, ThrottleState? state, double measuredDb, SoundFindings findings)
    {
        if (
            state?.AirMassFlowKilogramsPerSecond is not { Value: > 0 } air
            || state.ExhaustSpeedMetresPerSecond is not { Value: > 0 } speed
            || state.ExhaustTotalTemperatureCelsius is not { Value: > -273 } exhaust
        )
        {
            return;
        }

        double flow = air.Value + Math.Max(0, state.FuelFlowKilogramsPerSecond?.Value ?? 0);
        double estimate = JetNoise.HotJetPowerDb(flow, speed.Value, exhaust.Value + 273.15);
        var judged = JetConsistency.Of(measuredDb, estimate, IsFastestJet(engine, speed.Value));
        if (judged.Verdict != JetVerdict.Consistent)
        {
            findings.Add(
                "sound.jet-power-far-off",
                Severity.Act,
                engine.Id,
                "SoundMeasurement.LevelDbA",
                FindingArgument.Of("state", state.Name ?? state.Id),
                SoundFindings.Decibels("measured", measuredDb),
                SoundFindings.Decibels("estimate", estimate)
            );
        }
    }

    private static bool IsFastestJet(Engine engine, double speed) =>
        (engine.Sheet?.States ?? []).All(s => !(s.ExhaustSpeedMetresPerSecond?.Value > speed));

    /// <summary>
    /// Power level of the whole source in dB by the readings, each less the published index of its direction.
    /// </summary>
    /// <param name="usable">The readings.</param>
    /// <param name="table">The table, or null for an engine declared equally loud all round.</param>
    public static double WholePowerDb(IEnumerable<UsableReading> usable, JetDirectivity? table) =>
        Decibels.Mean([.. usable.Select(u => Decibels.Sum(u.PowerDb) - IndexDb(u, table))]);

    private static double IndexDb(UsableReading usable, JetDirectivity? table) =>
        table is not null && MeasurementReduction.SlantAngleDegrees(usable.Reading) is { } angle
            ? table.IndexDb(angle)
            : 0;
}
