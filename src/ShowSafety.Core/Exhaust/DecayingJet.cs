using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exhaust;

/// <summary>
/// A jet quantity (speed or temperature rise) that falls as constant/x along the axis and as a Gaussian across it,
/// capped at its value at the nozzle. The nozzle's radius is added to the width everywhere, on the cautious side.
/// </summary>
/// <param name="Constant">Value times distance on the axis; unit of the value times metre; 0 or more.</param>
/// <param name="WidthSlope">Radius where the value is 1/e of the axis value, per metre of distance; over 0.</param>
/// <param name="Cap">Value at the nozzle, in the unit of the value; positive infinity where it is unknown.</param>
/// <param name="NozzleRadiusMetres">Radius of the nozzle in metres, 0 or more.</param>
public sealed record DecayingJet(double Constant, double WidthSlope, double Cap, double NozzleRadiusMetres)
{
    // Even steps of this many parts in √ln(x_t/x), from the nozzle (3) to the tip (0); under 1 % of the width wasted.
    private const int Tangents = 40;
    private const double NearNozzle = 3;

    /// <summary>Value at an axial and a radial distance in metres; 0 in front of the nozzle plane.</summary>
    public double ValueAt(double axialMetres, double radialMetres)
    {
        if (axialMetres < 0)
        {
            return 0;
        }

        double outside = Math.Max(0, Math.Abs(radialMetres) - NozzleRadiusMetres);
        double width = WidthSlope * axialMetres;
        return outside > 0 && width <= 0 ? 0 : OnAxis(axialMetres) * Profile(outside, width);
    }

    /// <summary>Distance in metres up to which the axis value is at or over a threshold; 0 where it never is.</summary>
    public double ReachMetres(double threshold) => Cap > threshold ? Constant / threshold : 0;

    /// <summary>Half width in metres of the zone over a threshold at an axial distance inside its reach.</summary>
    public double HalfWidthMetres(double axialMetres, double threshold)
    {
        double reach = ReachMetres(threshold);
        return axialMetres >= 0 && axialMetres <= reach && reach > 0
            ? NozzleRadiusMetres + Bulge(axialMetres, reach)
            : 0;
    }

    /// <summary>
    /// The zone over a threshold on the plan, for a nozzle at a place that blows along a heading: r = β x √ln(x_t/x),
    /// drawn round the curve by its tangents. Empty where the threshold is never reached. The cap narrows the true
    /// zone near the nozzle; the uncapped width is kept there.
    /// </summary>
    public Geometry Zone(double threshold, PlanPoint place, double headingDegrees)
    {
        double reach = ReachMetres(threshold);
        if (!(reach > 0))
        {
            return SiteGeometry.Empty;
        }

        List<(double Axial, double Half)> outline = Outline(reach);
        IEnumerable<PlanPoint> right = outline.Select(p => At(p.Axial, p.Half));
        IEnumerable<PlanPoint> left = outline.AsEnumerable().Reverse().Select(p => At(p.Axial, -p.Half));
        return SiteGeometry.Polygon(right.Concat(left));

        PlanPoint At(double axial, double aside) =>
            place.Along(headingDegrees, axial).Along(headingDegrees + 90, aside);
    }

    private double OnAxis(double axialMetres) =>
        Math.Min(Cap, Constant / Math.Max(axialMetres, Math.Max(NozzleRadiusMetres, 1e-3)));

    private static double Profile(double radius, double width) =>
        radius <= 0 ? 1 : Math.Exp(-(radius / width) * (radius / width));

    private double Bulge(double axial, double reach) =>
        axial <= 0 ? 0 : WidthSlope * axial * Math.Sqrt(Math.Max(0, Math.Log(reach / axial)));

    // The curve is concave, so the polygon of its tangents lies outside it; both ends are closed by a line across.
    private List<(double Axial, double Half)> Outline(double reach)
    {
        (double At, double Value, double Slope)[] tangents =
        [
            .. Enumerable.Range(0, Tangents).Select(i => Tangent(reach, NearNozzle * (Tangents - i) / Tangents)),
        ];
        double minimum = Math.Max(NozzleRadiusMetres, 1e-3);
        (double At, double Value, double Slope) first = tangents[0];
        (double At, double Value, double Slope) last = tangents[^1];
        var outline = new List<(double, double)> { (0, minimum + first.Value - (first.Slope * first.At)) };
        for (int i = 1; i < tangents.Length; i++)
        {
            (double a, double va, double sa) = tangents[i - 1];
            (double b, double vb, double sb) = tangents[i];
            double crossing = (vb - va + (sa * a) - (sb * b)) / (sa - sb);
            outline.Add((crossing, minimum + va + (sa * (crossing - a))));
        }

        outline.Add((reach, minimum + Math.Max(0, last.Value + (last.Slope * (reach - last.At)))));
        return outline;
    }

    private (double At, double Value, double Slope) Tangent(double reach, double root)
    {
        double axial = reach * Math.Exp(-root * root);
        return (axial, WidthSlope * axial * root, WidthSlope * (root - (1 / (2 * root))));
    }
}
