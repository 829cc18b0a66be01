namespace ShowSafety.Core.Gate;

/// <summary>
/// Whether a bench holds its engine: statics of a rigid bench pushed by a horizontal thrust at shaft height. The
/// thrust counts twice (this project's choice) for the surge of a start, a gust and somebody leaning on the bench.
/// </summary>
public static class Restraint
{
    /// <summary>How many times the thrust is counted; this project's choice.</summary>
    public const double ThrustFactor = 2;

    /// <summary>Standard acceleration of free fall in m/s² (3rd CGPM 1901; ISO 80000-3:2019).</summary>
    public const double StandardGravityMetresPerSecondSquared = 9.80665;

    /// <summary>Moment of the thrust about the ground, M = T h, counted once. Valid for a horizontal shaft.</summary>
    /// <param name="thrustNewtons">Thrust T in N, zero or more.</param>
    /// <param name="heightMetres">Height h of the shaft above the ground in m, zero or more.</param>
    /// <returns>Moment in N·m.</returns>
    public static double TippingMomentNewtonMetres(double thrustNewtons, double heightMetres) =>
        thrustNewtons * heightMetres;

    /// <summary>Moment that holds the bench down, M = m g b plus what the anchoring is rated to.</summary>
    /// <param name="massKilograms">Mass m of bench and engine in kg, zero or more.</param>
    /// <param name="armMetres">Horizontal distance b from the centre of mass to the tipping edge in m.</param>
    /// <param name="anchoringNewtonMetres">Rated moment of the anchoring in N·m, zero without one.</param>
    /// <returns>Moment in N·m.</returns>
    public static double HoldingMomentNewtonMetres(
        double massKilograms,
        double armMetres,
        double anchoringNewtonMetres = 0
    ) => (massKilograms * StandardGravityMetresPerSecondSquared * armMetres) + anchoringNewtonMetres;

    /// <summary>Force that keeps the bench from sliding, F = μ m g plus what the anchoring is rated to.</summary>
    /// <param name="friction">Friction coefficient μ between feet and ground, zero or more.</param>
    /// <param name="massKilograms">Mass m of bench and engine in kg, zero or more.</param>
    /// <param name="anchoringNewtons">Rated horizontal force of the anchoring in N, zero without one.</param>
    /// <returns>Force in N.</returns>
    public static double HoldingForceNewtons(double friction, double massKilograms, double anchoringNewtons = 0) =>
        (friction * massKilograms * StandardGravityMetresPerSecondSquared) + anchoringNewtons;

    /// <summary>Whether what holds is more than <see cref="ThrustFactor"/> times what pushes.</summary>
    /// <param name="load">Force or moment of the thrust counted once.</param>
    /// <param name="hold">Force or moment that holds, in the same unit.</param>
    public static bool Holds(double load, double hold) => ThrustFactor * load < hold;

    /// <summary>
    /// Thrust of a nozzle that is not choked, from the momentum of what leaves it at rest in the air: T = ṁ V.
    /// </summary>
    /// <param name="massFlowKilogramsPerSecond">Mass flow of air and fuel ṁ in kg/s, zero or more.</param>
    /// <param name="exhaustSpeedMetresPerSecond">Speed at the nozzle V in m/s, zero or more.</param>
    /// <returns>Thrust in N.</returns>
    public static double MomentumThrustNewtons(double massFlowKilogramsPerSecond, double exhaustSpeedMetresPerSecond) =>
        massFlowKilogramsPerSecond * exhaustSpeedMetresPerSecond;
}
