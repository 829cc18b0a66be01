using System.Text.Json;
using Json.Schema;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

/// <summary>The schema and the reader say the same about a file, as far as a schema can.</summary>
public sealed class PlanSchemaTests
{
    private static readonly string[] BeyondASchema =
    [
        "duplicate-member",
        "duplicate-id",
        "not-finite",
        "ring-crosses",
        "ring-without-area",
        "repeated-point",
    ];

    private static readonly JsonSchema Schema = JsonSchema.FromText(PlanSchema.Write());

    [Fact]
    public void Schema_PlansOfTheCatalogue_AreValid()
    {
        for (ulong seed = 0; seed < 20; seed++)
        {
            Assert.True(IsValid(RandomPlan.Some(seed).ToJsonString()));
        }
    }

    [Fact]
    public void Schema_BrokenPlans_AreInvalidWhereTheReaderRefuses()
    {
        // One broken plan of each kind for each member would take long: every ninth shows each kind many times over.
        IEnumerable<BrokenPlan> broken = PlanBreaker
            .All()
            .Where(b => !BeyondASchema.Contains(b.Code) && b.Json.Length < 100_000)
            .Where(b => b.How != "\"2026-02-30\"" && !b.How.Contains("\\ud800", StringComparison.Ordinal))
            .Where((_, i) => i % 9 == 0);

        Assert.DoesNotContain(broken, b => IsValid(b.Json));
    }

    private static bool IsValid(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement, new() { OutputFormat = OutputFormat.Flag }).IsValid;
    }
}
