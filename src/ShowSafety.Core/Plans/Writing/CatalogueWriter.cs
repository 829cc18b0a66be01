using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// Writes a record as JSON by the field catalogue, always the same way: members in declared order, nothing for what is
/// absent or empty, the shortest digits that read back as the same number, no white space.
/// </summary>
public static class CatalogueWriter
{
    private static readonly JsonWriterOptions Compact = new()
    {
        // The text is a file, never part of a page: letters stay letters.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The canonical UTF-8 bytes of a record.</summary>
    /// <typeparam name="T">Record whose members all carry a <see cref="FieldAttribute"/>.</typeparam>
    public static byte[] Write<T>(T record)
        where T : class
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter writer = new(stream, Compact))
        {
            WriteRecord(writer, record, FieldCatalogue.For(typeof(T)));
        }

        return stream.ToArray();
    }

    private static void WriteRecord(Utf8JsonWriter writer, object record, RecordDescription description)
    {
        writer.WriteStartObject();
        foreach (FieldDescription field in description.Fields)
        {
            if (field.ValueIn(record) is { } value and not "")
            {
                WriteMember(writer, field, value);
            }
        }

        writer.WriteEndObject();
    }

    private static void WriteMember(Utf8JsonWriter writer, FieldDescription field, object value)
    {
        if (!field.IsList)
        {
            writer.WritePropertyName(field.Name);
            WriteOne(writer, field, value);
            return;
        }

        object[] elements = [.. ((System.Collections.IEnumerable)value).Cast<object>()];
        if (elements.Length == 0)
        {
            return;
        }

        writer.WriteStartArray(field.Name);
        foreach (object element in elements)
        {
            WriteOne(writer, field, element);
        }

        writer.WriteEndArray();
    }

    private static void WriteOne(Utf8JsonWriter writer, FieldDescription field, object value)
    {
        switch (value)
        {
            case string text:
                writer.WriteStringValue(text);
                break;
            case double number:
                WriteNumber(writer, number);
                break;
            case int whole:
                writer.WriteNumberValue(whole);
                break;
            case bool flag:
                writer.WriteBooleanValue(flag);
                break;
            case DateOnly date:
                writer.WriteStringValue(date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
                break;
            case TimeOnly time:
                writer.WriteStringValue(time.ToString("HH:mm", CultureInfo.InvariantCulture));
                break;
            case PlanPoint point:
                WriteNumbers(writer, [point.XMetres, point.YMetres]);
                break;
            case BandValues bands:
                WriteNumbers(writer, bands);
                break;
            case Enum word:
                writer.WriteStringValue(field.Choice!.WordFor(word));
                break;
            default:
                WriteRecord(writer, value, field.Record!);
                break;
        }
    }

    private static void WriteNumbers(Utf8JsonWriter writer, IEnumerable<double> numbers)
    {
        writer.WriteStartArray();
        foreach (double number in numbers)
        {
            WriteNumber(writer, number);
        }

        writer.WriteEndArray();
    }

    // -0 and 0 are equal, so they are written alike.
    private static void WriteNumber(Utf8JsonWriter writer, double number) => writer.WriteNumberValue(number + 0.0);
}
