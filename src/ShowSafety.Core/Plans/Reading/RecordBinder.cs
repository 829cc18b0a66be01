using System.Text.Json;

namespace ShowSafety.Core.Plans;

/// <summary>Makes a record from a JSON object, adding every problem met on the way.</summary>
internal static class RecordBinder
{
    /// <summary>The record, incomplete where problems were added; null when the value is no object.</summary>
    public static object? Bind(JsonElement value, RecordDescription record, JsonPointer at, ProblemList problems)
    {
        if (value.ValueKind != JsonValueKind.Object)
        {
            problems.WrongKind(at, value, $"an object ({record.Name})");
            return null;
        }

        object made = Activator.CreateInstance(record.Type)!;
        Span<bool> seen = stackalloc bool[record.Fields.Count];
        foreach (JsonProperty member in value.EnumerateObject())
        {
            BindMember(member, record, made, seen, at, problems);
        }

        foreach ((int index, FieldDescription field) in record.Fields.Index())
        {
            if (field.Required && !seen[index])
            {
                Missing(field, at, problems);
            }
        }

        return made;
    }

    private static void BindMember(
        JsonProperty member,
        RecordDescription record,
        object made,
        Span<bool> seen,
        JsonPointer at,
        ProblemList problems
    )
    {
        string name = NameOf(member);
        JsonPointer here = at.Member(name);
        int index = record.IndexOf(name);
        if (index < 0)
        {
            Unknown(member, name, record, here, problems);
        }
        else if (seen[index])
        {
            problems.Add(here, PlanProblemCodes.DuplicateMember, member.Value, null, $"\"{name}\" is given twice.");
        }
        else
        {
            seen[index] = true;
            FieldDescription field = record.Fields[index];
            if (ValueBinder.Bind(member.Value, field, here, problems) is { } bound)
            {
                field.Property.SetValue(made, bound);
            }
        }
    }

    // A name may hold half a surrogate pair, which no string can be made of: it is unknown whatever it reads.
    private static string NameOf(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return "\uFFFD";
        }
    }

    private static void Missing(FieldDescription field, JsonPointer at, ProblemList problems) =>
        problems.Add(
            at.Member(field.Name),
            PlanProblemCodes.Missing,
            null,
            field.Allowed,
            $"\"{field.Name}\" is missing: {field.Meaning}. Expected is {field.Allowed}."
        );

    private static void Unknown(
        JsonProperty member,
        string name,
        RecordDescription record,
        JsonPointer here,
        ProblemList problems
    )
    {
        string? meant = NearestName.To(name, record.Fields.Select(f => f.Name));
        string shown = name.Length <= 80 ? name : name[..77] + "...";
        problems.Add(
            here,
            PlanProblemCodes.UnknownMember,
            member.Value,
            meant,
            $"\"{shown}\" is not known here." + (meant is null ? "" : $" Was \"{meant}\" meant?")
        );
    }
}
