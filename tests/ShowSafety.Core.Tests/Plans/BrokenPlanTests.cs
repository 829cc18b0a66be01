using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

public sealed class BrokenPlanTests
{
    private static readonly ILookup<string, BrokenPlan> Broken = PlanBreaker.All().ToLookup(b => b.Field);

    public static TheoryData<string> Fields => [.. Broken.Select(b => b.Key)];

    [Fact]
    public void Breaker_EveryMemberOfTheCatalogue_IsBroken()
    {
        IEnumerable<string> members = FieldCatalogue
            .Reachable(FieldCatalogue.Plan)
            .SelectMany(r => r.Fields)
            .Select(f => f.FullName);

        Assert.Empty(members.Except(Broken.Select(b => b.Key)));
    }

    [Theory]
    [MemberData(nameof(Fields))]
    public void Read_OneMemberBroken_NamesExactlyThatPlace(string field)
    {
        foreach (BrokenPlan broken in Broken[field])
        {
            PlanReading reading = PlanJson.Read(broken.Json);

            Assert.Null(reading.Plan);
            Assert.True(
                reading.Problems is [var problem] && problem.Pointer == broken.Pointer && problem.Code == broken.Code,
                $"{broken.How}: expected {broken.Pointer} {broken.Code}, got {string.Join('\n', reading.Problems)}"
            );
            Assert.False(string.IsNullOrWhiteSpace(reading.Problems[0].Text));
        }
    }
}
