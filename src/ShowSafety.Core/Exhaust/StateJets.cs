using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exhaust;

/// <summary>A zone of one state over one threshold.</summary>
/// <param name="StateId">Id of the throttle state.</param>
/// <param name="BestMetres">Reach, best estimate: free jet, middle constants, no gusts.</param>
/// <param name="PlanningMetres">Reach to plan with.</param>
/// <param name="Area">Polygon to plan with.</param>
/// <param name="MeetsFloor">Whether the jet meets the floor within its reach.</param>
/// <param name="BesideWall">Whether it runs along a wall within its reach.</param>
internal sealed record ThresholdZone(
    string StateId,
    double BestMetres,
    double PlanningMetres,
    Geometry Area,
    bool MeetsFloor,
    bool BesideWall
);

/// <summary>The four jets of a throttle state: speed and temperature rise, best and planning.</summary>
internal sealed class StateJets(JetSource source, EngineJetFrame frame)
{
    // Sideways spread of a jet on a floor, half-speed radius per metre: Launder and Rodi 1983, 0.26 + 0.02 (memory).
    private const double FloorHalfSlope = 0.28;

    /// <summary>What the state blows out.</summary>
    public JetSource Source => source;

    /// <summary>Speed zone over a threshold in m/s; null when the thrust is unknown.</summary>
    public ThresholdZone? Speed(double threshold) =>
        BestSpeed is { } best && PlanningSpeed(Planes.Free) is not null
            ? Zone(best, planes => PlanningSpeed(planes)!, threshold)
            : null;

    /// <summary>Heat zone over a temperature rise in K; null when thrust, heat or exhaust temperature is unknown.</summary>
    public ThresholdZone? Heat(double rise) =>
        BestRise is { } best && PlanningRise(Planes.Free) is not null
            ? Zone(best, planes => PlanningRise(planes)!, rise)
            : null;

    /// <summary>Best estimate of the speed.</summary>
    public DecayingJet? BestSpeed =>
        source.ThrustNewtons is { } thrust
            ? new(
                ThrustLaw.SpeedConstant(JetConstants.SpeedCoefficient, thrust, frame.Air.Density),
                JetConstants.SpeedWidthSlope,
                source.ExitMetresPerSecond ?? double.PositiveInfinity,
                frame.NozzleRadiusMetres
            )
            : null;

    /// <summary>Best estimate of the temperature rise.</summary>
    public DecayingJet? BestRise =>
        source is { ThrustNewtons: { } thrust and > 0, HeatWatts: { } heat, ExitCelsius: { } exit }
            ? new(
                ThrustLaw.RiseConstant(JetConstants.RiseCoefficient, heat, thrust, frame.Air.Density),
                JetConstants.RiseWidthSlope,
                exit - frame.Air.TemperatureCelsius,
                frame.NozzleRadiusMetres
            )
            : null;

    /// <summary>Speed to plan with: high end of the published band, gusts, planes the jet runs along.</summary>
    public DecayingJet? PlanningSpeed(Planes planes) =>
        source.ThrustHighNewtons is { } thrust
            ? new(
                planes.Factor
                    * JetConstants.GustFactor
                    * ThrustLaw.SpeedConstant(
                        JetConstants.ThrustCoefficient(JetConstants.SpeedDecayHigh),
                        thrust,
                        frame.Air.Density
                    ),
                Slope(JetConstants.HalfSpeedSlopeHigh, planes),
                JetConstants.GustFactor * (source.ExitMetresPerSecond ?? double.PositiveInfinity),
                frame.NozzleRadiusMetres
            )
            : null;

    /// <summary>Temperature rise to plan with: high end of the published band, low thrust, planes.</summary>
    public DecayingJet? PlanningRise(Planes planes) =>
        source is { ThrustLowNewtons: { } thrust and > 0, HeatWatts: { } heat, ExitCelsius: { } exit }
            ? new(
                planes.Factor
                    * ThrustLaw.RiseConstant(
                        JetConstants.ThrustCoefficient(JetConstants.RiseDecayHigh),
                        heat,
                        thrust,
                        frame.Air.Density
                    ),
                Slope(JetConstants.HalfRiseSlopeHigh, planes),
                exit - frame.Air.TemperatureCelsius,
                frame.NozzleRadiusMetres
            )
            : null;

    private static double Slope(double halfSlope, Planes planes) =>
        JetConstants.WidthSlope(planes.Floor ? Math.Max(halfSlope, FloorHalfSlope) : halfSlope);

    private ThresholdZone Zone(DecayingJet best, Func<Planes, DecayingJet> planning, double threshold)
    {
        Planes planes = new(planning(Planes.Free).ReachMetres(threshold) > frame.FloorContactMetres, false);
        Geometry area = frame.ZoneOf(planning(planes), threshold);
        if (frame.RunsBesideWall(area))
        {
            planes = planes with { Wall = true };
            area = frame.ZoneOf(planning(planes), threshold);
        }

        double reach = planning(planes).ReachMetres(threshold);
        double bestReach = Math.Min(reach, best.ReachMetres(threshold));
        return new(source.StateId, bestReach, reach, area, planes.Floor, planes.Wall);
    }
}

/// <summary>The planes a jet runs along.</summary>
/// <param name="Floor">Whether it meets the floor.</param>
/// <param name="Wall">Whether it runs along a wall.</param>
internal readonly record struct Planes(bool Floor, bool Wall)
{
    /// <summary>A free jet.</summary>
    public static Planes Free => default;

    /// <summary>Factor on reach.</summary>
    public double Factor => (Floor ? Surfaces.AttachedFactor : 1) * (Wall ? Surfaces.AttachedFactor : 1);
}
