using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;
using System.Text.Json;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Makes lists from JSON.</summary>
internal static class ListBinder
{
    private static readonly ConcurrentDictionary<Type, Func<IEnumerable, object>> Makers = new();

    private static readonly MethodInfo Maker = typeof(ListBinder).GetMethod(
        nameof(Make),
        BindingFlags.NonPublic | BindingFlags.Static
    )!;

    /// <summary>The list, or null where a problem with the list or one of its elements was added.</summary>
    public static object? Bind(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        if (value.ValueKind != JsonValueKind.Array)
        {
            problems.WrongKind(at, value, field.Allowed);
            return null;
        }

        // A list too long is not gone through: its elements are the smaller problem.
        return HasRightLength(value, field, at, problems) ? BindElements(value, field, at, problems) : null;
    }

    private static object? BindElements(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        object?[] elements =
        [
            .. value.EnumerateArray().Select((e, i) => ValueBinder.BindOne(e, field, at.Element(i), problems)),
        ];
        CheckIds(elements, field, at, problems);
        if (elements.Contains(null))
        {
            return null;
        }

        object list = ListOf(field.Shape.Type, elements);
        if (field.Points != PointsShape.None)
        {
            ShapeBinder.Check((ValueList<PlanPoint>)list, field, at, problems);
        }

        return list;
    }

    private static bool HasRightLength(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        int count = value.GetArrayLength();
        if (count >= field.MinCount && count <= field.MaxCount)
        {
            return true;
        }

        string code = count < field.MinCount ? PlanProblemCodes.TooFew : PlanProblemCodes.TooMany;
        string allowed = field.Allowed;
        problems.Add(at, code, value, allowed, $"The list has {count} elements; expected is {allowed}.");
        return false;
    }

    private static void CheckIds(object?[] elements, FieldDescription field, JsonPointer at, ProblemList problems)
    {
        if (field.Record?.Id is not { } idField)
        {
            return;
        }

        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach ((int index, object? element) in elements.Index())
        {
            if (element is not null && idField.ValueIn(element) is string { Length: > 0 } id && !seen.Add(id))
            {
                problems.Add(
                    at.Element(index).Member(idField.Name),
                    PlanProblemCodes.DuplicateId,
                    id,
                    "an id no other element of the list has",
                    $"The id \"{id}\" is given to two elements of the list."
                );
            }
        }
    }

    private static object ListOf(Type element, object?[] elements) =>
        Makers.GetOrAdd(element, static t => Maker.MakeGenericMethod(t).CreateDelegate<Func<IEnumerable, object>>())(
            elements
        );

    private static ValueList<T> Make<T>(IEnumerable elements) => elements.Cast<T>().ToValueList();
}
