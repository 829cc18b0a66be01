using System.Text.Json.Nodes;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Files;

/// <summary>Shapes of what is written by converters of its own, which no type tells.</summary>
internal static class AnswerShapes
{
    public static JsonObject Quantity(Func<Type, JsonObject> of) =>
        new()
        {
            ["type"] = "object",
            ["description"] = "A value: best estimate, and the one to plan with on the cautious side.",
            ["properties"] = new JsonObject
            {
                ["best"] = Number("Best estimate."),
                ["planning"] = Number("Value zones and verdicts use."),
                ["unit"] = new JsonObject { ["type"] = "string", ["description"] = "Symbol of the unit of both." },
                ["cautious"] = of(typeof(CautiousDirection)),
                ["pedigree"] = of(typeof(Pedigree)),
                ["citations"] = new JsonObject { ["type"] = "array", ["items"] = of(typeof(string)) },
                ["sum"] = new JsonObject { ["type"] = "string", ["description"] = "Name of its worked sum." },
            },
            ["required"] = new JsonArray("best", "planning", "unit", "cautious", "pedigree", "citations"),
            ["additionalProperties"] = false,
        };

    public static JsonObject Point() => Fixed("A place [x, y] in plan metres.");

    /// <summary>Polygons of rings of corners.</summary>
    public static JsonObject Areas() =>
        List(
            "Polygons in plan metres; each a list of rings, the shell first; each a closed list of corners.",
            List(null, List(null, Fixed(null)))
        );

    private static JsonObject Fixed(string? description) =>
        List(description, new() { ["type"] = "number" }, pairs: true);

    private static JsonObject Number(string description) =>
        new() { ["type"] = "number", ["description"] = description };

    private static JsonObject List(string? description, JsonObject items, bool pairs = false)
    {
        var list = new JsonObject { ["type"] = "array", ["items"] = items };
        if (description is not null)
        {
            list["description"] = description;
        }

        if (pairs)
        {
            list["minItems"] = 2;
            list["maxItems"] = 2;
        }

        return list;
    }
}
