using System.Globalization;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>
/// Numbers as people read them: as many digits as the value deserves, rounded towards the cautious side, always with
/// the unit.
/// </summary>
public static class ValueFormat
{
    /// <summary>The planning value with its unit, rounded towards the cautious side.</summary>
    public static string Planning(Quantity quantity) =>
        WithUnit(Rounded(quantity.Planning, quantity.Unit, quantity.Direction), quantity.Unit);

    /// <summary>The best estimate with its unit, rounded to the nearest.</summary>
    public static string Best(Quantity quantity) =>
        WithUnit(Rounded(quantity.Best, quantity.Unit, CautiousDirection.None), quantity.Unit);

    /// <summary>A plain number with a unit, rounded to the nearest.</summary>
    public static string Number(double value, Unit unit) =>
        WithUnit(Rounded(value, unit, CautiousDirection.None), unit);

    private static string WithUnit(string number, Unit unit) =>
        unit.Symbol() switch
        {
            "" => number,
            "°" => number + "°",
            { } symbol => $"{number}\u00A0{symbol}",
        };

    private static string Rounded(double value, Unit unit, CautiousDirection direction)
    {
        int decimals = Decimals(value, unit);
        decimal scaled = Shifted((decimal)Math.Clamp(value, -1e15, 1e15), decimals);
        decimal whole = direction switch
        {
            // A hundred-thousandth of slack, so that 85.000000001 does not print as 85.1.
            CautiousDirection.High => decimal.Ceiling(scaled - 0.00001m),
            CautiousDirection.Low => decimal.Floor(scaled + 0.00001m),
            _ => decimal.Round(scaled, MidpointRounding.AwayFromZero),
        };
        return Grouped(Shifted(whole, -decimals), Math.Max(0, decimals));
    }

    /// <summary>The value times ten to a power, exactly.</summary>
    private static decimal Shifted(decimal value, int places)
    {
        decimal power = 1;
        for (int i = 0; i < Math.Abs(places); i++)
        {
            power *= 10;
        }

        return places >= 0 ? value * power : value / power;
    }

    /// <summary>Digits in groups of three from ten thousand on, with a space as the SI brochure asks.</summary>
    private static string Grouped(decimal value, int decimals)
    {
        string format = (Math.Abs(value) >= 10_000 ? "N" : "F") + decimals.ToString(CultureInfo.InvariantCulture);
        return value.ToString(format, CultureInfo.InvariantCulture).Replace(',', '\u00A0');
    }

    private static int Decimals(double value, Unit unit) =>
        unit switch
        {
            Unit.Decibel or Unit.DecibelA or Unit.DecibelC or Unit.Celsius or Unit.Kelvin => 1,
            Unit.Person or Unit.RevolutionPerMinute => 0,
            _ => Significant(value),
        };

    /// <summary>Three significant digits, at most six decimals; large numbers lose their last digits too.</summary>
    private static int Significant(double value)
    {
        double size = Math.Abs(value);
        return size < 1e-9 ? 0 : (int)Math.Clamp(2 - Math.Floor(Math.Log10(size)), -12, 6);
    }
}
