using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests.Plans;

public sealed class PlanCheckTests
{
    private static readonly Plan Field = Templates.Plan("field-with-neighbour");
    private static readonly Plan Marquee = Templates.Plan("open-sided-marquee");

    /// <summary>A change that makes a plan odd, and the code of the finding that must say so.</summary>
    private static readonly Dictionary<string, Plan> Odd = new()
    {
        ["plan.no-engine"] = Field with { Engines = [], Programme = null },
        ["plan.id-used-twice"] = Field with { People = Change(Field.People, 0, p => p with { Id = "tea-stand" }) },
        ["plan.unknown-engine"] = WithRun(r => r with { EngineId = "nobody" }),
        ["plan.evidence-twice"] = Field with
        {
            Gate = Field.Gate! with { EngineEvidence = [.. Field.Gate.EngineEvidence, .. Field.Gate.EngineEvidence] },
        },
        ["plan.unknown-state"] = WithRun(r => r with { Steps = [new() { StateId = "warp", Seconds = 5 }] }),
        ["plan.measurement-of-unknown-state"] = WithSheet(s =>
            s with
            {
                Measurements = Change(s.Measurements, 0, m => m with { StateId = "warp" }),
            }
        ),
        ["plan.unknown-protector"] = WithGroup(p => p with { ProtectorId = "hands" }),
        ["plan.acceptance-of-unknown"] = Field with
        {
            Decisions = new()
            {
                Acceptances =
                [
                    new()
                    {
                        Finding = "x.y",
                        By = "b",
                        ElementId = "gone",
                    },
                ],
            },
        },
        ["plan.engine-off-site"] = WithEngine(Field, e => e with { Place = new(500, 0) }),
        ["plan.bench-off-site"] = WithEngine(Field, e => e with { Place = new(0, 119.9) }),
        ["plan.exit-off-edge"] = WithSite(s =>
            s with
            {
                Exits = Change(s.Exits, 0, x => x with { Place = new(0, -60) }),
            }
        ),
        ["plan.surrounding-without-edge"] = WithSite(s =>
            s with
            {
                Surroundings = [.. s.Surroundings, new() { Edge = 4 }],
            }
        ),
        ["plan.surrounding-twice"] = WithSite(s => s with { Surroundings = [.. s.Surroundings, new() { Edge = 1 }] }),
        ["plan.ridge-below-eaves"] = WithTent(t => t with { RidgeHeightMetres = Metres(2) }),
        ["plan.side-without-wall"] = WithTent(t => t with { Sides = [new() { Side = 4 }] }),
        ["plan.side-twice"] = WithTent(t => t with { Sides = [.. t.Sides, new() { Side = 2 }] }),
        ["plan.enclosure-off-site"] = WithTent(t =>
            t with
            {
                Footprint = [new(-5, -9), new(60, -9), new(60, 1), new(-5, 1)],
            }
        ),
        ["plan.engine-outside-enclosure"] = WithEngine(Marquee, e => e with { Place = new(0, 5) }),
        ["plan.enclosure-lower-than-shaft"] = WithEngine(
            WithTent(t => t with { EavesHeightMetres = Metres(1.5) }),
            e => e with { ShaftHeightMetres = Metres(1.5) }
        ),
        ["plan.rim-beyond-tip"] = WithRotor(r => r with { RimRadiusMetres = Metres(0.03) }),
        ["plan.bore-beyond-rim"] = WithRotor(r => r with { BoreRadiusMetres = Metres(0.02) }),
        ["plan.rotor-larger-than-casing"] = WithRotor(r => r with { TipRadiusMetres = Metres(0.0551) }),
        ["plan.rotor-beyond-intake"] = WithRotor(r => r with { AxialPositionMetres = Metres(0.27) }),
        ["plan.trip-below-maximum-speed"] = WithRotor(r =>
            r with
            {
                TripSpeedRevolutionsPerMinute = new() { Value = 111_999 },
            }
        ),
        ["plan.state-above-maximum-speed"] = WithRotor(r =>
            r with
            {
                MaximumSpeedRevolutionsPerMinute = new() { Value = 109_999 },
            }
        ),
        ["plan.state-order"] = WithSheet(s =>
            s with
            {
                States = Change(s.States, 0, x => x with { ThrustNewtons = new() { Value = 41 } }),
            }
        ),
        ["plan.weather-band-empty"] = WithSite(s =>
            s with
            {
                Weather = s.Weather! with { LowestTemperatureCelsius = new() { Value = 27 } },
            }
        ),
        ["plan.engine-without-run"] = Field with { Programme = null },
        ["plan.run-outside-event"] = WithRun(r => r with { Day = new DateOnly(2027, 6, 14) }),
        ["plan.run-past-midnight"] = WithRun(r => r with { StartsAt = new(23, 58) }),
        ["plan.runs-overlap"] = WithRun(r => r with { StartsAt = new(14, 57) }),
        ["plan.group-without-place"] = WithGroup(p => p with { Place = null, Area = [] }),
        ["plan.presence-backwards"] = WithGroup(p =>
            p with
            {
                Presence = [new() { From = new(10, 0), To = new(10, 0) }],
            }
        ),
        ["plan.group-of-nobody"] = WithGroup(p => p with { Adults = 0, Children = null }),
        ["plan.people-in-bench"] = WithGroup(p => p with { Place = new(0.3, 0.4) }),
        ["plan.group-off-site"] = WithGroup(p => p with { Place = new(0, -130) }),
    };

