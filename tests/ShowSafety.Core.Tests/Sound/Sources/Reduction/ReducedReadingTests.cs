using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Sources;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Tests.Sound.Sources.Reduction;

public sealed class ReducedReadingTests
{
    private static readonly BandValues Air = AirAbsorption
        .BandsDecibelsPerKilometre(new(15, 60, 101.325))
        .Map(AirAbsorption.PowerCoefficientPerMetre);

    private static readonly MicrophonePlace ThreeMetres = new(3, 1, 1.5, GroundFactors.Even(0));

    // The way back meets the reading at its own microphone, over any ground: the rule is a hundredth of a decibel.
    [Fact]
    public void Of_AnyReading_IsMetAgainAtItsMicrophone() =>
        Gen.Select(Gen.Double[0.5, 60], Gen.Double[0.05, 3], Gen.Double[0, 3], Gen.Double[0, 1])
            .Sample(
                (distance, source, microphone, factor) =>
                {
                    var engine = new Emitter(new(0, 0), 0, 1);
                    var site = new OpenAirSite(new([], factor), [], [], Air);
                    var place = new MicrophonePlace(distance, source, microphone, GroundFactors.Even(factor));
                    ReducedReading reduced = ReducedReading.Of(SoundPlans.Bands, null, null, place, Air)!;
                    BandValues back = OpenAirPath.SumDb(
                        site.Paths(engine, source, new(new(0, distance), microphone)),
                        _ => reduced.PowerDb
                    );
                    Assert.All(back.Zip(SoundPlans.Bands), l => Assert.Equal(l.Second, l.First, 0.01));
                }
            );

    // 3 m over hard ground: the plain half sphere of 8 dB would be 0.95 dB low (derived, ISO 9613-2:1996 eq. (11)).
    [Fact]
    public void Of_HardGroundAtThreeMetres_IsAboveThePlainHalfSphere()
    {
        ReducedReading reduced = ReducedReading.Of(BandValues.Uniform(100), null, null, ThreeMetres, BandValues.Zero)!;

        double half = 100 + SoundPower.HemisphereDb(OutdoorPath.SlantMetres(3, 0.5));
        Assert.Equal(0.95, reduced.PowerDb[4] - half, 0.005);
    }

    [Fact]
    public void Of_BackgroundTooNear_CannotTell() =>
        Assert.Null(
            ReducedReading.Of(
                SoundPlans.Bands,
                FrequencyWeighting.LevelDbA(SoundPlans.Bands) - 2.9,
                null,
                ThreeMetres,
                Air
            )
        );

    // K1 at 8 dB is 0.75 dB (ISO 3744:2010, via transcription).
    [Fact]
    public void Of_BackgroundEightDecibelsBelow_TakesK1OffEveryBand()
    {
        double background = FrequencyWeighting.LevelDbA(SoundPlans.Bands) - 8;

        ReducedReading reduced = ReducedReading.Of(SoundPlans.Bands, background, null, ThreeMetres, Air)!;

        Assert.Equal(BackgroundVerdict.Corrected, reduced.Background.Verdict);
        Assert.All(reduced.FreeDb.Zip(SoundPlans.Bands), l => Assert.Equal(0.75, l.Second - l.First, 0.005));
    }

    // A half sphere of 2 m in a room of 200 m² absorption: K2 = 1.77 dB (ISO 3744:2010, memory; derived).
    [Fact]
    public void Of_InsideARoom_TakesK2Off()
    {
        var onTheFloor = new MicrophonePlace(2, 0.04, 0.04, GroundFactors.Even(0));

        ReducedReading reduced = ReducedReading.Of(
            BandValues.Uniform(100),
            null,
            BandValues.Uniform(200),
            onTheFloor,
            BandValues.Zero
        )!;

        Assert.Equal(8 * Math.PI, onTheFloor.SurfaceSquareMetres[4], 0.03);
        Assert.All(reduced.FreeDb, l => Assert.Equal(98.23, l, 0.005));
        Assert.Equal(RoomVerdict.Engineering, reduced.Room!.Verdict);
    }

    // In a room the direct part and the diffuse field 4/A together give the reading: K2 is that field, no other formula.
    [Fact]
    public void Of_InsideARoom_DirectAndDiffuseFieldGiveTheReading() =>
        Gen.Select(Gen.Double[1, 10], Gen.Double[100, 3000])
            .Sample(
                (distance, absorption) =>
                {
                    var place = new MicrophonePlace(distance, 1, 1.5, GroundFactors.Even(0));
                    ReducedReading reduced = ReducedReading.Of(
                        SoundPlans.Bands,
                        null,
                        BandValues.Uniform(absorption),
                        place,
                        BandValues.Zero
                    )!;
                    double power = Decibels.ToEnergy(reduced.PowerDb[4]);
                    double direct = power * OutdoorPath.HardGroundFactor(distance, 1, 1.5, 0);
                    double level = Decibels.FromEnergy(direct + (4 / absorption * power));
                    bool capped = reduced.Room!.CorrectionDb[4] >= RoomCorrection.MostSurveyDb;
                    Assert.True(
                        capped ? level >= SoundPlans.Bands[4] - 1e-9 : Math.Abs(level - SoundPlans.Bands[4]) < 1e-9
                    );
                }
            );
}
