using System.Text;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The description of the plan file format for people, in Markdown, made from the field catalogue.</summary>
public static class PlanFileDocument
{
    private const string Preface = """
        # The plan file, version 1

        A plan is a UTF-8 JSON file of at most 5 MB. Coordinates are metres on the plan, x to the right and y up the sheet.
        Headings are degrees clockwise from up the sheet. Times are on the event's own wall clock. Numbers are in the unit
        their name carries.

        - Only `schema`, `title` and `site` with its `outline` are required. Anything else may be left out: what depends on
          it is then "cannot tell", unless the tables below name a cautious value that is assumed instead.
        - A number somebody states is an object: `{"value": 0.9, "pedigree": "measured", "note": "tape"}`. The pedigree is
          one of `measured`, `maker`, `estimated`, `assumed`, `example`. Leave the member out for "I don't know".
        - Unknown, repeated and null members, numbers in quotation marks, words not listed, numbers out of range and rings
          that cross themselves are refused. All problems are reported at once, each with its JSON Pointer (RFC 6901).
        - A ring closes by itself: its first point is not repeated at its end. No point repeats the one before it.
        - An `id` is used once in its list.
        - The canonical form, of which the fingerprint (SHA-256) of a plan is taken, has the members in the order of the
          tables, nothing for what is absent or empty, the shortest digits of each number and no white space.

        The same facts as a JSON Schema (draft 2020-12) are in `plan-schema.json`. This page and the schema are made from
        the field catalogue in the program; `SHOWSAFETY_REGENERATE=1` while running the tests of the core writes them anew.

        """;

    /// <summary>The document, ending with a line feed.</summary>
    public static string Write()
    {
        StringBuilder text = new(Preface.ReplaceLineEndings("\n"));
        foreach (RecordDescription record in FieldCatalogue.Reachable(FieldCatalogue.Plan))
        {
            WriteRecord(text, record);
        }

        text.Append("\n## Codes of problems\n\n");
        text.AppendJoin(", ", PlanProblemCodes.All.Select(code => $"`{code}`"));
        return text.Append(".\n").ToString();
    }

    private static void WriteRecord(StringBuilder text, RecordDescription record)
    {
        text.Append($"\n## {record.Name}\n\n");
        text.Append("| member | holds | required | meaning | not stated | find out |\n");
        text.Append("| --- | --- | --- | --- | --- | --- |\n");
        foreach (FieldDescription field in record.Fields)
        {
            string required = field.Required ? "yes" : "";
            string findOut = field.FindOut == FindOut.None ? "" : WordsOf(field.FindOut);
            text.Append(
                $"| `{field.Name}` | {Holds(record, field)} | {required} | {field.Meaning} | {NotStated(field)} | {findOut} |\n"
            );
        }
    }

    private static string Holds(RecordDescription owner, FieldDescription field)
    {
        if (owner.Type == typeof(Stated) && field.Kind == FieldKind.Number)
        {
            return "a number in the range of the member that holds it";
        }

        if (field.IsStated)
        {
            return $"[stated](#stated) {AllowedValues.Range(field)}";
        }

        return field.Kind != FieldKind.Record ? AllowedValues.Of(field)
            : field.IsList ? $"a list of at most {AllowedValues.Number(field.MaxCount)} {LinkTo(field)}"
            : LinkTo(field);
    }

    private static string LinkTo(FieldDescription field) =>
        $"[{field.Record!.Name}](#{string.Concat(field.Record.Name.Select(char.ToLowerInvariant))})";

    private static string NotStated(FieldDescription field) =>
        field.Cautious is { } cautious
            ? $"assumed {AllowedValues.Number(cautious)} {field.Unit.Symbol()}".TrimEnd()
            : "";

    private static string WordsOf(FindOut way) =>
        way switch
        {
            FindOut.Tape => "tape measure",
            FindOut.Scale => "scale",
            FindOut.Maker => "maker's sheet",
            FindOut.SoundMeter => "sound level meter",
            FindOut.Meter => "instrument",
            FindOut.Venue => "venue or organiser",
            FindOut.Check => "check done, record kept",
            _ => "decide it",
        };
}
