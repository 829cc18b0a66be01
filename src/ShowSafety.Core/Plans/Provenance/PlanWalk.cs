using System.Collections;

namespace ShowSafety.Core.Plans;

/// <summary>A member of a plan, there or absent.</summary>
/// <param name="At">Where it stands in the file.</param>
/// <param name="Field">Its entry in the field catalogue.</param>
/// <param name="Value">Its value, or null when it is absent.</param>
/// <param name="Owner">The record it belongs to.</param>
/// <param name="Holder">The member that holds that record; null for the plan itself.</param>
/// <param name="Ids">The ids on the way to it, outermost first.</param>
internal sealed record VisitedMember(
    JsonPointer At,
    FieldDescription Field,
    object? Value,
    object Owner,
    FieldDescription? Holder,
    IReadOnlyList<string> Ids
);

/// <summary>Goes through every member of a plan by the field catalogue, in the order of the file.</summary>
internal static class PlanWalk
{
    /// <summary>Every member, those of records and lists included.</summary>
    public static IEnumerable<VisitedMember> Over(Plan plan) =>
        Over(plan, FieldCatalogue.Plan, null, JsonPointer.Root, []);

    private static IEnumerable<VisitedMember> Over(
        object owner,
        RecordDescription record,
        FieldDescription? holder,
        JsonPointer at,
        IReadOnlyList<string> ids
    )
    {
        if (record.Id?.ValueIn(owner) is string id)
        {
            ids = [.. ids, id];
        }

        foreach (FieldDescription field in record.Fields)
        {
            JsonPointer here = at.Member(field.Name);
            object? value = field.ValueIn(owner);
            yield return new(here, field, value, owner, holder, ids);
            foreach (VisitedMember member in Inside(field, value, here, ids))
            {
                yield return member;
            }
        }
    }

    private static IEnumerable<VisitedMember> Inside(
        FieldDescription field,
        object? value,
        JsonPointer at,
        IReadOnlyList<string> ids
    )
    {
        if (field.Record is not { } record || value is null)
        {
            return [];
        }

        return field.IsList
            ? ((IEnumerable)value).Cast<object>().SelectMany((e, i) => Over(e, record, field, at.Element(i), ids))
            : Over(value, record, field, at, ids);
    }
}
