using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

/// <summary>The site templates a user starts from.</summary>
internal static class Templates
{
    /// <summary>Names of the templates, in order.</summary>
    public static TheoryData<string> Names =>
        ["field-with-neighbour", "open-sided-marquee", "sports-hall", "closed-marquee"];

    public static byte[] Bytes(string name) =>
        File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "site-templates", name + ".json"));

    public static Plan Plan(string name)
    {
        PlanReading reading = PlanReader.Read(Bytes(name));
        Assert.True(reading.Plan is not null, string.Join('\n', reading.Problems));
        return reading.Plan;
    }
}
