using System.Text.Json;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Makes points from JSON and looks whether lines and rings are what they should be.</summary>
internal static class ShapeBinder
{
    // A square millimetre: less is a slip of the hand, not a place.
    private const double SmallestAreaSquareMetres = 1e-6;

    /// <summary>A point [x, y].</summary>
    public static object? Point(JsonElement value, FieldDescription field, JsonPointer at, ProblemList problems) =>
        Numbers(value, 2, field, at, problems) is [{ } x, { } y] ? new PlanPoint(x, y) : null;

    /// <summary>Exactly so many numbers, each in the member's range; null elements where a problem was added.</summary>
    public static double?[]? Numbers(
        JsonElement value,
        int count,
        FieldDescription field,
        JsonPointer at,
        ProblemList problems
    )
    {
        string allowed = field.AllowedOne;
        if (value.ValueKind != JsonValueKind.Array)
        {
            problems.WrongKind(at, value, allowed);
            return null;
        }

        int given = value.GetArrayLength();
        if (given != count)
        {
            string code = given < count ? PlanProblemCodes.TooFew : PlanProblemCodes.TooMany;
            problems.Add(at, code, value, allowed, $"Here stand {given} values; expected are {count}.");
            return null;
        }

        return [.. value.EnumerateArray().Select((v, i) => ValueBinder.Number(v, field, at.Element(i), problems))];
    }

    /// <summary>Adds what is wrong with a line or a ring of readable points.</summary>
    public static void Check(
        IReadOnlyList<PlanPoint> points,
        FieldDescription field,
        JsonPointer at,
        ProblemList problems
    )
    {
        bool isRing = field.Points == PointsShape.Ring;
        if (!HasRepeatedPoint(points, isRing, at, problems) && isRing)
        {
            CheckRing(points, field.Allowed, at, problems);
        }
    }

    private static bool HasRepeatedPoint(
        IReadOnlyList<PlanPoint> points,
        bool isRing,
        JsonPointer at,
        ProblemList problems
    )
    {
        bool found = false;
        for (int i = 1; i < points.Count; i++)
        {
            if (points[i] == points[i - 1])
            {
                Repeated(at.Element(i), points[i], "The point repeats the one before it.", problems);
                found = true;
            }
        }

        if (isRing && !found && points[0] == points[^1])
        {
            Repeated(
                at.Element(points.Count - 1),
                points[^1],
                "A ring closes by itself: leave the last point out.",
                problems
            );
            found = true;
        }

        return found;
    }

    private static void Repeated(JsonPointer at, PlanPoint point, string text, ProblemList problems) =>
        problems.Add(
            at,
            PlanProblemCodes.RepeatedPoint,
            $"[{AllowedValues.Number(point.XMetres)}, {AllowedValues.Number(point.YMetres)}]",
            "a point other than the one before it",
            text
        );

    private static void CheckRing(IReadOnlyList<PlanPoint> points, string allowed, JsonPointer at, ProblemList problems)
    {
        Polygon polygon = SiteGeometry.Polygon(points);
        if (polygon.ConvexHull().Area < SmallestAreaSquareMetres)
        {
            problems.Add(at, PlanProblemCodes.RingWithoutArea, (string?)null, allowed, "The ring encloses no area.");
        }
        else if (!polygon.IsValid)
        {
            problems.Add(
                at,
                PlanProblemCodes.RingCrosses,
                (string?)null,
                allowed,
                "The ring crosses or touches itself."
            );
        }
    }
}
