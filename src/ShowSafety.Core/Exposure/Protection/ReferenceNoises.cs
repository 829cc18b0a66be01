using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure.Protection;

/// <summary>
/// The noises ISO 4869-2:2018 rates protectors with: eight reference noises of table 2 (A-weighted octave band levels
/// for L_A = 100 dB) with the constants d_i, and the pink noise of the SNR with L_C = 100 dB. Values from memory; they
/// reproduce every rating of the standard's own example.
/// </summary>
public static class ReferenceNoises
{
    /// <summary>A-weighted octave band levels of the eight noises in dB, 63 Hz first, for a total of 100 dB(A).</summary>
    public static ValueList<BandValues> AWeightedDb { get; } =
    [
        BandValues.Of(51.4, 62.6, 70.8, 81.0, 90.4, 96.2, 94.7, 92.3),
        BandValues.Of(59.5, 68.9, 78.3, 84.3, 92.8, 96.3, 94.0, 90.0),
        BandValues.Of(59.8, 71.1, 80.8, 88.0, 95.0, 94.4, 94.1, 89.0),
        BandValues.Of(65.4, 77.2, 84.5, 89.8, 95.5, 94.3, 92.5, 88.8),
        BandValues.Of(65.3, 77.4, 86.5, 92.5, 96.4, 93.0, 90.4, 83.7),
        BandValues.Of(70.7, 82.0, 89.3, 93.3, 95.6, 93.0, 90.1, 83.0),
        BandValues.Of(75.6, 84.2, 90.1, 93.6, 96.2, 91.3, 87.9, 81.9),
        BandValues.Of(77.6, 88.0, 93.4, 93.8, 94.2, 91.4, 87.9, 79.9),
    ];

    /// <summary>L_C − L_A of the eight noises in dB.</summary>
    public static ValueList<double> CMinusADb { get; } = [-1.2, -0.5, 0.1, 1.6, 2.3, 4.3, 6.1, 8.4];

    /// <summary>Constants d_i of the eight noises, ISO 4869-2:2018 cl. 7.</summary>
    public static ValueList<double> Weights { get; } = [-1.20, -0.49, 0.14, 1.56, -2.98, -1.01, 0.85, 3.14];

    /// <summary>
    /// A-weighted octave band levels of the pink noise for L_C = 100 dB in dB, 125 Hz first: the 63 Hz band does not
    /// enter the SNR.
    /// </summary>
    public static ValueList<double> PinkFrom125HertzDb { get; } = [75.9, 83.4, 88.8, 92.0, 93.2, 93.0, 90.9];
}
