using CsCheck;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Tests.Measures;

public sealed class SiteGeometryTests
{
    private static readonly Gen<(double Radius, double Heading)> Circles = Gen.Select(
        Gen.Double[0.1, 300],
        Gen.Double[0, 360]
    );

    [Fact]
    public void CircleAround_AnyDirection_IsNeverShortOfTheCircle() =>
        Circles.Sample(c =>
        {
            Polygon circle = SiteGeometry.CircleAround(new(3, -2), c.Radius);
            PlanPoint onCircle = new PlanPoint(3, -2).Along(c.Heading, c.Radius * (1 - 1e-9));
            return circle.Contains(SiteGeometry.Point(onCircle)) && circle.IsValid;
        });

    [Fact]
    public void Widened_ARectangle_HoldsEverythingWithinTheDistance() =>
        Circles.Sample(c =>
        {
            Polygon table = SiteGeometry.Polygon([new(0, 0), new(2, 0), new(2, 1), new(0, 1)]);
            Geometry wide = SiteGeometry.Widened(table, c.Radius);
            PlanPoint offCorner = new PlanPoint(2, 1).Along(c.Heading, c.Radius * (1 - 1e-9));
            return wide.Contains(SiteGeometry.Point(offCorner)) && wide.IsValid;
        });

    [Fact]
    public void Polygon_TwoPoints_IsRefused() =>
        Assert.Throws<ArgumentException>(() => SiteGeometry.Polygon([new(0, 0), new(1, 0)]));

    [Fact]
    public void Union_OfNothing_IsEmpty() => Assert.True(SiteGeometry.Union([]).IsEmpty);
}
