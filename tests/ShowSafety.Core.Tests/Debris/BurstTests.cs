using CsCheck;
using ShowSafety.Core.Debris;

namespace ShowSafety.Core.Tests.Debris;

/// <summary>Mechanics of a disc broken into equal sectors.</summary>
public sealed class BurstTests
{
    private static readonly Gen<Wheel> Wheels = Gen.Select(
        Gen.Double[0.01, 5],
        Gen.Double[0.01, 0.3],
        Gen.Double[0, 0.9],
        Gen.Double[0, 2],
        (mass, radius, bore, blades) =>
            Wheel.Disc(mass, radius, bore * radius) + Wheel.Ring(blades * mass, radius * 1.1)
    );

    [Fact]
    public void IntoEqualSectors_AnyWheelAndNumber_ConservesEnergy() =>
        Gen.Select(Wheels, Gen.Double[1000, 200_000], Gen.Int[1, 60])
            .Sample(
                (wheel, rpm, pieces) =>
                {
                    SectorPiece piece = Burst.IntoEqualSectors(wheel, rpm, pieces);
                    double sum = pieces * (piece.TranslationJoules + piece.SpinJoules);
                    return Math.Abs(sum - piece.WheelJoules) <= 1e-9 * piece.WheelJoules
                        && piece.TranslationJoules >= 0
                        && piece.SpinJoules >= -1e-9 * piece.WheelJoules;
                }
            );

    [Fact]
    public void IntoEqualSectors_AllPieces_HaveNoMomentumTogether() =>
        Gen.Select(Wheels, Gen.Double[1000, 200_000], Gen.Int[2, 60], Gen.Double[0, 6.3])
            .Sample(
                (wheel, rpm, pieces, start) =>
                {
                    SectorPiece piece = Burst.IntoEqualSectors(wheel, rpm, pieces);
                    double momentum = piece.MassKilograms * piece.SpeedMetresPerSecond;
                    double[] angles = [.. Enumerable.Range(0, pieces).Select(i => start + (2 * Math.PI * i / pieces))];
                    double along = angles.Sum(a => momentum * Math.Cos(a));
                    double across = angles.Sum(a => momentum * Math.Sin(a));
                    return Math.Sqrt((along * along) + (across * across)) <= 1e-9 * momentum * pieces;
                }
            );

    [Fact]
    public void IntoEqualSectors_PlainDisc_SpinMatchesTheSectorsOwnInertia() =>
        Gen.Select(Gen.Double[0.01, 1], Gen.Double[0.01, 0.2], Gen.Double[1000, 150_000], Gen.Int[1, 12])
            .Sample(
                (mass, radius, rpm, pieces) =>
                {
                    SectorPiece piece = Burst.IntoEqualSectors(Wheel.Disc(mass, radius), rpm, pieces);
                    double centroid = piece.CentroidRadiusMetres;
                    double inertia = mass / pieces * ((radius * radius / 2) - (centroid * centroid));
                    double omega = Burst.AngularSpeed(rpm);
                    double spin = inertia * omega * omega / 2;
                    return Math.Abs(spin - piece.SpinJoules) <= 1e-9 * piece.WheelJoules;
                }
            );

    [Fact]
    public void IntoEqualSectors_PlainDisc_ThreePiecesCarryMostEach()
    {
        var disc = Wheel.Disc(0.19, 0.038);
        int worst = Enumerable.Range(1, 40).MaxBy(n => Burst.IntoEqualSectors(disc, 102_000, n).TranslationJoules);

        Assert.Equal(3, worst);
    }

    [Fact]
    public void IntoEqualSectors_PlainDisc_TwoAndFourTie()
    {
        var disc = Wheel.Disc(0.19, 0.038);
        double two = Burst.IntoEqualSectors(disc, 102_000, 2).TranslationShare;
        double four = Burst.IntoEqualSectors(disc, 102_000, 4).TranslationShare;

        Assert.Equal(16 / (9 * Math.PI * Math.PI), two, 12);
        Assert.Equal(two, four, 12);
    }

    [Fact]
    public void WorstSector_Always_BeatsEveryWholeNumber()
    {
        var disc = Wheel.Disc(1, 1);
        double share = Burst.WorstSector().Share;

        Assert.All(
            Enumerable.Range(1, 40),
            n => Assert.True(Burst.IntoEqualSectors(disc, 1000, n).TranslationShare < share)
        );
    }

    [Fact]
    public void IntoEqualSectors_TwentyPercentFaster_HasFortyFourPercentMoreEnergy()
    {
        var disc = Wheel.Disc(0.19, 0.038);
        double rated = Burst.IntoEqualSectors(disc, 100_000, 3).TranslationJoules;

        Assert.Equal(1.44 * rated, Burst.IntoEqualSectors(disc, 120_000, 3).TranslationJoules, 6);
    }

    [Theory]
    [InlineData(0.038, 0.038)]
    [InlineData(0.038, 0.040)]
    [InlineData(0.038, -0.001)]
    public void Disc_BoreOutsideTheWheel_IsRefused(double radius, double bore) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Wheel.Disc(0.19, radius, bore));

    [Fact]
    public void IntoEqualSectors_NoPieces_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Burst.IntoEqualSectors(Wheel.Disc(1, 1), 1000, 0));
}
