using System.Globalization;
using System.Text.Json;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Makes the value of a member from JSON: null where a problem was added or the text is empty.</summary>
internal static class ValueBinder
{
    /// <summary>The value of a member, list or not.</summary>
    public static object? Bind(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems) =>
        field.IsList ? ListBinder.Bind(value, field, at, problems) : BindOne(value, field, at, problems);

    /// <summary>The value of a member that is no list, or one element of a list.</summary>
    public static object? BindOne(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems) =>
        field.Kind switch
        {
            FieldKind.Text => TextBinder.Bind(value, field, at, problems),
            FieldKind.Number => Number(value, field, at, problems),
            FieldKind.WholeNumber => Whole(value, field, at, problems),
            FieldKind.Boolean => Boolean(value, field, at, problems),
            FieldKind.Choice => Choice(value, field, at, problems),
            FieldKind.Date => Date(value, field, at, problems),
            FieldKind.Time => Time(value, field, at, problems),
            FieldKind.Point => ShapeBinder.Point(value, field, at, problems),
            FieldKind.Bands => Bands(value, field, at, problems),
            _ => RecordBinder.Bind(value, field.Record!, at, problems),
        };

    /// <summary>A finite number in the member's range.</summary>
    public static double? Number(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        string allowed = field.AllowedNumber;
        if (value.ValueKind != JsonValueKind.Number)
        {
            problems.WrongKind(at, value, allowed);
            return null;
        }

        if (!value.TryGetDouble(out double number) || !double.IsFinite(number))
        {
            problems.Add(at, PlanProblemCodes.NotFinite, value, allowed, "The number is too large to be one.");
            return null;
        }

        if (number < field.Min || number > field.Max)
        {
            string given = AllowedValues.Number(number);
            problems.Add(
                at,
                PlanProblemCodes.OutOfRange,
                value,
                allowed,
                $"{given} is not {AllowedValues.Range(field)}."
            );
            return null;
        }

        // Adding zero turns -0 into 0: they are equal, so they must be written alike.
        return number + 0.0;
    }

    private static int? Whole(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        if (Number(value, field, at, problems) is not { } number)
        {
            return null;
        }

        if (number == Math.Floor(number) && Math.Abs(number) <= int.MaxValue)
        {
            return (int)number;
        }

        problems.Add(at, PlanProblemCodes.NotWhole, value, field.AllowedOne, "A whole number is expected.");
        return null;
    }

    private static bool? Boolean(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        if (value.ValueKind is JsonValueKind.True or JsonValueKind.False)
        {
            return value.GetBoolean();
        }

        problems.WrongKind(at, value, field.AllowedOne);
        return null;
    }

    private static object? Choice(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        string allowed = field.AllowedOne;
        if (TextBinder.Raw(value, allowed, at, problems) is not { } word)
        {
            return null;
        }

        if (field.Choice!.ValueOf(word) is { } found)
        {
            return found;
        }

        string? meant = NearestName.To(word, field.Words);
        string hint = meant is null ? "" : $" Was \"{meant}\" meant?";
        problems.Add(at, PlanProblemCodes.UnknownWord, value, allowed, $"The word is not {allowed}.{hint}");
        return null;
    }

    private static DateOnly? Date(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        string allowed = field.AllowedOne;
        if (TextBinder.Raw(value, allowed, at, problems) is not { } text)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return date;
        }

        problems.Add(at, PlanProblemCodes.NotADate, value, allowed, $"This is not {allowed}.");
        return null;
    }

    private static TimeOnly? Time(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        string allowed = field.AllowedOne;
        if (TextBinder.Raw(value, allowed, at, problems) is not { } text)
        {
            return null;
        }

        if (TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return time;
        }

        problems.Add(at, PlanProblemCodes.NotATime, value, allowed, $"This is not {allowed}.");
        return null;
    }

    private static BandValues? Bands(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        double?[]? numbers = ShapeBinder.Numbers(value, OctaveBand.Count, field, at, problems);
        return numbers is null || numbers.Contains(null) ? null : BandValues.Of([.. numbers.Select(n => n!.Value)]);
    }
}
