using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources.Reduction;

/// <summary>What a room does to a reading taken in it.</summary>
public enum RoomVerdict
{
    /// <summary>K2 in dB(A) up to 4: the limit of ISO 3744:2010.</summary>
    Engineering,

    /// <summary>K2 in dB(A) over 4 and up to 7: the limit of ISO 3746:2010.</summary>
    Survey,

    /// <summary>K2 in dB(A) over 7: no standard reaches so far, the level can only be called an upper limit.</summary>
    TooLive,
}

/// <summary>
/// The environmental correction K2 of a reading taken inside a described room, ISO 3744:2010 and ISO 3746:2010: what the
/// room throws back is taken off, no more than 7 dB in any band.
/// </summary>
/// <param name="Verdict">The verdict, by K2 in dB(A) before the limit of 7 dB.</param>
/// <param name="FormulaDbA">K2 in dB(A) by the formula, 0 or more.</param>
/// <param name="CorrectionDb">What is taken off each octave band in dB, 0 to 7.</param>
public sealed record RoomCorrection(RoomVerdict Verdict, double FormulaDbA, BandValues CorrectionDb)
{
    /// <summary>Largest K2 in dB(A) of ISO 3744:2010.</summary>
    public const double MostEngineeringDb = 4;

    /// <summary>Largest K2 in dB(A) of ISO 3746:2010; more is never taken off.</summary>
    public const double MostSurveyDb = 7;

    /// <summary>The correction of octave band levels.</summary>
    /// <param name="bandsDb">Levels at the microphone in dB.</param>
    /// <param name="surfaceSquareMetres">Measurement surface S of each band in m², above 0.</param>
    /// <param name="absorptionSquareMetres">Equivalent absorption area A of the room in m², above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An area is not above 0.</exception>
    public static RoomCorrection Of(
        BandValues bandsDb,
        BandValues surfaceSquareMetres,
        BandValues absorptionSquareMetres
    )
    {
        RequireArea(nameof(surfaceSquareMetres), surfaceSquareMetres);
        RequireArea(nameof(absorptionSquareMetres), absorptionSquareMetres);
        BandValues formula = surfaceSquareMetres.With(absorptionSquareMetres, SoundPower.EnvironmentCorrectionDb);
        double weighted = FrequencyWeighting.LevelDbA(bandsDb) - FrequencyWeighting.LevelDbA(bandsDb - formula);
        RoomVerdict verdict = weighted switch
        {
            <= MostEngineeringDb => RoomVerdict.Engineering,
            <= MostSurveyDb => RoomVerdict.Survey,
            _ => RoomVerdict.TooLive,
        };
        return new(verdict, weighted, formula.Map(k2 => Math.Min(k2, MostSurveyDb)));
    }

    private static void RequireArea(string name, BandValues areas)
    {
        foreach (double area in areas)
        {
            if (!(area > 0))
            {
                throw new ArgumentOutOfRangeException(name, area, "An area in m² above 0 is needed in every band.");
            }
        }
    }
}
