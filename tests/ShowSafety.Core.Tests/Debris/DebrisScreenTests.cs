using NetTopologySuite.Geometries;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Debris.DebrisPlans;

namespace ShowSafety.Core.Tests.Debris;

/// <summary>A screen holds pieces only on evidence that covers every one of them.</summary>
public sealed class DebrisScreenTests
{
    private static readonly PlanPoint Behind = new(20, 3.92);
    private static readonly PlanPoint InFront = new(7, 3.92);
    private static readonly PlanPoint OtherSide = new(-14, 3.92);

    [Fact]
    public void Assess_TestCoversEveryPiece_CutsTheSectorsBehindTheScreenOnly()
    {
        DebrisAssessment found = Assess(Screen());

        Assert.Contains(found.Findings, f => f is { Code: "debris.screen-holds", Severity: Severity.Note });
        Zone zone = found.Zones[0];
        Assert.Equal(ZoneFrame.Site, zone.Frame);
        Assert.True(zone.Area.IsValid);
        Assert.False(zone.Area.Intersects(SiteGeometry.Point(Behind)));
        Assert.True(zone.Area.Covers(SiteGeometry.Point(InFront)));
        Assert.True(zone.Area.Covers(SiteGeometry.Point(OtherSide)));
    }

    [Fact]
    public void Assess_TestCoversEveryPiece_LeavesTheLandingAreaWhole()
    {
        Zone with = Landing(Assess(Screen()));
        Zone without = Landing(DebrisAssessor.Assess(With(Turbine)));

        Assert.True(with.Area.EqualsTopologically(without.Area));
    }

