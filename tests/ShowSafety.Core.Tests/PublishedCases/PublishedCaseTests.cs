using System.Globalization;
using System.Text.Json;
using ShowSafety.Core.Sums;

namespace ShowSafety.Core.Tests.PublishedCases;

/// <summary>Runs the tables of tests/published-cases through the worked sums, which call the rooms' own functions.</summary>
public sealed class PublishedCaseTests
{
    private static readonly string[] Bases = ["read", "secondary", "memory", "derived"];
    private static readonly string[] Kinds = ["printed", "formula", "derived"];

    private static readonly IReadOnlyDictionary<string, PublishedCase> Cases = PublishedCase
        .ReadAll()
        .ToDictionary(c => c.Id);

    public static TheoryData<string> Ids => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Solve_PublishedCase_GivesThePublishedValue(string id)
    {
        PublishedCase published = Cases[id];
        WorkedSum sum =
            SumRegistry.Find(published.Sum) ?? throw new InvalidOperationException($"no sum {published.Sum}");

        SumOutcome outcome = SumSolver.Solve(sum, published.Inputs.ToDictionary(i => i.Key, i => AsText(i.Value)));

        Assert.Empty(outcome.Problems);
        Assert.NotEmpty(published.Expect);
        foreach ((string key, double expected) in published.Expect)
        {
            double actual = Result(outcome, key);
            double allowed = published.Relative ? published.Tolerance * Math.Abs(expected) : published.Tolerance;
            Assert.True(
                Math.Abs(actual - expected) <= allowed,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{published.Case} [{published.Source}] {key}: expected {expected} ± {allowed}, got {actual}"
                )
            );
        }

        foreach ((string key, double misprint) in published.Misprint)
        {
            double allowed = published.Relative ? published.Tolerance * Math.Abs(misprint) : published.Tolerance;
            Assert.True(Math.Abs(Result(outcome, key) - misprint) > allowed, $"{key} gives the misprint {misprint}");
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Table_EveryCase_NamesSourceBasisAndKind(string id)
    {
        PublishedCase published = Cases[id];

        Assert.Contains(published.Basis, Bases);
        Assert.Contains(published.Kind, Kinds);
        Assert.False(string.IsNullOrWhiteSpace(published.Source));
        Assert.False(string.IsNullOrWhiteSpace(published.Case));
        Assert.True(published.Tolerance >= 0);
    }

    private static double Result(SumOutcome outcome, string key) =>
        outcome.Answer!.Results.Single(r => r.Key == key).Value;

    private static string AsText(JsonElement value) =>
        value.ValueKind switch
        {
            JsonValueKind.Array => string.Join(',', value.EnumerateArray().Select(e => e.GetRawText())),
            JsonValueKind.String => value.GetString()!,
            _ => value.GetRawText(),
        };
}
