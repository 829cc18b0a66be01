using System.Globalization;
using System.Text.RegularExpressions;

namespace ShowSafety.Core.Supplies;

/// <summary>What the rating on an extinguisher's label means (EN 3-7).</summary>
public static partial class FireRating
{
    /// <summary>Class A rating provided per area of floor, 13A for 200 m² (an event's published rule; BS 5306-8).</summary>
    public const double ClassAPerSquareMetre = 13.0 / 200;

    /// <summary>The number before the B of a label such as "13A 113B", or null where there is none.</summary>
    public static int? ClassB(string? label) => Number(BNumber(), label);

    /// <summary>The number before the A of a label such as "13A 113B", or null where there is none.</summary>
    public static int? ClassA(string? label) => Number(ANumber(), label);

    /// <summary>Heptane in the test fire of a class B number: two thirds of that many litres, the rest is water.</summary>
    /// <param name="classB">Class B number, zero or more.</param>
    /// <returns>Volume in L.</returns>
    public static double HeptaneLitres(double classB) => classB * 2 / 3;

    /// <summary>Area of the test tray of a class B number, π/100 m² for each unit (EN 3-7, as quoted: 21B 0.66 m², 89B 2.8 m²).</summary>
    /// <param name="classB">Class B number, zero or more.</param>
    /// <returns>Area in m².</returns>
    public static double TraySquareMetres(double classB) => classB * Math.PI / 100;

    private static int? Number(Regex pattern, string? label)
    {
        Match match = pattern.Match(label ?? "");
        return match.Success ? int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) : null;
    }

    [GeneratedRegex(@"(?<![0-9])([0-9]{1,4})\s?[Bb](?![A-Za-z])")]
    private static partial Regex BNumber();

    [GeneratedRegex(@"(?<![0-9])([0-9]{1,4})\s?[Aa](?![A-Za-z])")]
    private static partial Regex ANumber();
}
