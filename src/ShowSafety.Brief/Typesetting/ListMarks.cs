using System.Globalization;

namespace ShowSafety.Brief.Typesetting;

/// <summary>What stands before a list item.</summary>
internal static class ListMarks
{
    public static string Of(ListMark mark, int number) =>
        mark switch
        {
            ListMark.Number => number.ToString(CultureInfo.InvariantCulture) + ".",
            ListMark.TickBox => "□",
            _ => "•",
        };
}
