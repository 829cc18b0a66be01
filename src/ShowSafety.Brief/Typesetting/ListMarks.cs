using System.Globalization;

namespace ShowSafety.Brief.Typesetting;

/// <summary>What stands before a list item.</summary>
internal static class ListMarks
{
    /// <summary>A box to tick must be large enough for a pen.</summary>
    public static TextStyle StyleOf(ListMark mark) =>
        mark == ListMark.TickBox ? TextStyles.Body with { SizePoints = 14 } : TextStyles.Body;

    public static string Of(ListMark mark, int number) =>
        mark switch
        {
            ListMark.Number => number.ToString(CultureInfo.InvariantCulture) + ".",
            ListMark.TickBox => "☐",
            _ => "•",
        };
}
