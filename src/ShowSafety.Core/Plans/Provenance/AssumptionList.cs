using System.Collections.Frozen;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>A value the assessment rests on that nobody measured.</summary>
/// <param name="Pointer">Where it stands, or would stand, in the file (RFC 6901).</param>
/// <param name="Field">Its entry in the field catalogue, "Bench.Friction".</param>
/// <param name="Meaning">What it means, a phrase.</param>
/// <param name="Value">The number in its unit; null when the entry is a whole record, such as a permission.</param>
/// <param name="Unit">Unit of the number.</param>
/// <param name="Pedigree">Where it comes from; assumed when it is absent and the cautious value stands in.</param>
public sealed record Assumption(
    string Pointer,
    string Field,
    string Meaning,
    double? Value,
    Unit Unit,
    Pedigree Pedigree
)
{
    /// <summary>What the plan notes about it.</summary>
    public string? Note { get; init; }

    /// <summary>Id of the element it belongs to, or null when it belongs to the whole plan.</summary>
    public string? ElementId { get; init; }

    /// <summary>Id of the part of that element (throttle state, rotor, measurement), or null.</summary>
    public string? PartId { get; init; }

    /// <summary>How it can be found out.</summary>
    public FindOut FindOut { get; init; }
}

/// <summary>
/// Lists what a plan rests on without having measured it: stated values of any other pedigree, readings and papers of
/// any other pedigree, and the cautious values that stand in for what is absent.
/// </summary>
public static class AssumptionList
{
    // Every place has air and weather: their cautious values stand in even when the plan says nothing of either.
    private static readonly FrozenSet<string> AlwaysThere = FrozenSet.Create(
        StringComparer.Ordinal,
        "Site.Air",
        "Site.Weather"
    );

    /// <summary>The list, in the order of the file.</summary>
    public static ValueList<Assumption> Of(Plan plan) => PlanWalk.Over(plan).SelectMany(Of).ToValueList();

    private static IEnumerable<Assumption> Of(VisitedMember member) =>
        member switch
        {
            { Value: Stated { Pedigree: not Pedigree.Measured } stated } =>
            [
                Entry(member, member.At, member.Field, stated.Value, stated.Pedigree) with
                {
                    Note = stated.Note,
                },
            ],
            { Value: null, Field.Cautious: { } cautious } =>
            [
                Entry(member, member.At, member.Field, cautious, Pedigree.Assumed),
            ],
            { Value: null } when AlwaysThere.Contains(member.Field.FullName) => Absent(member),
            { Value: Pedigree pedigree and not Pedigree.Measured, Holder: { IsStated: false } holder } =>
            [
                WholeRecord(member, holder, pedigree),
            ],
            _ => [],
        };

    private static IEnumerable<Assumption> Absent(VisitedMember member) =>
        from field in member.Field.Record!.Fields
        where field.Cautious is not null
        select Entry(member, member.At.Member(field.Name), field, field.Cautious, Pedigree.Assumed);

    private static Assumption WholeRecord(VisitedMember member, FieldDescription holder, Pedigree pedigree)
    {
        string own = member.At.ToString();
        Assumption entry = Entry(member, member.At, holder, null, pedigree) with
        {
            Pointer = own[..own.LastIndexOf('/')],
        };
        return member.Owner is SoundMeasurement { LevelDbA: { } level }
            ? entry with
            {
                Value = level,
                Unit = Unit.DecibelA,
            }
            : entry;
    }

    private static Assumption Entry(
        VisitedMember member,
        JsonPointer at,
        FieldDescription field,
        double? value,
        Pedigree pedigree
    ) =>
        new(at.ToString(), field.FullName, field.Meaning, value, field.Unit, pedigree)
        {
            ElementId = member.Ids.Count > 0 ? member.Ids[0] : null,
            PartId = member.Ids.Count > 1 ? member.Ids[^1] : null,
            FindOut = field.FindOut,
        };
}
