using CsCheck;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Tests.Exhaust;

public sealed class DecayingJetTests
{
    private static readonly DecayingJet Jet = new(80, 0.107, 400, 0.03);

    private static readonly Gen<(
        double Constant,
        double Slope,
        double Threshold,
        double Heading,
        double X,
        double Y
    )> Cases = Gen.Select(
        Gen.Double[1, 2000],
        Gen.Double[0.05, 0.4],
        Gen.Double[1, 100],
        Gen.Double[0, 360],
        Gen.Double[-500, 500],
        Gen.Double[-500, 500]
    );

    // Shape of a zone of C/x with a Gaussian of width βx: widest at x_t/√e with 0.4289 β x_t (exact).
    [Fact]
    public void HalfWidth_AtItsWidest_IsTheExactMaximum()
    {
        var jet = new DecayingJet(100, 0.1, double.PositiveInfinity, 0);
        double at = 10 / Math.Sqrt(Math.E);

        Assert.Equal(10, jet.ReachMetres(10), 1e-12);
        Assert.Equal(0.4289 * 0.1 * 10, jet.HalfWidthMetres(at, 10), 1e-4);
        Assert.True(jet.HalfWidthMetres(at * 0.98, 10) < jet.HalfWidthMetres(at, 10));
        Assert.True(jet.HalfWidthMetres(at * 1.02, 10) < jet.HalfWidthMetres(at, 10));
    }

    [Fact]
    public void ValueAt_NearTheNozzle_IsTheNozzlesOwn()
    {
        Assert.Equal(400, Jet.ValueAt(0, 0));
        Assert.Equal(400, Jet.ValueAt(0.1, 0));
        Assert.Equal(8, Jet.ValueAt(10, 0), 1e-9);
        Assert.Equal(0, Jet.ValueAt(-0.1, 0));
        Assert.Equal(0, Jet.ValueAt(0, 1));
    }

    [Fact]
    public void ValueAt_UnknownNozzleValue_IsFinite() =>
        Assert.True(double.IsFinite((Jet with { Cap = double.PositiveInfinity }).ValueAt(0, 0)));

    [Fact]
    public void Zone_NozzleSlowerThanTheLimit_IsEmpty()
    {
        DecayingJet slow = Jet with { Cap = 8 };

        Assert.Equal(0, slow.ReachMetres(8.9));
        Assert.True(slow.Zone(8.9, default, 0).IsEmpty);
    }

    [Fact]
    public void Zone_AnyJet_IsValidAndHoldsTheAxisUpToTheReach() =>
        Cases.Sample(c =>
        {
            var jet = new DecayingJet(c.Constant, c.Slope, double.PositiveInfinity, 0.02);
            var place = new PlanPoint(c.X, c.Y);
            Geometry zone = jet.Zone(c.Threshold, place, c.Heading);
            double reach = jet.ReachMetres(c.Threshold);
            LineString axis = SiteGeometry.Line([
                place.Along(c.Heading, 1e-6),
                place.Along(c.Heading, reach * (1 - 1e-9)),
            ]);
            return zone.IsValid && zone is Polygon && zone.Buffer(1e-6).Covers(axis);
        });

    [Fact]
    public void Zone_AnyJet_IsDrawnRoundTheCurve() =>
        Gen.Select(Cases, Gen.Double[0.001, 0.999], Gen.Bool)
            .Sample(
                (c, share, left) =>
                {
                    var jet = new DecayingJet(c.Constant, c.Slope, double.PositiveInfinity, 0.02);
                    var place = new PlanPoint(c.X, c.Y);
                    double along = share * jet.ReachMetres(c.Threshold);
                    double aside = (left ? -1 : 1) * jet.HalfWidthMetres(along, c.Threshold);
                    PlanPoint edge = place.Along(c.Heading, along).Along(c.Heading + 90, aside);
                    return jet.Zone(c.Threshold, place, c.Heading).Distance(SiteGeometry.Point(edge)) < 1e-6;
                }
            );

    [Fact]
    public void Zone_OutsideIt_TheValueIsUnderTheLimit() =>
        Gen.Select(Cases, Gen.Double[0.01, 1.2], Gen.Double[0, 3])
            .Sample(
                (c, share, wide) =>
                {
                    var jet = new DecayingJet(c.Constant, c.Slope, double.PositiveInfinity, 0.02);
                    double reach = jet.ReachMetres(c.Threshold);
                    double along = share * reach;
                    double aside = wide * c.Slope * reach;
                    PlanPoint point = new PlanPoint(c.X, c.Y).Along(c.Heading, along).Along(c.Heading + 90, aside);
                    bool outside =
                        jet.Zone(c.Threshold, new(c.X, c.Y), c.Heading).Distance(SiteGeometry.Point(point)) > 1e-6;
                    return !outside || jet.ValueAt(along, aside) <= c.Threshold * (1 + 1e-9);
                }
            );

    [Fact]
    public void Zone_NotFarOverTheCurve_WastesLittle()
    {
        Geometry zone = new DecayingJet(100, 0.1, double.PositiveInfinity, 0).Zone(10, default, 0);

        Assert.InRange(zone.EnvelopeInternal.Width / 2, 0.4288, 0.45);
        Assert.Equal(10, zone.EnvelopeInternal.MaxY, 1e-9);
        Assert.Equal(0, zone.EnvelopeInternal.MinY, 1e-9);
    }
}
