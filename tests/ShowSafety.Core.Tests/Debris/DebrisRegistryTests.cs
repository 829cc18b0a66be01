using System.Reflection;
using System.Text.RegularExpressions;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sums;
using static ShowSafety.Core.Tests.Debris.DebrisPlans;

namespace ShowSafety.Core.Tests.Debris;

/// <summary>What this room gives has a source, a sum and words.</summary>
public sealed partial class DebrisRegistryTests
{
    private static readonly IReadOnlyList<DebrisAssessment> Assessments =
    [
        DebrisAssessor.Assess(With()),
        DebrisAssessor.Assess(With(Turbine, Compressor with { TripSpeedRevolutionsPerMinute = null })),
        DebrisAssessor.Assess(
            With(
                new Rotor
                {
                    Id = "u",
                    Bounding = true,
                    DiscThicknessMetres = Is(0.01),
                }
            )
        ),
        DebrisAssessor.Assess(With(Turbine) with { DebrisScreens = [Screen()] }),
        DebrisAssessor.Assess(With(Turbine) with { DebrisScreens = [Screen() with { Evidence = null }] }),
        DebrisAssessor.Assess(With(Turbine) with { DebrisScreens = [Screen(joules: 100)] }),
        DebrisAssessor.Assess(With(Turbine) with { DebrisScreens = [Screen(kilograms: 0.01)] }),
        DebrisAssessor.Assess(With(Turbine) with { DebrisScreens = [Screen() with { HeightMetres = Is(1) }] }),
        DebrisAssessor.Assess(With(Turbine with { BladedMassKilograms = Is(1), TipRadiusMetres = Is(0.06) })),
        DebrisAssessor.Assess(With(Turbine with { TripSpeedRevolutionsPerMinute = Is(50_000) })),
    ];

    [Fact]
    public void Figures_EveryOne_HasARegisteredSumSourceAndLabel()
    {
        string[] labels = Keys("Figures", "Key");
        foreach (Figure figure in Assessments.SelectMany(a => a.Figures))
        {
            Assert.NotNull(SumRegistry.Find(figure.Value.Sum!));
            Assert.NotEmpty(figure.Value.Citations);
            Assert.All(figure.Value.Citations, id => Assert.Equal(id, CitationRegistry.Get(id).Id));
            Assert.Contains(figure.Key, labels);
        }
    }

    [Fact]
    public void Findings_EveryOne_HasASentenceWhosePlaceholdersItFills()
    {
        object[] phrases = Phrases("Findings");
        foreach (Finding finding in Assessments.SelectMany(a => a.Findings))
        {
            object phrase = Assert.Single(phrases, p => Text(p, "Code") == finding.Code);
            string[] filled = [.. finding.Arguments.Select(a => a.Name), "element"];
            Assert.All(
                Placeholder().Matches(Text(phrase, "Sentence") + Text(phrase, "Remedy")).Select(m => m.Groups[1].Value),
                name => Assert.Contains(name, filled)
            );
            Assert.All(finding.Citations, id => Assert.Equal(id, CitationRegistry.Get(id).Id));
        }
    }

    [Fact]
    public void Citations_EveryEntry_IsUsedByASumAFindingAFigureOrAZone()
    {
        string[] used =
        [
            .. DebrisSums.All.SelectMany(s => s.Citations),
            .. Assessments.SelectMany(a => a.Findings).SelectMany(f => f.Citations),
            .. Assessments.SelectMany(a => a.Figures).SelectMany(f => f.Value.Citations),
            .. Assessments.SelectMany(a => a.Zones).SelectMany(z => z.Citations),
        ];

        Assert.Empty(DebrisCitations.All.Select(c => c.Id).Except(used));
        Assert.Empty(DebrisSums.All.SelectMany(s => s.Citations).Except(DebrisCitations.All.Select(c => c.Id)));
    }

    [Fact]
    public void Sums_EveryOne_StandsInAPublishedCase()
    {
        string[] cases = [.. PublishedCases.PublishedCase.ReadAll().Select(c => c.Sum)];

        Assert.Empty(DebrisSums.All.Select(s => s.Name).Except(cases));
    }

    private static string[] Keys(string list, string property) => [.. Phrases(list).Select(p => Text(p, property))];

    private static object[] Phrases(string list) =>
        [
            .. (
                (System.Collections.IEnumerable)
                    typeof(Finding)
                        .Assembly.GetType("ShowSafety.Core.Wording.DebrisPhrases")!
                        .GetProperty(list, BindingFlags.Public | BindingFlags.Static)!
                        .GetValue(null)!
            ).Cast<object>(),
        ];

    private static string Text(object phrase, string property) =>
        (string)phrase.GetType().GetProperty(property)!.GetValue(phrase)!;

    [GeneratedRegex(@"\{(\w+)(?::\w+)?\}")]
    private static partial Regex Placeholder();
}
