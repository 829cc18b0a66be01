using System.Globalization;
using System.Text.Json.Nodes;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

/// <summary>A valid plan with one thing wrong, and what the reader must say about it.</summary>
internal sealed record BrokenPlan(string Field, string How, string Json, string Pointer, string Code);

/// <summary>Breaks one member of a complete valid plan in every way the field catalogue knows.</summary>
internal sealed class PlanBreaker
{
    private const string Mark = "@@here@@";

    private readonly JsonObject _plan;

    private readonly List<BrokenPlan> _broken = [];

    private PlanBreaker(JsonObject plan) => _plan = plan;

    /// <summary>Every way for every member, the members of the plan one after the other beside the required ones.</summary>
    public static IReadOnlyList<BrokenPlan> All()
    {
        PlanBreaker root = new((JsonObject)JsonNode.Parse(PlanJson.Smallest)!);
        root.Sibling(FieldCatalogue.Plan, root._plan, "/zzzzzzzz", "zzzzzzzz", "unknown-member");
        return [.. root._broken, .. FieldCatalogue.Plan.Fields.SelectMany(Under)];
    }

    // Only the member to be broken stands beside the required ones: a small file says as much and is read sooner.
    private static List<BrokenPlan> Under(FieldDescription field)
    {
        JsonObject plan = (JsonObject)JsonNode.Parse(PlanJson.Smallest)!;
        plan[field.Name] = RandomPlan.Complete(3)[field.Name]!.DeepClone();
        PlanBreaker breaker = new(plan);
        breaker.BreakField(FieldCatalogue.Plan, field, plan, "");
        return breaker._broken;
    }

    private void BreakRecord(RecordDescription record, JsonObject at, string pointer)
    {
        Sibling(record, at, pointer + "/zzzzzzzz", "zzzzzzzz", "unknown-member");
        foreach (FieldDescription field in record.Fields)
        {
            BreakField(record, field, at, pointer);
        }
    }

    private void BreakField(RecordDescription record, FieldDescription field, JsonObject at, string pointer)
    {
        string here = $"{pointer}/{field.Name}";
        Sibling(record, at, here, field.Name, "duplicate-member");
        Removed(field, at, here);
        BreakMember(field, at, here);
        if (field.Record is { } inner)
        {
            JsonNode value = at[field.Name]!;
            JsonObject first = (JsonObject)(field.IsList ? value[0]! : value);
            BreakRecord(inner, first, field.IsList ? here + "/0" : here);
        }
    }

    private void BreakMember(FieldDescription field, JsonObject at, string here)
    {
        foreach (Wrong wrong in WrongValues.Of(field, at[field.Name]!))
        {
            JsonNode? kept = at[field.Name]!.DeepClone();
            at[field.Name] = Mark;
            string json = _plan.ToJsonString().Replace($"\"{Mark}\"", wrong.Json, StringComparison.Ordinal);
            at[field.Name] = kept;
            _broken.Add(new(field.FullName, wrong.Json, json, here + wrong.Below, wrong.Code));
        }
    }

    private void Removed(FieldDescription field, JsonObject at, string here)
    {
        if (!field.Required)
        {
            return;
        }

        JsonNode kept = at[field.Name]!.DeepClone();
        int place = at.IndexOf(field.Name);
        at.Remove(field.Name);
        _broken.Add(new(field.FullName, "removed", _plan.ToJsonString(), here, "missing"));
        at.Insert(place, field.Name, kept);
    }

    private void Sibling(RecordDescription record, JsonObject at, string here, string name, string code)
    {
        at[Mark] = 0;
        string json = _plan.ToJsonString().Replace($"\"{Mark}\"", $"\"{name}\"", StringComparison.Ordinal);
        at.Remove(Mark);
        _broken.Add(new($"{record.Name}.{name}", "sibling", json, here, code));
    }
}

/// <summary>A value that does not belong in a member: its JSON, the problem's place below the member, its code.</summary>
internal sealed record Wrong(string Json, string Code, string Below = "");

/// <summary>Every kind of value that does not belong in a member.</summary>
internal static class WrongValues
{
    /// <summary>The values, made from the catalogue entry and a valid value.</summary>
    public static IEnumerable<Wrong> Of(FieldDescription field, JsonNode valid) =>
        field.IsList ? [.. OfAList(field, (JsonArray)valid), .. OfShape(field)] : One(field);

    private static IEnumerable<Wrong> One(FieldDescription field) =>
        [
            new("null", "null"),
            .. OfOtherKinds(field),
            .. field.Kind switch
            {
                FieldKind.Text => OfText(field),
                FieldKind.Number => OfNumber(field),
                FieldKind.WholeNumber => [.. OfNumber(field), new(Number(field.Min + 0.5), "not-whole")],
                FieldKind.Choice =>
                [
                    new("\"zzzzzzzz\"", "unknown-word"),
                    new($"\"{field.Words[0].ToUpperInvariant()}\"", "unknown-word"),
                ],
                FieldKind.Date => Words("not-a-date", "2026-02-30", "01.02.2026", "2026-2-3", "", "2026-02-03T00:00"),
                FieldKind.Time => Words("not-a-time", "24:00", "9:00", "09:60", "", "09:00:00"),
                FieldKind.Point => OfNumbers(field, 2),
                FieldKind.Bands => OfNumbers(field, 8),
                _ => [],
            },
        ];

