using System.Globalization;
using System.Text.Json.Nodes;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

/// <summary>
/// Makes valid files from the field catalogue alone: whatever a member may hold, some file holds. A complete one has
/// every member and at least one element in every list.
/// </summary>
internal sealed class RandomPlan(Dice dice, bool complete)
{
    private static readonly string[] Words =
    [
        "bench",
        "Zelt",
        "crème",
        "跑道",
        "🛞",
        "\"quoted\"",
        "a/b~c",
        "<b>",
        "1 000",
        "'",
    ];

    private int _ids;

    /// <summary>A valid plan with every member.</summary>
    public static JsonObject Complete(ulong seed = 1) =>
        new RandomPlan(new(seed), complete: true).Of(FieldCatalogue.Plan);

    /// <summary>A valid plan with some of its members.</summary>
    public static JsonObject Some(ulong seed) => new RandomPlan(new(seed), complete: false).Of(FieldCatalogue.Plan);

    /// <summary>An object for a record.</summary>
    public JsonObject Of(RecordDescription record)
    {
        JsonObject made = [];
        foreach (FieldDescription field in record.Fields.Where(f => f.Required || complete || dice.Percent(60)))
        {
            made[field.Name] = Of(field);
        }

        return made;
    }

    /// <summary>A value for a member.</summary>
    public JsonNode Of(FieldDescription field)
    {
        if (!field.IsList)
        {
            return One(field);
        }

        return field.Points switch
        {
            PointsShape.Ring => Ring(field),
            PointsShape.Line => Line(field),
            _ => List(field),
        };
    }

    private JsonArray List(FieldDescription field)
    {
        int fewest = Math.Max(field.MinCount, complete || field.Required ? 1 : 0);
        int count = Math.Min(field.MaxCount, fewest + dice.Below(complete ? 2 : 4));
        return [.. Enumerable.Range(0, count).Select(_ => One(field))];
    }

    private JsonNode One(FieldDescription field) =>
        field.Kind switch
        {
            FieldKind.Text => field.Exactly ?? Text(field),
            FieldKind.Number => Number(field),
            FieldKind.WholeNumber => (int)(
                field.Min + dice.Below((int)Math.Min(int.MaxValue, 1 + field.Max - field.Min))
            ),
            FieldKind.Boolean => dice.Percent(50),
            FieldKind.Choice => field.Words[dice.Below(field.Words.Count)],
            FieldKind.Date => new DateOnly(2020, 1, 1).AddDays(dice.Below(9000)).ToString("yyyy-MM-dd", Invariant),
            FieldKind.Time => new TimeOnly(0).AddMinutes(dice.Below(24 * 60)).ToString("HH:mm", Invariant),
            FieldKind.Point => new JsonArray(Number(field), Number(field)),
            FieldKind.Bands => new JsonArray([.. Enumerable.Range(0, 8).Select(_ => (JsonNode)Number(field))]),
            _ => Of(field.Record!),
        };

    private static CultureInfo Invariant => CultureInfo.InvariantCulture;

    // The ends of a range belong to it: they come up often.
    private double Number(FieldDescription field) =>
        dice.Below(10) switch
        {
            0 => field.Min,
            1 => field.Max,
            _ => Math.Clamp(field.Min + (dice.Share() * (field.Max - field.Min)), field.Min, field.Max),
        };

    private string Text(FieldDescription field)
    {
        if (field.Name == "id")
        {
            return string.Create(Invariant, $"id-{_ids++}");
        }

        string text = string.Join(
            ' ',
            Enumerable.Range(0, 1 + dice.Below(3)).Select(_ => Words[dice.Below(Words.Length)])
        );
        return text.Length <= field.MaxLength ? text : "x";
    }

    // Points round a middle at rising angles, each at its own distance: such a ring never crosses itself.
    private JsonArray Ring(FieldDescription field)
    {
        int count = field.MinCount + dice.Below(6);
        double reach = 0.1 * (field.Max - field.Min);
        double middle = (field.Min + field.Max) / 2;
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                {
                    (double sin, double cos) = Math.SinCos(2 * Math.PI * i / count);
                    double radius = reach * (0.2 + dice.Share());
                    return new JsonArray(middle + (radius * sin), middle + (radius * cos));
                }),
        ];
    }

    private JsonArray Line(FieldDescription field)
    {
        int count = field.MinCount + dice.Below(4);
        double step = (field.Max - field.Min) / (count + 1);
        return [.. Enumerable.Range(1, count).Select(i => new JsonArray(field.Min + (i * step), Number(field)))];
    }
}
