namespace ShowSafety.Core.IndoorAir;

/// <summary>Hot air under a ceiling over a heat source: Alpert, Fire Technology 8, 1972 (memory).</summary>
public static class CeilingJet
{
    /// <summary>
    /// Rise over ambient right over the source, K: 16.9 Q^(2/3)/H^(5/3), Q in kW, H in m over the source. Validity: flat
    /// ceiling, r/H up to 0.18, steady source that rises as a plume; a level jet is weaker there, so it is cautious.
    /// </summary>
    public static double RiseKelvin(double kilowatts, double heightMetres) =>
        16.9 * Math.Pow(kilowatts, 2.0 / 3) / Math.Pow(heightMetres, 5.0 / 3);
}
