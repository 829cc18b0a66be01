using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// All directions from an engine between two bearings, with what every <see cref="Patch"/> of it needs worked out once.
/// </summary>
public sealed class Sector
{
    /// <summary>Makes a sector.</summary>
    /// <param name="seed">The engine's place.</param>
    /// <param name="headingDegrees">Heading the engine's exhaust blows to.</param>
    /// <param name="fromDegrees">Where the sector begins, from that heading clockwise, 0 to 180 or 180 to 360.</param>
    /// <param name="toDegrees">Where it ends: beyond its beginning by less than 90, on the same side of the axis.</param>
    public Sector(PlanPoint seed, double headingDegrees, double fromDegrees, double toDegrees)
    {
        Seed = seed;
        (AxisX, AxisY) = Math.SinCos(Heading.ToRadians(headingDegrees));
        (FromX, FromY) = Math.SinCos(Heading.ToRadians(headingDegrees + fromDegrees));
        (ToX, ToY) = Math.SinCos(Heading.ToRadians(headingDegrees + toDegrees));
        double from = Math.Cos(Heading.ToRadians(fromDegrees));
        double to = Math.Cos(Heading.ToRadians(toDegrees));
        OwnCosines = from < to ? (from, to) : (to, from);
        double half = Heading.ToRadians((toDegrees - fromDegrees) / 2);
        (MiddleX, MiddleY) = Math.SinCos(Heading.ToRadians(headingDegrees + ((fromDegrees + toDegrees) / 2)));
        HalfChord = 2 * Math.Sin(half / 2);
        OverArc = 1 / Math.Cos(half);
    }

    /// <summary>The engine's place.</summary>
    public PlanPoint Seed { get; }

    /// <summary>Cosines of the angles between its directions and the engine's exhaust.</summary>
    public (double Least, double Most) OwnCosines { get; }

    /// <summary>Unit vector along the exhaust, x.</summary>
    internal double AxisX { get; }

    /// <summary>Unit vector along the exhaust, y.</summary>
    internal double AxisY { get; }

    /// <summary>Unit vector along the side it begins at, x.</summary>
    internal double FromX { get; }

    /// <summary>Unit vector along that side, y.</summary>
    internal double FromY { get; }

    /// <summary>Unit vector along the side it ends at, x.</summary>
    internal double ToX { get; }

    /// <summary>Unit vector along that side, y.</summary>
    internal double ToY { get; }

    /// <summary>Unit vector along its middle, x.</summary>
    internal double MiddleX { get; }

    /// <summary>Unit vector along its middle, y.</summary>
    internal double MiddleY { get; }

    /// <summary>Chord from the middle to a side at a distance of 1.</summary>
    internal double HalfChord { get; }

    /// <summary>How far out on the sides a chord touches the arc at a distance of 1.</summary>
    internal double OverArc { get; }

    /// <summary>Whether a way from the engine lies within the sector or along its sides.</summary>
    internal bool Holds(double x, double y) => (FromX * y) - (FromY * x) <= 0 && (x * ToY) - (y * ToX) <= 0;
}