    public static TheoryData<string> Codes => [.. PlanPhrases.Findings.Select(p => p.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Check_OddPlan_SaysWhatIsOdd(string code)
    {
        Finding finding = Assert.Single(PlanCheck.Check(Odd[code]), f => f.Code == code);

        FindingPhrase phrase = PlanPhrases.Findings.Single(p => p.Code == code);
        Assert.All(
            Placeholders(phrase.Sentence + phrase.Remedy),
            name =>
                Assert.True(
                    name == "element" ? finding.ElementId is not null : finding.Arguments.Any(a => a.Name == name),
                    name
                )
        );
    }

    [Fact]
    public void Check_EveryCode_HasAPhrase() =>
        Assert.Empty(
            Odd.Values.SelectMany(p => PlanCheck.Check(p))
                .Select(f => f.Code)
                .Distinct()
                .Except(PlanPhrases.Findings.Select(p => p.Code))
        );

    [Fact]
    public void Check_ConsecutiveRuns_DoNotOverlap() =>
        Assert.DoesNotContain(
            PlanCheck.Check(WithRun(r => r with { StartsAt = new(14, 56) })),
            f => f.Code == "plan.runs-overlap"
        );

    [Fact]
    public void Check_PlanWithoutEngine_CannotTell() =>
        Assert.True(
            Assert.Single(PlanCheck.Check(PlanJson.Plan(PlanJson.Smallest)))
                is { CannotTell: true, Severity: Severity.Stop }
        );

    [Fact]
    public void Check_EmptyPlan_DoesNotThrow() => Assert.NotEmpty(PlanCheck.Check(new Plan()));

    [Fact]
    public void Check_AnyPlanOfTheCatalogue_AnswersTheSameTwice() =>
        Gen.ULong.Sample(
            seed =>
            {
                Plan plan = PlanJson.Plan(RandomPlan.Some(seed).ToJsonString());
                Assert.Equal(PlanCheck.Check(plan), PlanCheck.Check(plan));
            },
            iter: 200
        );

    [Fact]
    public void BenchShape_ThistleBench_LiesUnderTheMiddleOfTheEngine()
    {
        ValueList<PlanPoint> corners = BenchShape.Of(Field.Engines[0]);

        Assert.Equal(4, corners.Count);
        Assert.Equal(0, corners.Average(c => c.XMetres), 1e-9);
        Assert.Equal(-0.13, corners.Average(c => c.YMetres), 1e-9);
        Assert.Equal(0.84, SiteGeometry.Polygon(corners).Area, 1e-9);
        Assert.Empty(BenchShape.Of(new Engine()));
    }

    private static IEnumerable<string> Placeholders(string phrase) =>
        phrase.Split('{').Skip(1).Select(part => part[..part.IndexOf('}', StringComparison.Ordinal)].Split(':')[0]);

    private static Stated Metres(double value) => new() { Value = value };

    private static ValueList<T> Change<T>(ValueList<T> list, int index, Func<T, T> change) =>
        list.Select((item, i) => i == index ? change(item) : item).ToValueList();

    private static Plan WithEngine(Plan plan, Func<Engine, Engine> change) =>
        plan with
        {
            Engines = Change(plan.Engines, 0, change),
        };

    private static Plan WithSheet(Func<EngineSheet, EngineSheet> change) =>
        WithEngine(Field, e => e with { Sheet = change(e.Sheet!) });

    private static Plan WithRotor(Func<Rotor, Rotor> change) =>
        WithSheet(s => s with { Rotors = Change(s.Rotors, 0, change) });

    private static Plan WithSite(Func<Site, Site> change) => Field with { Site = change(Field.Site) };

    private static Plan WithTent(Func<Enclosure, Enclosure> change) =>
        Marquee with
        {
            Site = Marquee.Site with { Enclosure = change(Marquee.Site.Enclosure!) },
        };

    private static Plan WithGroup(Func<PersonGroup, PersonGroup> change) =>
        Field with
        {
            People = Change(Field.People, 0, change),
        };

    private static Plan WithRun(Func<Run, Run> change) =>
        Field with
        {
            Programme = new() { Runs = Change(Field.Programme!.Runs, 0, change) },
        };
}
