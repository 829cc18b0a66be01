using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Sound of a free jet from textbook formulas: a check of a measured level and the shape of a spectrum nobody
/// measured, never a source level of its own. Good to ±8 dB for hot jets near the speed of sound; compressor whine is
/// not in it.
/// </summary>
public static class JetNoise
{
    private const double AmbientSoundSpeed = 343.2;
    private const double AmbientKelvin = 293.15;
    private const double AmbientDensity = 1.204;

    /// <summary>How far the estimate may lie from a reading before the reading is questioned, in dB.</summary>
    public const double EstimateSpreadDb = 8;

    /// <summary>Stream power ½ ṁ U² in watts.</summary>
    /// <param name="massFlowKilogramsPerSecond">Mass flow, above 0.</param>
    /// <param name="speedMetresPerSecond">Jet speed at the nozzle, above 0.</param>
    public static double StreamPowerWatts(double massFlowKilogramsPerSecond, double speedMetresPerSecond) =>
        0.5 * massFlowKilogramsPerSecond * speedMetresPerSecond * speedMetresPerSecond;

    /// <summary>
    /// Sound power level in dB: η W_m with η = (T/T0)²(ρ/ρ0) K M⁵, K = 5·10⁻⁵, at equal pressure (so T/T0 in all), after
    /// Bies and Hansen, gas jets.
    /// </summary>
    public static double HotJetPowerDb(double massFlowKilogramsPerSecond, double speedMetresPerSecond, double kelvin) =>
        SoundPower.PowerLevelDb(
            StreamPowerWatts(massFlowKilogramsPerSecond, speedMetresPerSecond)
                * 5e-5
                * (kelvin / AmbientKelvin)
                * Math.Pow(speedMetresPerSecond / AmbientSoundSpeed, 5)
        );

    /// <summary>Sound power level in dB of a cold jet with η = 10⁻⁴ M⁵, after Beranek and Raichel.</summary>
    public static double ColdJetPowerDb(double massFlowKilogramsPerSecond, double speedMetresPerSecond) =>
        SoundPower.PowerLevelDb(
            StreamPowerWatts(massFlowKilogramsPerSecond, speedMetresPerSecond)
                * 1e-4
                * Math.Pow(speedMetresPerSecond / AmbientSoundSpeed, 5)
        );

    /// <summary>
    /// Sound power level in dB of a cold single stream, W = 6.67·10⁻⁵ ρ0 c0³ A (U/c0)⁸, after SAE ARP 876.
    /// </summary>
    public static double SingleStreamPowerDb(double nozzleDiameterMetres, double speedMetresPerSecond)
    {
        double area = Math.PI * nozzleDiameterMetres * nozzleDiameterMetres / 4;
        return SoundPower.PowerLevelDb(
            6.67e-5
                * AmbientDensity
                * Math.Pow(AmbientSoundSpeed, 3)
                * area
                * Math.Pow(speedMetresPerSecond / AmbientSoundSpeed, 8)
        );
    }

    /// <summary>Change of level in dB with jet speed, 80 lg(U2/U1), after Lighthill.</summary>
    public static double SpeedChangeDb(double fromMetresPerSecond, double toMetresPerSecond) =>
        80 * Math.Log10(toMetresPerSecond / fromMetresPerSecond);

    /// <summary>Frequency of the spectrum's peak, 0.2 U/D in hertz (Strouhal number 0.2).</summary>
    public static double PeakHertz(double speedMetresPerSecond, double nozzleDiameterMetres) =>
        0.2 * speedMetresPerSecond / nozzleDiameterMetres;

    /// <summary>
    /// Octave band shape with the asymptotes f² and f⁻² of spectral density (+9 and -3 dB an octave) about a peak,
    /// scaled to 0 dB(A). An assumption, not a measurement.
    /// </summary>
    public static BandValues ShapeDb(double peakHertz) =>
        Normalised(
            BandValues.Build(band =>
            {
                double f = OctaveBand.MidbandHertz(band);
                double ratio = f / peakHertz * (f / peakHertz);
                return 10 * Math.Log10(f * ratio / ((1 + ratio) * (1 + ratio)));
            })
        );

    /// <summary>Equal octave levels scaled to 0 dB(A), where not even the peak can be placed: a choice.</summary>
    public static BandValues FlatShapeDb { get; } = Normalised(BandValues.Zero);

    private static BandValues Normalised(BandValues bandsDb) => bandsDb - FrequencyWeighting.LevelDbA(bandsDb);
}
