using System.Globalization;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of the rooms of Debris.</summary>
public static class DebrisSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [
        .. DebrisBurstSums.All,
        .. DebrisShapeSums.All,
        .. DebrisFlightSums.All,
        .. DebrisInjurySums.All,
        .. DebrisScreenSums.All,
    ];

    internal static SumParameter Mass => Positive("massKilograms", "mass of the piece", Unit.Kilogram, 1e-9, 1e4);

    internal static SumParameter Speed => Positive("speedMetresPerSecond", "speed", Unit.MetrePerSecond, 1e-6, 1e5);

    internal static SumParameter Revolutions =>
        Positive("speedRevolutionsPerMinute", "speed of the wheel", Unit.RevolutionPerMinute, 1e-3, 1e7);

    internal static SumParameter Energy => Positive("energyJoules", "energy of the piece", Unit.Joule, 1e-9, 1e9);

    internal static SumParameter Diameter =>
        Positive("diameterMetres", "diameter of the striking face", Unit.Metre, 1e-6, 10);

    internal static SumParameter Pieces =>
        new("pieces", "number of equal pieces", Unit.One)
        {
            Min = 1,
            Max = 1000,
            Default = 3,
        };

    internal static SumParameter Positive(string key, string meaning, Unit unit, double min, double max) =>
        new(key, meaning, unit) { Min = min, Max = max };

    internal static SumParameter Standard(
        string key,
        string meaning,
        Unit unit,
        double min,
        double max,
        double standard
    ) => Positive(key, meaning, unit, min, max) with { Default = standard };

    internal static string Line(FormattableString line) => line.ToString(CultureInfo.InvariantCulture);
}
