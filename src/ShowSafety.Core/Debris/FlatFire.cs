namespace ShowSafety.Core.Debris;

/// <summary>
/// Flight with quadratic drag along a straight line, gravity left out: v = v₀ e^(−kx), exact for dv/dt = −k v². Level
/// flight of a fast piece over the ground people stand on; leaving gravity out makes it longer.
/// </summary>
public static class FlatFire
{
    /// <summary>Energy m v² / 2 in J.</summary>
    public static double Energy(double massKilograms, double speedMetresPerSecond) =>
        massKilograms * speedMetresPerSecond * speedMetresPerSecond / 2;

    /// <summary>Speed in m/s after a distance.</summary>
    /// <param name="startMetresPerSecond">v₀ in m/s, above 0.</param>
    /// <param name="dragPerMetre">k in 1/m, 0 or more.</param>
    /// <param name="distanceMetres">x in m, 0 or more.</param>
    public static double SpeedAt(double startMetresPerSecond, double dragPerMetre, double distanceMetres) =>
        startMetresPerSecond * Math.Exp(-dragPerMetre * distanceMetres);

    /// <summary>Time in s to a distance: (e^(kx) − 1)/(k v₀), x/v₀ without drag.</summary>
    /// <param name="startMetresPerSecond">v₀ in m/s, above 0.</param>
    /// <param name="dragPerMetre">k in 1/m, 0 or more.</param>
    /// <param name="distanceMetres">x in m, 0 or more.</param>
    public static double TimeTo(double startMetresPerSecond, double dragPerMetre, double distanceMetres) =>
        dragPerMetre > 0
            ? (Math.Exp(dragPerMetre * distanceMetres) - 1) / (dragPerMetre * startMetresPerSecond)
            : distanceMetres / startMetresPerSecond;

    /// <summary>Distance in m at which the energy has fallen to a value: ln(E₀/E)/(2k); 0 where it starts below.</summary>
    /// <param name="startJoules">E₀ in J, 0 or more.</param>
    /// <param name="dragPerMetre">k in 1/m, above 0.</param>
    /// <param name="endJoules">E in J, above 0.</param>
    public static double DistanceTo(double startJoules, double dragPerMetre, double endJoules) =>
        startJoules > endJoules ? Math.Log(startJoules / endJoules) / (2 * dragPerMetre) : 0;
}
