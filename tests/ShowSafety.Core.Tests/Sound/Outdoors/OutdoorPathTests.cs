using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Outdoors.Reflections;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Tests.Sound.Outdoors;

public sealed class OutdoorPathTests
{
    [Fact]
    public void HardGroundFactor_WithoutAir_IsDivergenceAndFloorImage() =>
        Gen.Select(Gen.Double[0.5, 500], Gen.Double[0.1, 3], Gen.Double[0, 3])
            .Sample(
                (flat, source, receiver) =>
                {
                    double slant = OutdoorPath.SlantMetres(flat, source - receiver);
                    double expected = SoundPower.FloorImageDb(flat, source, receiver) - SoundPower.SphereDb(slant);
                    double path = Decibels.FromEnergy(OutdoorPath.HardGroundFactor(flat, source, receiver, 0));
                    Assert.Equal(expected, path, 1e-9);
                }
            );

    [Fact]
    public void HardGroundFactor_CaseT01_LiesWithinAThousandthOfTheStandard()
    {
        // ISO/TR 17534-3:2015, T01: the floor image moves the near ground term by 0.001 dB there (derived), with the
        // middle region's own -0.68 dB left aside.
        double flat = Math.Sqrt((190 * 190) + (40 * 40));

        Assert.Equal(10 * Math.Log10(2), SoundPower.FloorImageDb(flat, 1, 4), 0.002);
    }

    // Where the end regions overlap, ISO 9613-2 with the near-field ground and the two rays are one and the same.
    [Fact]
    public void PlaceOf_HardGroundWithinTheEndRegions_IsDirectSoundAndFloorImage() =>
        Gen.Select(Gen.Double[0.5, 29], Gen.Double[0, 3])
            .Sample(
                (distance, height) =>
                {
                    SoundMeasurement reading = Reading(distance, height, GroundKind.Hard);
                    var air = BandValues.Uniform(0.001);
                    var loss = BandValues.Build(band =>
                        -Decibels.FromEnergy(
                            OutdoorPath.HardGroundFactor(
                                distance,
                                reading.SourceHeightMetres,
                                reading.MicrophoneHeightMetres,
                                air[band]
                            )
                        )
                    );
                    BandValues own = MeasurementReduction.PlaceOf(reading).Path(air).LossDb;
                    Assert.All(own.Zip(loss), pair => Assert.Equal(pair.Second, pair.First, 1e-9));
                }
            );

    [Fact]
    public void PlaceOf_AnyGround_LosesNoLessThanHardGround() =>
        Gen.Select(Gen.Double[0.5, 50], Gen.Double[0, 3], Gen.Enum<GroundKind>())
            .Sample(
                (distance, height, ground) =>
                {
                    var air = BandValues.Uniform(0.001);
                    BandValues own = MeasurementReduction.PlaceOf(Reading(distance, height, ground)).Path(air).LossDb;
                    BandValues hard = MeasurementReduction
                        .PlaceOf(Reading(distance, height, GroundKind.Hard))
                        .Path(air)
                        .LossDb;
                    Assert.All(own.Zip(hard), pair => Assert.True(pair.First >= pair.Second - 1e-9));
                }
            );

    [Fact]
    public void Image_InAWall_MirrorsPlaceAndAxis()
    {
        var wall = new MirrorLine(0, -1, -5);

        Emitter image = wall.Image(Emitter.Of(new(2, 1), 0));

        Assert.Equal(new PlanPoint(2, 9), image.Place);
        Assert.Equal(-1, image.AxisY, 1e-12);
    }

    private static SoundMeasurement Reading(double distance, double height, GroundKind ground) =>
        SoundPlans.Reading() with
        {
            DistanceMetres = distance,
            MicrophoneHeightMetres = height,
            Ground = ground,
        };
}
