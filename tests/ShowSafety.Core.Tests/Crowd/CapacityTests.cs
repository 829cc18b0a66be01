using CsCheck;
using ShowSafety.Core.Crowd;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Crowd.CrowdPlans;

namespace ShowSafety.Core.Tests.Crowd;

public sealed class CapacityTests
{
    private static readonly Gen<List<double>> Widths = Gen.Double[0.5, 20].List[0, 6];

    private static Quantity Of(Plan plan, string key) =>
        CrowdAssessor.Assess(plan).Figures.Single(f => f.Key == key).Value;

    private static Plan InTent(int adults, params double[] widths) =>
        Complete with
        {
            Site = Complete.Site with
            {
                Enclosure = new()
                {
                    Id = "tent",
                    Kind = EnclosureKind.Tent,
                    Footprint = Box(-40, -5, 80, 60),
                },
                Exits =
                [
                    .. widths.Select(
                        (w, i) =>
                            new SiteExit
                            {
                                Id = $"x{i}",
                                Place = new(-30 + i, 55),
                                WidthMetres = Measured(w),
                            }
                    ),
                    new()
                    {
                        Id = "field",
                        Place = new(59, 59),
                        WidthMetres = Measured(10),
                    },
                ],
            },
            People = [Watchers with { Adults = adults, Children = 0, Area = Box(-30, 20, 60, 20) }],
        };

    [Fact]
    public void Width_OneMoreExit_NeverLowersCapacity() =>
        Gen.Select(Widths, Gen.Double[0.5, 20])
            .Sample(
                (widths, another) =>
                {
                    List<double> more = [.. widths, another];
                    Assert.True(
                        Capacity.WidthWithoutTheWidestMetres(more)
                            >= Capacity.WidthWithoutTheWidestMetres(widths) - 1e-9
                    );
                    Assert.True(Capacity.OfExitsWithoutTheWidest(more) >= Capacity.OfExitsWithoutTheWidest(widths));
                }
            );

    [Fact]
    public void Width_OrderOfExits_DoesNotMatter() =>
        Widths.Sample(widths =>
            Assert.Equal(
                Capacity.WidthWithoutTheWidestMetres(widths),
                Capacity.WidthWithoutTheWidestMetres([.. widths.AsEnumerable().Reverse()]),
                9
            )
        );

    [Fact]
    public void OfOneExit_WiderExit_NeverServesFewer() =>
        Gen.Select(Gen.Double[0, 5], Gen.Double[0, 5])
            .Sample((a, b) => Assert.True(Capacity.OfOneExit(Math.Max(a, b)) >= Capacity.OfOneExit(Math.Min(a, b))));

    [Fact]
    public void Assess_OpenGround_LeavesTheWidestExitOut()
    {
        Assert.Equal(200, Of(Complete, "crowd.capacity-by-area").Planning);
        Assert.Equal(2 * 109 * 5, Of(Complete, "crowd.capacity-by-exits").Planning);
    }

    // Two exits of 2.5 m: 512 by flow (2.5 m, 82 a minute, 2.5 min), 500 by the English widths; the lower one is planned.
    [Fact]
    public void Assess_Tent_TakesItsOwnExitsAndTheLowerTable()
    {
        Quantity capacity = Of(InTent(100, 2.5, 2.5), "crowd.capacity-by-exits");

        Assert.Equal(512, capacity.Best);
        Assert.Equal(500, capacity.Planning);
    }

    [Fact]
    public void Assess_TentWithTooFewWaysOut_Stops()
    {
        Assert.DoesNotContain("crowd.exits-too-small", Codes(InTent(500, 2.5, 2.5)));
        Assert.Equal(
            Severity.Stop,
            CrowdAssessor.Assess(InTent(501, 2.5, 2.5)).Findings.Single(f => f.Code == "crowd.exits-too-small").Severity
        );
    }

    [Theory]
    [InlineData(0, "crowd.exits-missing")]
    [InlineData(1, "crowd.one-exit")]
    public void Assess_TentWithoutASecondExit_Stops(int exits, string code)
    {
        Finding finding = CrowdAssessor
            .Assess(InTent(10, [.. Enumerable.Repeat(2.0, exits)]))
            .Findings.Single(f => f.Code == code);

        Assert.Equal(Severity.Stop, finding.Severity);
    }

    [Fact]
    public void Assess_OpenGroundWithoutExits_CannotTell()
    {
        Finding finding = CrowdAssessor.Assess(WithExits()).Findings.Single(f => f.Code == "crowd.exits-missing");

        Assert.True(finding is { Severity: Severity.Act, CannotTell: true, Field: "Site.Exits" });
    }

    [Fact]
    public void Assess_ExitWithoutAWidth_IsNotCounted()
    {
        SiteExit known = Complete.Site.Exits[1];
        Plan plan = WithExits(known, Complete.Site.Exits[0] with { WidthMetres = null });

        Assert.Contains("crowd.exit-width-missing", Codes(plan));
        Assert.Equal(0, Of(plan, "crowd.capacity-by-exits").Planning);
    }

    // 100 m²: room for 200; above 400 a crowd is unstable (crowd dynamics guide of an English borough).
    [Theory]
    [InlineData(180, null)]
    [InlineData(181, Severity.Act)]
    [InlineData(380, Severity.Act)]
    [InlineData(381, Severity.Stop)]
    public void Assess_Crowding_WeighsByDensity(int adults, Severity? expected)
    {
        Finding? finding = CrowdAssessor
            .Assess(WithWatchers(w => w with { Adults = adults }))
            .Findings.SingleOrDefault(f => f.Code == "crowd.area-too-small");

        Assert.Equal(expected, finding?.Severity);
    }

    [Fact]
    public void Assess_OverlappingAreas_AreCountedOnce()
    {
        Plan plan = Complete with { People = [Watchers, Watchers with { Id = "more" }] };

        Assert.Equal(200, Of(plan, "crowd.capacity-by-area").Planning);
    }

    [Fact]
    public void Assess_NumbersMissing_CannotTell()
    {
        Plan plan = WithWatchers(w => w with { Adults = null, Children = null, Area = [] });

        Assert.Equal(["crowd.adults-missing", "crowd.children-missing", "crowd.visitor-area-missing"], Codes(plan));
    }
}
