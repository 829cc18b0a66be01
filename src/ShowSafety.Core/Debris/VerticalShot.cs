namespace ShowSafety.Core.Debris;

/// <summary>A piece fired straight up in still air of even density, quadratic drag; closed forms of mechanics.</summary>
/// <param name="TerminalMetresPerSecond">Speed at which drag carries the weight in m/s.</param>
/// <param name="ApexMetres">Height reached in m.</param>
/// <param name="UpSeconds">Time to the top in s.</param>
/// <param name="DownSeconds">Time back to the start in s.</param>
/// <param name="ImpactMetresPerSecond">Speed on return in m/s, always below the terminal speed.</param>
public readonly record struct VerticalShot(
    double TerminalMetresPerSecond,
    double ApexMetres,
    double UpSeconds,
    double DownSeconds,
    double ImpactMetresPerSecond
)
{
    /// <summary>Standard acceleration of free fall in m/s² (ISO 80000-3).</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>
    /// v_t = √(g/k); H = v_t²/(2g) ln(1 + v₀²/v_t²); t_up = (v_t/g) atan(v₀/v_t); v = v₀/√(1 + v₀²/v_t²);
    /// t_down = (v_t/g) acosh(e^(gH/v_t²)).
    /// </summary>
    /// <param name="startMetresPerSecond">v₀ in m/s, above 0.</param>
    /// <param name="dragPerMetre">k in 1/m, above 0.</param>
    /// <param name="gravity">g in m/s², above 0.</param>
    public static VerticalShot Of(double startMetresPerSecond, double dragPerMetre, double gravity = StandardGravity)
    {
        double terminal = Math.Sqrt(gravity / dragPerMetre);
        double ratio = startMetresPerSecond / terminal;
        double growth = Math.Sqrt(1 + (ratio * ratio));
        return new(
            terminal,
            terminal * terminal / gravity * Math.Log(growth),
            terminal / gravity * Math.Atan(ratio),
            terminal / gravity * Math.Acosh(growth),
            startMetresPerSecond / growth
        );
    }
}
