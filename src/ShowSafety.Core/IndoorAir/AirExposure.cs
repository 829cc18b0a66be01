namespace ShowSafety.Core.IndoorAir;

/// <summary>Time-weighted averages and what people breathe out.</summary>
public static class AirExposure
{
    /// <summary>Eight-hour time-weighted average: Σ C t/8 with t in hours (EH40/2005, 4th edition).</summary>
    /// <exception cref="ArgumentException">The two lists differ in length.</exception>
    public static double EightHourAverage(IReadOnlyList<double> concentrations, IReadOnlyList<double> hours) =>
        concentrations.Count == hours.Count
            ? concentrations.Zip(hours, (c, t) => c * t).Sum() / 8
            : throw new ArgumentException("As many times as concentrations are needed.", nameof(hours));

    /// <summary>Steady rise over outside air in ppm from people: 10⁶ N g/Q, g and Q per person in L/s.</summary>
    public static double PeopleRisePpm(double litresPerMinutePerPerson, double freshAirLitresPerSecondPerPerson) =>
        1e6 * litresPerMinutePerPerson / 60 / freshAirLitresPerSecondPerPerson;
}
