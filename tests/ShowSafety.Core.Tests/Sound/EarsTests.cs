using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Tests.Sound;

public sealed class EarsTests
{
    // Planning values of common practice, no published source.
    [Fact]
    public void OfEverybody_Heights_AreThePlanningValues() =>
        Assert.Equal([1.0, 1.2, 1.55, 1.8, 2.2], Ears.OfEverybody);

    // A screen 2 m high hides standing ears from a source at 1 m and fails for a child on shoulders.
    [Fact]
    public void OfEverybody_BehindALowScreen_TheChildOnShouldersHearsMost()
    {
        var source = new RaisedPoint(new(0, 0), 1);
        Obstacle screen = new("screen", [new(2, -50), new(2, 50)], false, 2);

        double worst = Ears.OfEverybody.MinBy(height =>
            ScreeningLoss.BandsDb(source, new(new(10, 0), height), [screen], BandValues.Uniform(-3))![5]
        );

        Assert.Equal(Ears.ChildOnShouldersMetres, worst);
    }

    // Near hard ground the floor's image is nearer to a low ear.
    [Fact]
    public void OfEverybody_NearHardGround_TheEarAtTheSourceHearsMost() =>
        Assert.Equal(Ears.ChildMetres, Ears.OfEverybody.MaxBy(ear => OutdoorPath.HardGroundFactor(2, 0.9, ear, 0)));
}
