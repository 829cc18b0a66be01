using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources.Reduction;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound.Sources;

public sealed class RoomReadingTests
{
    // Read (course question): a classroom of 10 x 8 x 6 m with 3 s has 25.76 m2 by 0.161 V/T.
    [Fact]
    public void SquareMetres_Classroom_IsThePublishedArea() =>
        Assert.Equal(
            25.76,
            RoomAbsorption.SquareMetres(new() { VolumeCubicMetres = 480, ReverberationSeconds = 3 }, BandValues.Zero)![
                4
            ],
            0.01
        );

    [Fact]
    public void SquareMetres_BothWays_TakesTheLarger()
    {
        MeasurementRoom room = new()
        {
            VolumeCubicMetres = 480,
            ReverberationSeconds = 3,
            SurfaceSquareMetres = 376,
            MeanAbsorption = 0.2,
        };

        Assert.Equal(75.2, RoomAbsorption.SquareMetres(room, BandValues.Zero)![4], 1e-9);
    }

    // 4 m V of a sphere of 4 pi r2 = 400 m2: r = 5.642 m, V = 752.3 m3 (derived).
    [Fact]
    public void SquareMetres_VolumeUnknown_CountsTheAirOfTheLargestOne() =>
        Assert.Equal(
            40 + (4 * 0.01 * 752.25),
            RoomAbsorption.SquareMetres(
                new() { SurfaceSquareMetres = 400, MeanAbsorption = 0.1 },
                BandValues.Uniform(0.01)
            )![7],
            0.01
        );

    [Fact]
    public void SquareMetres_HalfARoom_IsNone() =>
        Assert.Null(
            RoomAbsorption.SquareMetres(new() { VolumeCubicMetres = 480, MeanAbsorption = 0.1 }, BandValues.Zero)
        );

    // K2 = 10 lg(1 + 4 S/A), ISO 3744:2010 (memory): with S of the very way back that reduces the reading.
    [Fact]
    public void Build_ReadingInADescribedRoom_TakesK2Off()
    {
        SoundMeasurement inside = Reading() with { Outdoors = false };
        MeasurementRoom room = new() { SurfaceSquareMetres = 4000, MeanAbsorption = 0.25 };
        double surface = SurfaceSquareMetres(inside);

        double without = PowerDb(inside);
        double with = PowerDb(inside with { Room = room });

        // Air in the largest room of that surface, 23 789 m3, adds 4 m V.
        double air = 4 * 23788.7 * AirAtOneKilohertz();
        double k2 = 10 * Math.Log10(1 + (4 * surface / (1000 + air)));
        Assert.InRange(k2, 0.5, 3);
        Assert.Equal(k2, without - with, 0.01);
    }

    [Fact]
    public void Build_RoomStatedThoughOutdoors_TakesNothingOffAndSaysSo()
    {
        SoundMeasurement odd = Reading() with
        {
            Room = new() { SurfaceSquareMetres = 4000, MeanAbsorption = 0.25 },
        };
        var field = SoundField.Build(Single(odd));

        Assert.Equal(PowerDb(Reading()), PowerDb(odd), 1e-9);
        Assert.Contains(field.Findings, f => f is { Code: "sound.room-though-outdoors", Severity: Severity.Act });
    }

    // However live the room, no more than 7 dB (ISO 3746:2010, memory) goes off.
    [Fact]
    public void Build_VeryLiveRoom_TakesNoMoreThanSevenDecibelsOff()
    {
        SoundMeasurement inside = Reading() with { Outdoors = false };
        MeasurementRoom room = new() { SurfaceSquareMetres = 300, MeanAbsorption = 0.01 };

        Assert.Equal(7, PowerDb(inside) - PowerDb(inside with { Room = room }), 1e-6);
    }

    private static double PowerDb(SoundMeasurement reading) =>
        SoundField.Build(Single(reading)).Engines[0].State(Full)!.Power!.LevelsDb(90)[4];

    private static double AirAtOneKilohertz() =>
        AirAbsorption.PowerCoefficientPerMetre(AirAbsorption.BandsDecibelsPerKilometre(new(15, 60, 101.325))[4]);

    // S over hard ground without air: one over direct sound and floor image, ISO 9613-2:1996 equation (11).
    private static double SurfaceSquareMetres(SoundMeasurement reading)
    {
        double flat = reading.DistanceMetres * reading.DistanceMetres;
        return 1 / ((1 / (4 * Math.PI * (flat + 0.25))) + (1 / (4 * Math.PI * (flat + 6.25))));
    }
}
