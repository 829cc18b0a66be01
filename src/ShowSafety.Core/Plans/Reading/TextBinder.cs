using System.Buffers;
using System.Text;
using System.Text.Json;

namespace ShowSafety.Core.Plans;

/// <summary>Makes texts from JSON.</summary>
internal static class TextBinder
{
    /// <summary>
    /// Characters nobody reads, as the inside of a character class: controls, line and paragraph separators, and the
    /// marks that turn the reading direction, with which a text can show something else than it says.
    /// </summary>
    public const string Unreadable = @"\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069";

    private static readonly SearchValues<char> Refused = SearchValues.Create([
        .. Enumerable
            .Range(0, 0x206A)
            .Select(c => (char)c)
            .Where(c => char.IsControl(c) || c is '\u2028' or '\u2029' or (>= '\u202a' and <= '\u202e') or >= '\u2066'),
    ]);

    /// <summary>The text; null where a problem was added, and for an empty text, which says nothing.</summary>
    public static string? Bind(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        string allowed = field.AllowedOne;
        if (Raw(value, allowed, at, problems) is not { } text)
        {
            return null;
        }

        (string? code, string why) = Flaw(text, field);
        if (code is not null)
        {
            problems.Add(at, code, value, allowed, why);
            return null;
        }

        return text.Length == 0 ? null : text;
    }

    /// <summary>The characters of a JSON string, or null where a problem was added.</summary>
    public static string? Raw(JsonElement value, string allowed, JsonPointer at, ProblemList problems)
    {
        if (value.ValueKind != JsonValueKind.String)
        {
            problems.WrongKind(at, value, allowed);
            return null;
        }

        try
        {
            return value.GetString();
        }
        catch (InvalidOperationException)
        {
            // Half a surrogate pair, written as an escape.
            problems.Add(at, PlanProblemCodes.ControlCharacter, value, allowed, "The text holds half a character.");
            return null;
        }
    }

    private static (string? Code, string Why) Flaw(string text, FieldDescription field)
    {
        if (field.Exactly is { } only)
        {
            return text == only ? (null, "") : (PlanProblemCodes.WrongText, $"Only \"{only}\" is read here.");
        }

        if ((field.Required || field.IsList) && string.IsNullOrWhiteSpace(text))
        {
            return (PlanProblemCodes.Blank, $"The text is empty; expected is {field.Meaning}.");
        }

        if (IsLongerThan(field.MaxLength, text))
        {
            string most = AllowedValues.Number(field.MaxLength);
            return (PlanProblemCodes.TooLong, $"The text is longer than {most} characters.");
        }

        return HoldsUnreadable(text, field.ManyLines)
            ? (PlanProblemCodes.ControlCharacter, "The text holds control characters, which nobody can read.")
            : (null, "");
    }

    private static bool IsLongerThan(int most, string text) =>
        text.Length > most && text.EnumerateRunes().Count() > most;

    private static bool HoldsUnreadable(string text, bool manyLines) =>
        (manyLines ? text.Replace('\n', ' ') : text).AsSpan().ContainsAny(Refused);
}
