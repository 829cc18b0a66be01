using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Tests.PublishedCases;

namespace ShowSafety.Core.Tests.Exposure.Protection;

public sealed class ProtectorRatingTests
{
    private static readonly BandValues[] Subjects =
    [
        .. PublishedCase
            .ReadAll()
            .Single(c => c.Id == "iso-4869-group")
            .Inputs["attenuationsDb"]
            .EnumerateArray()
            .Select(e => e.GetDouble())
            .Chunk(8)
            .Select(s => BandValues.Of(s)),
    ];

    // ISO 4869-2:2018 Annex A, table A.1: printed means and standard deviations.
    [Fact]
    public void Mean_SixteenSubjects_GivesThePrintedRows()
    {
        double[] mean = [7.4, 10.0, 14.4, 19.6, 22.8, 29.6, 38.8, 34.1];
        double[] deviation = [3.3, 3.6, 3.6, 4.6, 4.0, 6.2, 7.4, 5.2];
        BandValues actualMean = ProtectorRating.Mean(Subjects);
        BandValues actualDeviation = ProtectorRating.StandardDeviation(Subjects);

        for (int band = 0; band < 8; band++)
        {
            Assert.InRange(actualMean[band], mean[band] - 0.051, mean[band] + 0.051);
            Assert.InRange(actualDeviation[band], deviation[band] - 0.051, deviation[band] + 0.051);
        }
    }

    // The standard's APV row is the difference of its rounded rows: 10.8, 15.0 and 31.4 are 10.74, 14.94, 31.32.
    [Fact]
    public void AssumedProtection_SixteenSubjects_DiffersFromTheRoundedRow()
    {
        BandValues apv = ProtectorRating.AssumedProtection(
            ProtectorRating.Mean(Subjects),
            ProtectorRating.StandardDeviation(Subjects),
            ProtectorRating.Alpha84
        );
        double[] printed = [4.1, 6.4, 10.8, 15.0, 18.8, 23.4, 31.4, 28.9];

        for (int band = 0; band < 8; band++)
        {
            Assert.InRange(apv[band], printed[band] - 0.1, printed[band] + 0.1);
        }

        Assert.Equal(10.74, apv[2], 2);
        Assert.Equal(14.94, apv[3], 2);
        Assert.Equal(31.32, apv[6], 2);
    }

    // ISO 4869-2:2018 table 2: every noise is made for 100 dB(A) with its printed L_C − L_A.
    [Fact]
    public void ReferenceNoises_Each_SumToHundred() =>
        Assert.All(ReferenceNoises.AWeightedDb, noise => Assert.InRange(Decibels.Sum(noise), 99.9, 100.1));

    [Fact]
    public void Of_NoAttenuation_IsNearlyNothing()
    {
        ProtectorRatings none = ProtectorRating.Of(BandValues.Zero);

        Assert.InRange(none.HighDb, -0.2, 0.2);
        Assert.InRange(none.MediumDb, -0.2, 0.2);
        Assert.InRange(none.LowDb, -0.2, 0.2);
    }

    [Fact]
    public void OfSubjects_OneSubject_Refuses() =>
        Assert.Throws<ArgumentException>(() => ProtectorRating.OfSubjects([BandValues.Zero], 1));
}
