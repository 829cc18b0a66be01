namespace ShowSafety.Core.Exhaust;

/// <summary>
/// Centre line of a subsonic hot or cold jet with its core: Witze, "Centerline velocity decay of compressible free
/// jets", AIAA Journal 12(4), 1974 (memory). Validity: nozzle Mach number under 1, same pressure as the ambient air.
/// </summary>
public static class CompressibleJet
{
    /// <summary>Mixing constant κ = 0.08 (1 − 0.16 M_j)(ρ_a/ρ_j)^−0.22.</summary>
    public static double MixingConstant(double machNumber, double ambientToJetDensity) =>
        0.08 * (1 - (0.16 * machNumber)) * Math.Pow(ambientToJetDensity, -0.22);

    /// <summary>Length of the core in nozzle diameters: 0.70/(2 κ √(ρ_a/ρ_j)).</summary>
    public static double CoreDiameters(double machNumber, double ambientToJetDensity) =>
        0.70 / (2 * Growth(machNumber, ambientToJetDensity));

    /// <summary>Centre speed over nozzle speed; 1 inside the core.</summary>
    public static double CentreRatio(double distancePerDiameter, double machNumber, double ambientToJetDensity)
    {
        double beyondCore = (2 * distancePerDiameter * Growth(machNumber, ambientToJetDensity)) - 0.70;
        return beyondCore <= 0 ? 1 : 1 - Math.Exp(-1 / beyondCore);
    }

    private static double Growth(double machNumber, double ambientToJetDensity) =>
        MixingConstant(machNumber, ambientToJetDensity) * Math.Sqrt(ambientToJetDensity);
}
