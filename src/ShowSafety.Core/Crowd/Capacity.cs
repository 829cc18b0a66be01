using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Crowd;

/// <summary>How many people an area holds and its exits let out in time.</summary>
public static class Capacity
{
    /// <summary>Area for each standing person outdoors in m² (HSG195, as quoted; a county's event guide).</summary>
    public const double AreaPerPersonSquareMetres = 0.5;

    /// <summary>Flow through a level exit in the open, people per metre and minute (Green Guide, as quoted).</summary>
    public const double OpenAirFlowPerMetreMinute = 109;

    /// <summary>Flow through an exit of a hall or tent, people per metre and minute (Green Guide, as quoted).</summary>
    public const double EnclosedFlowPerMetreMinute = 82;

    /// <summary>Time to leave open ground where the risk is high, in minutes (a borough's event guide).</summary>
    public const double OpenAirMinutes = 5;

    /// <summary>Time to leave a hall or tent with fuel in it, in minutes (from memory).</summary>
    public const double EnclosedMinutes = 2.5;

    /// <summary>People an area holds, A/a rounded down.</summary>
    /// <param name="areaSquareMetres">Area A in m², zero or more.</param>
    /// <param name="perPersonSquareMetres">Area for each person a in m², more than zero.</param>
    /// <returns>Number of people, a whole number.</returns>
    public static double ByArea(double areaSquareMetres, double perPersonSquareMetres) =>
        WholePeople(areaSquareMetres / perPersonSquareMetres);

    /// <summary>People that leave through a width in a time, w f t rounded down.</summary>
    /// <param name="widthMetres">Width w in m, zero or more.</param>
    /// <param name="flowPerMetreMinute">Flow f, people per metre and minute.</param>
    /// <param name="minutes">Time t in minutes.</param>
    /// <returns>Number of people, a whole number.</returns>
    public static double ByFlow(double widthMetres, double flowPerMetreMinute, double minutes) =>
        WholePeople(widthMetres * flowPerMetreMinute * minutes);

    /// <summary>Width left when the widest exit can't be used: the sum of all less the widest one.</summary>
    /// <param name="widthsMetres">Clear widths in m, each zero or more; none gives zero.</param>
    /// <returns>Width in m.</returns>
    public static double WidthWithoutTheWidestMetres(IReadOnlyCollection<double> widthsMetres) =>
        widthsMetres.Count == 0 ? 0 : widthsMetres.Sum() - widthsMetres.Max();

    /// <summary>
    /// People one exit of a building serves by its width: none under 750 mm, 60 from 750 mm, 110 from 850 mm, 220 from
    /// 1,050 mm and from there one for each 5 mm (England, Approved Document B; from memory). Between two widths the
    /// smaller one counts.
    /// </summary>
    /// <param name="widthMetres">Clear width in m, zero or more.</param>
    /// <returns>Number of people, a whole number.</returns>
    public static double OfOneExit(double widthMetres)
    {
        // A hair's breadth keeps widths such as 1.05 m on their step.
        double millimetres = Math.Floor((widthMetres * 1000) + 1e-6);
        return millimetres switch
        {
            < 750 => 0,
            < 850 => 60,
            < 1050 => 110,
            < 1100 => 220,
            _ => Math.Floor(millimetres / 5),
        };
    }

    /// <summary>People the exits of a building serve by their widths when the widest can't be used.</summary>
    /// <param name="widthsMetres">Clear widths in m; none gives zero.</param>
    /// <returns>Number of people, a whole number.</returns>
    public static double OfExitsWithoutTheWidest(IReadOnlyCollection<double> widthsMetres) =>
        widthsMetres.OrderDescending().Skip(1).Sum(OfOneExit);

    // Rounding of the product must not take the last person away.
    private static double WholePeople(double people) => Math.Floor(people * (1 + 1e-12));
}