    public static TheoryData<string, string> Refused =>
        new()
        {
            { "none", "debris.screen-without-evidence" },
            { "no report", "debris.screen-without-evidence" },
            { "no energy", "debris.screen-without-evidence" },
            { "no mass", "debris.screen-without-evidence" },
            { "no face", "debris.screen-without-evidence" },
            { "estimated", "debris.screen-without-evidence" },
            { "weak", "debris.screen-test-too-weak" },
            { "blunt", "debris.screen-test-too-weak" },
            { "light", "debris.screen-projectile-too-light" },
            { "acrylic", "debris.screen-acrylic" },
            { "low", "debris.screen-too-low" },
            { "no height", "debris.screen-height-unknown" },
            { "short", "debris.screen-too-short" },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Assess_EvidenceOrBuildFallsShort_HoldsNothing(string fault, string code)
    {
        DebrisAssessment found = Assess(Faulty(fault));

        Finding why = Assert.Single(found.Findings, f => f.ElementId == "screen");
        Assert.Equal((code, Severity.Act), (why.Code, why.Severity));
        Assert.True(found.Zones[0].Area.Covers(SiteGeometry.Point(Behind)));
    }

    [Fact]
    public void Assess_BluntBlockWithEnoughEnergy_DoesNotCoverAnIntermediatePiece()
    {
        // A heavy blunt block is no test for a small hard piece: 8 kJ on 100 mm against 304 J on 10.4 mm.
        DebrisPiece small = DebrisAssessor.Assess(With(Turbine)).Pieces.Single(p => p.Kind == PieceKind.Intermediate);

        Assert.True(ScreenCoverage.DemandOf(small, 8000, 0.010) < 1);
        Assert.True(ScreenCoverage.DemandOf(small, 8000, 0.100) > 1);
    }

    [Fact]
    public void Assess_ShaftHeightUnknown_HoldsNothing()
    {
        Plan plan = With(Turbine) with { DebrisScreens = [Screen()] };
        plan = plan with { Engines = [plan.Engines[0] with { ShaftHeightMetres = null }] };

        DebrisAssessment found = DebrisAssessor.Assess(plan);

        Assert.Contains(found.Findings, f => f.Code == "debris.screen-height-unknown");
        Assert.True(found.Zones[0].Area.Covers(SiteGeometry.Point(Behind)));
    }

    [Fact]
    public void Assess_AnotherRotorUnknown_HoldsNothing()
    {
        Plan plan = With(Turbine, Compressor with { BladedMassKilograms = null }) with { DebrisScreens = [Screen()] };

        DebrisAssessment found = DebrisAssessor.Assess(plan);

        Assert.Contains(found.Findings, f => f is { Code: "debris.screen-pieces-unknown", CannotTell: true });
        Assert.True(found.Zones[0].Area.Covers(SiteGeometry.Point(Behind)));
    }

    [Fact]
    public void Assess_BladesUnknown_HoldsNothing()
    {
        Plan plan = With(Turbine with { BladeCount = null }) with { DebrisScreens = [Screen()] };

        Assert.Contains(DebrisAssessor.Assess(plan).Findings, f => f.Code == "debris.screen-pieces-unknown");
    }

    [Fact]
    public void Assess_ScreenOutsideTheSectors_IsNamed() =>
        Assert.Contains(
            Assess(Screen() with { Line = [new(2, 20), new(4, 20)] }).Findings,
            f => f is { Code: "debris.screen-beside", ElementId: "screen" }
        );

    [Fact]
    public void Assess_ScreenWithoutALine_NeverCrashes() =>
        Assert.Contains(Assess(Screen() with { Line = [] }).Findings, f => f.Code == "debris.screen-beside");

    [Fact]
    public void Assess_ScreenThroughTheEngine_HoldsNothing() =>
        Assert.Contains(
            Assess(Screen() with { Line = [new(3, -6), new(3, 14)] }).Findings,
            f => f.Code == "debris.screen-too-short"
        );

    [Fact]
    public void Assess_ScreensOnBothSides_LeaveOnlyTheGroundBetweenThem()
    {
        Plan plan = With(Turbine) with
        {
            DebrisScreens = [Screen(), Screen() with { Id = "west", Line = [new(-3, -6), new(-3, 14)] }],
        };

        Geometry area = DebrisAssessor.Assess(plan).Zones[0].Area;

        Assert.InRange(area.EnvelopeInternal.MinX, -3.001, 3);
        Assert.InRange(area.EnvelopeInternal.MaxX, 3, 9.001);
        Assert.True(area.Covers(SiteGeometry.Point(new(3, 3.92))));
    }

    [Fact]
    public void Behind_BentScreen_HidesTheGroundBehindItsCorner()
    {
        DirectFlightSector sector = new()
        {
            Nozzle = new(0, 0),
            IntakeHeadingDegrees = 180,
            NearestPlaneMetres = 0.1,
            FarthestPlaneMetres = 0.2,
            PieceHalfSizeMetres = 0.04,
        };

        Geometry shadow = ScreenShadow.Behind(sector, [new(5, -5), new(6, 0), new(5, 5)], 50);

        Assert.True(shadow.Covers(SiteGeometry.Point(new(20, 0))));
        Assert.False(shadow.Intersects(SiteGeometry.Point(new(4, 0))));
        Assert.False(shadow.Intersects(SiteGeometry.Point(new(-20, 0))));
    }

    [Theory]
    [InlineData(2.2, 1, 0.04, true)]
    [InlineData(2.19, 1, 0.04, false)]
    [InlineData(2.5, 2.47, 0.04, false)]
    public void IsTallEnough_HeadAndShaft_DecideTogether(double screen, double shaft, double radius, bool enough) =>
        Assert.Equal(enough, ScreenShadow.IsTallEnough(screen, shaft, radius));

    private static DebrisScreen Faulty(string fault)
    {
        DebrisScreen good = Screen();
        ScreenEvidence test = good.Evidence!;
        return fault switch
        {
            "none" => good with { Evidence = null },
            "no report" => good with { Evidence = test with { Reference = " " } },
            "no energy" => good with { Evidence = test with { TestedEnergyJoules = null } },
            "no mass" => good with { Evidence = test with { ProjectileKilograms = null } },
            "no face" => good with { Evidence = test with { ProjectileDiameterMetres = null } },
            "estimated" => good with { Evidence = test with { TestedEnergyJoules = Is(40_000, Pedigree.Estimated) } },
            "weak" => Screen(joules: 661.25, kilograms: 1, faceMetres: 0.020),
            "blunt" => Screen(faceMetres: 0.5),
            "light" => Screen(kilograms: 0.05),
            "acrylic" => good with { Material = ScreenMaterial.Acrylic },
            "low" => good with { HeightMetres = Is(2) },
            "no height" => good with { HeightMetres = null },
            "short" => good with { Line = [new(9, 3.9), new(9, 4.0)] },
            _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "no such fault"),
        };
    }

    private static DebrisAssessment Assess(DebrisScreen screen) =>
        DebrisAssessor.Assess(With(Turbine) with { DebrisScreens = [screen] });

    private static Zone Landing(DebrisAssessment found) => found.Zones.Single(z => z.Row == ZoneRow.LandingArea);
}
