namespace ShowSafety.Core.Exhaust;

/// <summary>Air drawn in by an opening. Lengths, flow and speed in one consistent set of units.</summary>
public static class Suction
{
    /// <summary>Speed at a distance from a point sink in the open: Q/(4π x²).</summary>
    public static double PointSinkSpeed(double flow, double distance) => flow / (4 * Math.PI * distance * distance);

    /// <summary>Speed at a distance from a point sink in a wall: Q/(2π x²).</summary>
    public static double WallSinkSpeed(double flow, double distance) => 2 * PointSinkSpeed(flow, distance);

    /// <summary>Speed on the axis of a plain round opening of area A: Q/(10 x² + A), DallaValle; to about 1.5 d.</summary>
    public static double OpeningSpeed(double flow, double distance, double area) =>
        flow / ((10 * distance * distance) + area);

    /// <summary>Flow needed for a speed at a distance: v (10 x² + A), and 0.75 of it for a flanged opening.</summary>
    public static double OpeningFlow(double speed, double distance, double area, bool flanged) =>
        (flanged ? 0.75 : 1) * speed * ((10 * distance * distance) + area);

    /// <summary>Distance at which the speed of a plain opening falls to a value, 0 when it is under it at the face.</summary>
    public static double OpeningReach(double flow, double speed, double area) =>
        Math.Sqrt(Math.Max(0, (flow / speed) - area) / 10);

    /// <summary>Distance at which the speed of a point sink in a wall falls to a value.</summary>
    public static double WallSinkReach(double flow, double speed) => Math.Sqrt(flow / (2 * Math.PI * speed));
}
