using System.Text;
using System.Text.Json.Nodes;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

/// <summary>Reads texts and nodes the way the tests of the reader need them.</summary>
internal static class PlanJson
{
    /// <summary>The smallest plan there is.</summary>
    public const string Smallest =
        """{"schema":"showsafety-plan/1","title":"Small","site":{"outline":[[0,0],[10,0],[10,10]]}}""";

    public static byte[] Bytes(string json) => Encoding.UTF8.GetBytes(json);

    public static PlanReading Read(string json) => PlanReader.Read(Bytes(json));

    public static PlanReading Read(JsonNode json) => Read(json.ToJsonString());

    /// <summary>The plan, or a failure that lists its problems.</summary>
    public static Plan Plan(string json)
    {
        PlanReading reading = Read(json);
        Assert.True(reading.Plan is not null, string.Join('\n', reading.Problems));
        return reading.Plan;
    }
}
