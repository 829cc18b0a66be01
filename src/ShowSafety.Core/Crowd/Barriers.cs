namespace ShowSafety.Core.Crowd;

/// <summary>Panels of a barrier.</summary>
public static class Barriers
{
    /// <summary>Panels a line needs, its length over that of a panel rounded up.</summary>
    /// <param name="lineMetres">Length of the line in m, zero or more.</param>
    /// <param name="panelMetres">Length of a panel in m, more than zero.</param>
    /// <returns>Number of panels, a whole number.</returns>
    public static double Panels(double lineMetres, double panelMetres) =>
        // Rounding of the quotient must not ask for one more.
        Math.Ceiling(lineMetres / panelMetres * (1 - 1e-12));
}
