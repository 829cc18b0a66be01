namespace ShowSafety.Core.IndoorAir;

/// <summary>
/// One well-mixed room: V dC/dt = S − Q (C − C_a), mass balance with its exact solution. The engine draws room air and
/// returns it, so its own air flow never counts as Q. Heat is the same equation with V → ρ V cp, S → P, Q → ρ cp Q + UA.
/// </summary>
/// <param name="Capacity">Volume in m³, or heat capacity in J/K; over 0.</param>
/// <param name="Exchange">Fresh air in m³/s, or exchange in W/K; 0 or more.</param>
/// <param name="Outside">Value of the outside air.</param>
public readonly record struct RoomBalance(double Capacity, double Exchange, double Outside)
{
    /// <summary>Rate at which a deviation decays, 1/s.</summary>
    public double Rate => Exchange / Capacity;

    /// <summary>
    /// Value after a time with a constant source, from a start value: what is left of the start, what came from outside
    /// and what the source gave. No term is subtracted, so that clean air never comes out below 0.
    /// </summary>
    public double After(double seconds, double source, double start)
    {
        double span = Span(seconds);
        return (start * Math.Exp(-Rate * seconds)) + (Outside * Rate * span) + (source / Capacity * span);
    }

    /// <summary>Integral of the value over a time with a constant source, in value times seconds.</summary>
    public double Integral(double seconds, double source, double start) =>
        (start * seconds) + (((source / Capacity) - (Rate * (start - Outside))) * SpanIntegral(seconds));

    /// <summary>Seconds until a value over the start value is reached with a constant source; null for never.</summary>
    public double? SecondsUntil(double value, double source, double start)
    {
        if (value <= start)
        {
            return 0;
        }

        double slope = (source / Capacity) - (Rate * (start - Outside));
        double share = slope > 0 ? Rate * (value - start) / slope : 1;
        return share >= 1 ? null
            : share < 1e-12 ? (value - start) / slope
            : -Math.Log(1 - share) / Rate;
    }

    /// <summary>Seconds until a start value has fallen to a value without a source; null for never.</summary>
    public double? SecondsToClear(double value, double start) =>
        start <= value ? 0
        : Rate > 0 && value > Outside ? Math.Log((start - Outside) / (value - Outside)) / Rate
        : null;

    // (1 − e^(−kt))/k without the loss of figures at small kt; t at k = 0.
    private double Span(double seconds)
    {
        double turns = Rate * seconds;
        return turns < 1e-5 ? seconds * (1 - (turns / 2) + (turns * turns / 6)) : (1 - Math.Exp(-turns)) / Rate;
    }

    // (t − Span(t))/k; t²/2 at k = 0.
    private double SpanIntegral(double seconds)
    {
        double turns = Rate * seconds;
        return turns < 1e-3
            ? seconds * seconds * (0.5 - (turns / 6) + (turns * turns / 24) - (turns * turns * turns / 120))
            : (seconds - Span(seconds)) / Rate;
    }
}
