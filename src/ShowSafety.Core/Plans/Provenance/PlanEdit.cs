using System.Text.Json.Nodes;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Changes one stated number of a plan, to ask what would be if it were known.</summary>
public static class PlanEdit
{
    /// <summary>
    /// The plan with another number at a pointer, as if the user had estimated it. Objects on the way that are absent
    /// are made.
    /// </summary>
    /// <param name="plan">The plan; it stays as it is.</param>
    /// <param name="pointer">Place of a stated number in the plan's file (RFC 6901).</param>
    /// <param name="value">The number, in the unit of the member.</param>
    /// <exception cref="ArgumentException">The pointer is not the place of a stated number, or the number is out of range.</exception>
    public static Plan WithStated(Plan plan, string pointer, double value)
    {
        JsonNode root = JsonNode.Parse(PlanWriter.Write(plan))!;
        string[] steps = [.. pointer.Split('/').Skip(1).Select(Unescaped)];
        JsonNode holder = steps.SkipLast(1).Aggregate(root, Child);
        holder[steps[^1]] = new JsonObject { ["value"] = value, ["pedigree"] = "estimated" };
        PlanReading reading = PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(root.ToJsonString()));
        return reading.Plan
            ?? throw new ArgumentException(
                $"{pointer}: {string.Join(' ', reading.Problems.Select(p => p.Text))}",
                nameof(pointer)
            );
    }

    private static JsonNode Child(JsonNode parent, string step)
    {
        if (parent is JsonArray list)
        {
            return list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]!;
        }

        return parent[step] ??= new JsonObject();
    }

    private static string Unescaped(string step) =>
        step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
}
