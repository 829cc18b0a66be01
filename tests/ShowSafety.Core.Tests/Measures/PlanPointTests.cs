using CsCheck;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Tests.Measures;

public sealed class PlanPointTests
{
    private static readonly Gen<PlanPoint> Place = Gen.Select(Gen.Double[-500, 500], Gen.Double[-500, 500])
        .Select(p => new PlanPoint(p.Item1, p.Item2));

    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(90, 1, 0)]
    [InlineData(180, 0, -1)]
    [InlineData(270, -1, 0)]
    public void Along_CompassHeadings_GoUpRightDownLeft(double heading, double x, double y)
    {
        PlanPoint moved = new PlanPoint(0, 0).Along(heading, 1);

        Assert.Equal(x, moved.XMetres, 1e-12);
        Assert.Equal(y, moved.YMetres, 1e-12);
    }

    [Fact]
    public void BearingDegrees_OfAPointAlongAHeading_IsThatHeading() =>
        Gen.Select(Place, Gen.Double[0, 359.99], Gen.Double[0.01, 400])
            .Sample(
                (from, heading, metres) =>
                {
                    PlanPoint to = from.Along(heading, metres);
                    return Heading.Between(from.BearingDegrees(to), heading) < 1e-6
                        && Math.Abs(from.DistanceMetres(to) - metres) < 1e-9;
                }
            );

    [Theory]
    [InlineData(-90, 270)]
    [InlineData(720, 0)]
    [InlineData(359.5, 359.5)]
    public void Normalised_AnyTurn_IsInTheCircle(double degrees, double expected) =>
        Assert.Equal(expected, Heading.Normalised(degrees), 1e-12);
}
