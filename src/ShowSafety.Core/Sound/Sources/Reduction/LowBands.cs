using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources.Reduction;

/// <summary>What a C-weighted level says about an assumed spectrum.</summary>
public enum LowBandsVerdict
{
    /// <summary>The low bands were raised and the others lowered: both levels are met.</summary>
    Raised,

    /// <summary>The spectrum as assumed is at least as loud in dB(C): it is kept, low bands are never taken down.</summary>
    Kept,

    /// <summary>
    /// So much more dB(C) than dB(A) would leave little above 250 Hz. The low bands are raised until the dB(C) is met and
    /// the others lowered by no more than 3 dB, which is louder in dB(A) than read. One of the two levels is doubtful.
    /// </summary>
    Doubtful,
}

/// <summary>
/// An assumed spectrum held against the dB(C) level read beside the dB(A) level. Two levels fix two numbers: how much the
/// bands up to 250 Hz, where the weightings differ, and the bands above go up or down.
/// </summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="BandsDb">Octave band levels in dB.</param>
/// <param name="LowChangeDb">What was added to the bands up to 250 Hz in dB.</param>
public sealed record LowBands(LowBandsVerdict Verdict, BandValues BandsDb, double LowChangeDb)
{
    private const int FirstOther = 3;

    // The bands above are halved at most, 3 dB: two levels are no reason to lose what lies above 250 Hz. A choice.
    private const double LeastOther = 0.5;

    /// <summary>Fits a spectrum.</summary>
    /// <param name="assumedDb">The assumed spectrum in dB, already with the dB(A) level read.</param>
    /// <param name="levelDbC">C-weighted level read in dB(C).</param>
    public static LowBands Of(BandValues assumedDb, double levelDbC)
    {
        double wantedC = Decibels.ToEnergy(levelDbC);
        (double lowA, double otherA) = Split(assumedDb + FrequencyWeighting.ABandsDb);
        (double lowC, double otherC) = Split(assumedDb + FrequencyWeighting.CBandsDb);
        if (!(wantedC > lowC + otherC))
        {
            return new(LowBandsVerdict.Kept, assumedDb, 0);
        }

        // u·lowA + v·otherA = A and u·lowC + v·otherC = C by Cramer's rule; v falls as C grows.
        double determinant = (lowA * otherC) - (lowC * otherA);
        double other = ((lowA * wantedC) - (lowC * (lowA + otherA))) / determinant;
        bool meets = determinant < 0 && other >= LeastOther;
        other = meets ? other : LeastOther;
        double low = Math.Max(1, (wantedC - (other * otherC)) / lowC);
        return new(
            meets ? LowBandsVerdict.Raised : LowBandsVerdict.Doubtful,
            BandValues.Build(b =>
                Decibels.FromEnergy(Decibels.ToEnergy(assumedDb[b]) * (b < FirstOther ? low : other))
            ),
            Decibels.FromEnergy(low)
        );
    }

    private static (double Low, double Other) Split(BandValues weightedDb) =>
        (weightedDb.Take(FirstOther).Sum(Decibels.ToEnergy), weightedDb.Skip(FirstOther).Sum(Decibels.ToEnergy));
}
