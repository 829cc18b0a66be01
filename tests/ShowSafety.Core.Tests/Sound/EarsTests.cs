using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Tests.Sound;

public sealed class EarsTests
{
    // Planning values of common practice, no published source.
    [Theory]
    [InlineData(Posture.Standing, 1.6)]
    [InlineData(Posture.Seated, 1.2)]
    [InlineData(Posture.Child, 1.0)]
    [InlineData(Posture.ChildOnShoulders, 2.2)]
    public void HeightMetres_Posture_IsThePlanningValue(Posture posture, double height) =>
        Assert.Equal(height, Ears.HeightMetres(posture));

    [Fact]
    public void All_Postures_AreAllOfThem() => Assert.Equal(Enum.GetValues<Posture>().Order(), Ears.All.Order());

    // A screen 2 m high hides standing ears from a source at 1 m and fails for a child on shoulders.
    [Fact]
    public void Worst_BehindALowScreen_IsTheChildOnShoulders()
    {
        var source = new RaisedPoint(new(0, 0), 1);
        Obstacle screen = new("screen", [new(2, -50), new(2, 50)], false, 2);

        WorstEar worst = Ears.Worst(
            Ears.All,
            height => -ScreeningLoss.BandsDb(source, new(new(10, 0), height), [screen], BandValues.Uniform(-3))![5]
        );

        Assert.Equal(Posture.ChildOnShoulders, worst.Posture);
        Assert.Equal(2.2, worst.HeightMetres);
    }

    // Near hard ground the floor's image is nearer to a low ear.
    [Fact]
    public void Worst_NearHardGround_IsTheEarNearestToTheSource()
    {
        WorstEar worst = Ears.Worst(Ears.All, h => Decibels.FromEnergy(OutdoorPath.HardGroundFactor(2, 0.9, h, 0)));

        Assert.Equal(Posture.Child, worst.Posture);
    }

    [Fact]
    public void Worst_NotANumber_IsRefused() =>
        Assert.Throws<ArgumentException>(() => Ears.Worst(Ears.All, h => h < 1.1 ? double.NaN : 80));

    [Fact]
    public void Worst_Nobody_IsRefused() => Assert.Throws<ArgumentException>(() => Ears.Worst([], _ => 80));

    [Fact]
    public void HeightMetres_NoSuchPosture_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Ears.HeightMetres((Posture)9));
}