    private static IEnumerable<Wrong> OfOtherKinds(FieldDescription field)
    {
        string own = field.Kind switch
        {
            FieldKind.Number or FieldKind.WholeNumber => "7",
            FieldKind.Boolean => "true",
            FieldKind.Point or FieldKind.Bands => "[]",
            FieldKind.Record => "{}",
            _ => "\"x\"",
        };
        string[] kinds = ["7", "\"x\"", "\"NaN\"", "\"1\"", "true", "[]", "[null]", "{}"];
        return kinds.Where(k => k[0] != own[0]).Select(k => new Wrong(k, "wrong-type"));
    }

    private static IEnumerable<Wrong> OfNumber(FieldDescription field) =>
        [
            new("1e999", "not-finite"),
            new("-1e999", "not-finite"),
            new(Number(Below(field.Min)), "out-of-range"),
            new(Number(Above(field.Max)), "out-of-range"),
        ];

    private static IEnumerable<Wrong> OfText(FieldDescription field)
    {
        if (field.Exactly is not null)
        {
            return [new("\"showsafety-plan/2\"", "wrong-text"), new("\"\"", "wrong-text")];
        }

        IEnumerable<Wrong> wrong =
        [
            new($"\"{new string('x', field.MaxLength + 1)}\"", "too-long"),
            new("\"a\\u0007b\"", "control-character"),
            new("\"a\\u202eb\"", "control-character"),
            new("\"a\\ud800b\"", "control-character"),
        ];
        return field.Required ? wrong.Concat(Words("blank", "", "  ")) : wrong;
    }

    private static IEnumerable<Wrong> OfNumbers(FieldDescription field, int count)
    {
        string ok = Number(field.Max);
        string Row(string odd, int length) =>
            $"[{string.Join(',', Enumerable.Range(0, length).Select(i => i == length - 1 ? odd : ok))}]";
        string last = string.Create(CultureInfo.InvariantCulture, $"/{count - 1}");
        return
        [
            new("[]", "too-few"),
            new(Row(ok, count - 1), "too-few"),
            new(Row(ok, count + 1), "too-many"),
            new(Row("null", count), "null", last),
            new(Row("\"NaN\"", count), "wrong-type", last),
            .. OfNumber(field).Select(w => new Wrong(Row(w.Json, count), w.Code, last)),
        ];
    }

    private static IEnumerable<Wrong> OfAList(FieldDescription field, JsonArray valid)
    {
        string first = valid[0]!.ToJsonString();
        yield return new("null", "null");
        foreach (string other in new[] { "7", "\"x\"", "true", "{}" })
        {
            yield return new(other, "wrong-type");
        }

        yield return new($"[{string.Join(',', Enumerable.Repeat(first, field.MaxCount + 1))}]", "too-many");
        if (field.MinCount > 0)
        {
            yield return new($"[{string.Join(',', Enumerable.Repeat(first, field.MinCount - 1))}]", "too-few");
        }

        // The same flaws in the first element, the rest kept.
        string rest = string.Concat(valid.Skip(1).Select(e => "," + e!.ToJsonString()));
        foreach (Wrong wrong in One(field).Concat(ElementTexts(field)))
        {
            yield return new($"[{wrong.Json}{rest}]", wrong.Code, "/0" + wrong.Below);
        }

        if (field.Record?.Find("id") is not null)
        {
            yield return new($"[{first},{first}]", "duplicate-id", "/1/id");
        }
    }

    private static IEnumerable<Wrong> ElementTexts(FieldDescription field) =>
        field.Kind == FieldKind.Text ? Words("blank", "", " ") : [];

    private static IEnumerable<Wrong> OfShape(FieldDescription field) =>
        field.Points switch
        {
            PointsShape.Ring =>
            [
                new("[[0,0],[10,10],[10,0],[0,10]]", "ring-crosses"),
                new("[[0,0],[5,0],[10,0]]", "ring-without-area"),
                new("[[0,0],[10,0],[10,0],[5,5]]", "repeated-point", "/2"),
                new("[[0,0],[10,0],[10,10],[0,0]]", "repeated-point", "/3"),
                new("[]", "too-few"),
            ],
            PointsShape.Line => [new("[[1,1],[1,1]]", "repeated-point", "/1")],
            _ => [],
        };

    private static IEnumerable<Wrong> Words(string code, params string[] words) =>
        words.Select(w => new Wrong($"\"{w}\"", code));

    private static double Below(double min) => min - Math.Max(1e-6, Math.Abs(min) * 1e-6);

    private static double Above(double max) => max + Math.Max(1e-6, Math.Abs(max) * 1e-6);

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
