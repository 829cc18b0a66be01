using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>Compares readings with the textbook power of the jet, to catch a wrong distance, weighting or unit.</summary>
internal static class JetPowerCheck
{
    /// <summary>Says when the readings lie farther from the estimate than its spread.</summary>
    public static void Judge(
        Engine engine,
        ThrottleState? state,
        List<UsableReading> usable,
        JetDirectivity? table,
        SoundFindings findings
    )
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
        double measured = Decibels.Mean([.. usable.Select(u => WholePowerDb(u, table))]);
        bool tooQuiet = measured < estimate - JetNoise.EstimateSpreadDb;
        bool tooLoud = measured > estimate + JetNoise.EstimateSpreadDb && IsFastestJet(engine, speed.Value);
        if (tooQuiet || tooLoud)
        {
            findings.Add(
                "sound.jet-power-far-off",
                Severity.Act,
                engine.Id,
                "SoundMeasurement.LevelDbA",
                FindingArgument.Of("state", state.Name ?? state.Id),
                SoundFindings.Decibels("measured", measured),
                SoundFindings.Decibels("estimate", estimate)
            );
        }
    }

    // The estimate knows the jet alone. At part throttle compressor and combustion are louder than the jet, so only the
    // fastest jet of the sheet can be called too loud; a reading that is too quiet is doubtful at any throttle.
    private static bool IsFastestJet(Engine engine, double speed) =>
        (engine.Sheet?.States ?? []).All(s => !(s.ExhaustSpeedMetresPerSecond?.Value > speed));

    private static double WholePowerDb(UsableReading usable, JetDirectivity? table)
    {
        double angle = MeasurementReduction.SlantAngleDegrees(usable.Reading) ?? double.NaN;
        double index = table is null || double.IsNaN(angle) ? 0 : table.IndexDb(angle);
        return Decibels.Sum(usable.PowerDb) - index;
    }
}
