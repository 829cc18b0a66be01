using System.Text.Json;
using System.Text.Json.Serialization;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Files;

/// <summary>Rounding of numbers on output.</summary>
internal static class Rounding
{
    private const int SignificantDigits = 6;

    public static double OfUnit(double value, Unit unit) =>
        unit switch
        {
            Unit.Decibel or Unit.DecibelA or Unit.DecibelC => Math.Round(value, 2),
            Unit.Metre => Metres(value),
            _ => Significant(value),
        };

    public static double Metres(double value) => Math.Round(value, 3) + 0.0;

    public static double Significant(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value;
        }

        int decimals = SignificantDigits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return decimals >= 0
            ? Math.Round(value, Math.Min(decimals, 15))
            : Math.Round(value / Math.Pow(10, -decimals)) * Math.Pow(10, -decimals);
    }
}

/// <summary>Writes bare numbers with six significant digits.</summary>
internal sealed class RoundedNumberConverter : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) =>
        writer.WriteNumberValue(Rounding.Significant(value));
}

/// <summary>Writes a quantity with its unit's symbol, rounded as the unit deserves.</summary>
internal sealed class QuantityConverter : JsonConverter<Quantity>
{
    public override Quantity Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Assessments are written, never read back.");

    public override void Write(Utf8JsonWriter writer, Quantity value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteNumber("best", Rounding.OfUnit(value.Best, value.Unit));
        writer.WriteNumber("planning", Rounding.OfUnit(value.Planning, value.Unit));
        writer.WriteString("unit", value.Unit.Symbol());
        writer.WriteString("cautious", JsonNamingPolicy.CamelCase.ConvertName(value.Direction.ToString()));
        writer.WriteString("pedigree", JsonNamingPolicy.CamelCase.ConvertName(value.Pedigree.ToString()));
        writer.WriteStartArray("citations");
        foreach (string id in value.Citations)
        {
            writer.WriteStringValue(id);
        }

        writer.WriteEndArray();
        if (value.Sum is { } sum)
        {
            writer.WriteString("sum", sum);
        }

        writer.WriteEndObject();
    }
}

/// <summary>Writes a point as [x, y] in metres.</summary>
internal sealed class PlanPointConverter : JsonConverter<PlanPoint>
{
    public override PlanPoint Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Assessments are written, never read back.");

    public override void Write(Utf8JsonWriter writer, PlanPoint value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        writer.WriteNumberValue(Rounding.Metres(value.XMetres));
        writer.WriteNumberValue(Rounding.Metres(value.YMetres));
        writer.WriteEndArray();
    }
}

/// <summary>Writes polygons as a list of polygons, each a list of rings (shell first), each a list of [x, y].</summary>
internal sealed class GeometryConverter : JsonConverter<Geometry>
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsAssignableTo(typeof(Geometry));

    public override Geometry Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Assessments are written, never read back.");

    public override void Write(Utf8JsonWriter writer, Geometry value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        for (int i = 0; i < value.NumGeometries; i++)
        {
            if (value.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                writer.WriteStartArray();
                Ring(writer, polygon.Shell);
                foreach (LinearRing hole in polygon.Holes)
                {
                    Ring(writer, hole);
                }

                writer.WriteEndArray();
            }
        }

        writer.WriteEndArray();
    }

    private static void Ring(Utf8JsonWriter writer, LinearRing ring)
    {
        writer.WriteStartArray();
        // A corner stands on one line where the rest is laid out for reading.
        string between = writer.Options.Indented ? ", " : ",";
        foreach (Coordinate corner in ring.Coordinates)
        {
            writer.WriteRawValue(
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"[{Rounding.Metres(corner.X)}{between}{Rounding.Metres(corner.Y)}]"
                )
            );
        }

        writer.WriteEndArray();
    }
}
