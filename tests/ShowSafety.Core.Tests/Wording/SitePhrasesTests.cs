using System.Reflection;
using System.Text.RegularExpressions;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Crowd;
using ShowSafety.Core.Gate;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sums;
using ShowSafety.Core.Supplies;
using ShowSafety.Core.Tests.Crowd;
using ShowSafety.Core.Tests.Gate;
using ShowSafety.Core.Tests.Supplies;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests.Wording;

/// <summary>Every finding of gate, supplies and crowd has a sentence that its arguments fill.</summary>
public sealed partial class SitePhrasesTests
{
    private static readonly Type Phrases = typeof(Finding).Assembly.GetType("ShowSafety.Core.Wording.SitePhrases")!;

    private static readonly Dictionary<string, FindingPhrase> Sentences = Read<FindingPhrase>("Findings")
        .ToDictionary(p => p.Code);

    private static readonly HashSet<string> Labels = [.. Read<FigurePhrase>("Figures").Select(p => p.Key)];

    private static readonly IReadOnlyList<RoomAssessment> Assessments =
    [
        .. Plans()
            .SelectMany(p =>
                new RoomAssessment[] { GateAssessor.Assess(p), SuppliesAssessor.Assess(p), CrowdAssessor.Assess(p) }
            ),
    ];

    [Fact]
    public void Findings_OfManyPlans_HaveASentenceTheirArgumentsFill()
    {
        var faults = Assessments.SelectMany(a => a.Findings).SelectMany(Faults).Distinct().ToList();

        Assert.Empty(faults);
    }

    [Fact]
    public void Figures_OfManyPlans_HaveALabel() =>
        Assert.Subset(Labels, Assessments.SelectMany(a => a.Figures).Select(f => f.Key).ToHashSet());

    [Fact]
    public void Citations_OfManyPlans_AreRegisteredAndAllUsed()
    {
        var used = Assessments
            .SelectMany(a =>
                a.Findings.SelectMany(f => f.Citations)
                    .Concat(a.Zones.SelectMany(z => z.Citations))
                    .Concat(a.Figures.SelectMany(f => f.Value.Citations))
            )
            .Concat(SiteSums.All.SelectMany(s => s.Citations))
            .ToHashSet();

        Assert.All(used, id => Assert.Equal(id, CitationRegistry.Get(id).Id));
        Assert.Empty(SiteCitations.All.Select(c => c.Id).Except(used));
    }

    [Fact]
    public void Sums_NamedByFigures_Exist() =>
        Assert.All(
            Assessments.SelectMany(a => a.Figures).Select(f => f.Value.Sum).Distinct(),
            name => Assert.NotNull(name is null ? null : SumRegistry.Find(name))
        );

    [Fact]
    public void Findings_ThatCannotTell_NameAMemberOfThePlan()
    {
        var members = typeof(Plan)
            .Assembly.GetTypes()
            .Where(t => t.Namespace == typeof(Plan).Namespace)
            .SelectMany(t => t.GetProperties().Select(p => $"{t.Name}.{p.Name}"))
            .ToHashSet();

        Assert.All(
            Assessments.SelectMany(a => a.Findings).Where(f => f.CannotTell || f.Field is not null),
            f => Assert.Contains(f.Field!, members)
        );
    }

    private static IEnumerable<T> Read<T>(string name) =>
        (IEnumerable<T>)Phrases.GetProperty(name, BindingFlags.Public | BindingFlags.Static)!.GetValue(null)!;

    private static IEnumerable<string> Faults(Finding finding)
    {
        if (!Sentences.TryGetValue(finding.Code, out FindingPhrase? phrase))
        {
            yield return $"{finding.Code} has no sentence";
            yield break;
        }

        var given = finding.Arguments.Select(a => a.Name).ToHashSet();
        foreach (Match match in Placeholder().Matches(phrase.Sentence + phrase.Remedy))
        {
            string name = match.Groups[1].Value;
            if (name == "element" ? finding.ElementId is null : !given.Contains(name))
            {
                yield return $"{finding.Code} prints {{{name}}} and has none";
            }
        }
    }

    private static IEnumerable<Plan> Plans()
    {
        Plan bare = new() { Engines = [new() { Id = "bare" }] };
        Plan tent = SupplyPlans.InHall(SupplyPlans.WithGas(new(2, 2), 500));
        yield return new();
        yield return bare;
        yield return tent;
        yield return tent with
        {
            Supplies = tent.Supplies! with { Extinguishers = [] },
        };
        yield return tent with
        {
            People = [CrowdPlans.Watchers with { Area = CrowdPlans.Box(-4, -4, 8, 8), Adults = 999 }],
        };
        yield return GatePlans.Under(EnclosureKind.Tent);
        yield return GatePlans.Under(EnclosureKind.Tent) with
        {
            Gate = new()
            {
                Tent = new() { FabricCertificate = "x", ClearAtWindMetresPerSecond = GatePlans.Measured(2) },
            },
        };
        yield return GatePlans.WithEvidence(e => e with { RatedRuns = 1, Overhaul = "x", ContainmentTest = "y" });
        yield return GatePlans.WithEvidence(e => e with { EngineId = "two" });
        yield return GatePlans.WithStopping(s =>
            s with
            {
                FuelCutSeconds = GatePlans.Measured(9),
                Independent = false,
            }
        );
        foreach (PermissionGiver giver in Enum.GetValues<PermissionGiver>())
        {
            Permission good = GatePlans.Given(giver);
            yield return GatePlans.WithPermissions(GatePlans.Complete, good with { Limits = "day only" });
            yield return GatePlans.WithPermissions(GatePlans.Complete, good with { Who = null });
            yield return GatePlans.WithPermissions(tent, good with { Pedigree = Pedigree.Assumed });
            yield return GatePlans.WithPermissions(
                GatePlans.Under(EnclosureKind.Hall),
                good with
                {
                    On = new(2040, 1, 1),
                }
            );
        }

        foreach (FuelKind fuel in Enum.GetValues<FuelKind>())
        {
            yield return SupplyPlans.With(s =>
                s with
                {
                    Fuel =
                    [
                        new()
                        {
                            Id = "can",
                            Fuel = fuel,
                            Litres = GatePlans.Measured(40),
                        },
                    ],
                    Batteries = [new() { Id = "cell" }],
                }
            );
        }

        foreach (ExtinguisherKind kind in Enum.GetValues<ExtinguisherKind>())
        {
            yield return SupplyPlans.With(s =>
                s with
                {
                    Extinguishers =
                    [
                        new()
                        {
                            Id = "x",
                            Kind = kind,
                            Rating = "8B",
                        },
                    ],
                    SpillTraySquareMetres = null,
                }
            );
        }

        foreach (BarrierInfill infill in Enum.GetValues<BarrierInfill>())
        {
            yield return CrowdPlans.WithLine(l => l with { Infill = infill, HeightMetres = CrowdPlans.Measured(1.1) });
            yield return CrowdPlans.WithLine(l => l with { Infill = infill, HeightMetres = CrowdPlans.Measured(0.5) });
        }

        yield return CrowdPlans.WithLine(l => new() { Line = l.Line }) with
        {
            Viewing = null,
        };
        yield return CrowdPlans.WithWatchers(w => w with { Adults = 5000 });
        yield return CrowdPlans.WithWatchers(w => new() { Id = w.Id, Role = w.Role });
        yield return CrowdPlans.WithExits(new SiteExit { Id = "only" });
    }

    [GeneratedRegex(@"\{([a-z]+)(?::best)?\}")]
    private static partial Regex Placeholder();
}
