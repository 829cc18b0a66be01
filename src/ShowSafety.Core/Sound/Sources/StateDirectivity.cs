using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>Power by direction of a throttle state, and how it came about.</summary>
/// <param name="Power">Power by direction.</param>
/// <param name="Fit">The fit it is made of, or tried, or null where directions are too few or too much alike.</param>
/// <param name="AddsDb">What the published table adds over the sphere to what was measured in dB(A), 0 or more.</param>
/// <param name="Uncertainty">What it adds to the table of uncertainties.</param>
internal sealed record StateDirectivity(
    DirectionalPower Power,
    StateFit? Fit,
    double AddsDb,
    ValueList<UncertaintyPart> Uncertainty
)
{
    /// <summary>The loudest reading in every direction, as the user declares.</summary>
    public static StateDirectivity Uniform(IReadOnlyList<UsableReading> usable)
    {
        var power = new UniformPower(Largest(usable));
        return new(power, null, OverReadingsDb(power, usable), [LevelUncertainty.DeclaredOmnidirectional]);
    }

    /// <summary>
    /// From three directions on a fit where it holds; otherwise the envelope of the readings and the published table,
    /// which only adds.
    /// </summary>
    public static StateDirectivity Of(IReadOnlyList<UsableReading> usable, JetDirectivity table)
    {
        var byAngle = usable.ToLookup(u => MeasurementReduction.SlantAngleDegrees(u.Reading) is not null);
        UsableReading[] directed = [.. byAngle[true]];
        UsableReading[] undirected = [.. byAngle[false]];
        BandValues? floor = undirected.Length == 0 ? null : Largest(undirected);
        if (directed.Length == 0)
        {
            // A reading without a direction, alone, may have been taken where the engine is quietest: ahead of the intake.
            return Plain(new([new DirectedReading(180, floor!)], table, null), null, usable);
        }

        DirectedReading[] readings =
        [
            .. directed.Select(u => new DirectedReading(
                MeasurementReduction.SlantAngleDegrees(u.Reading)!.Value,
                u.PowerDb
            )),
        ];
        var fit = DirectivityFit.Of(readings, table);
        StateFit? stated = fit is null ? null : new(fit.Holds, fit.StandardDb, Named(directed, fit));
        return fit is { Holds: true }
            ? Fitted(new(fit, readings, table, floor), fit, stated!)
            : Plain(new(readings, table, floor), stated, usable);
    }

    private static StateDirectivity Fitted(FittedPower power, DirectivityFit fit, StateFit stated)
    {
        double all = FrequencyWeighting.LevelDbA(power.SphereMeanDb());
        double own = FrequencyWeighting.LevelDbA(power.FitSphereMeanDb());
        return new(power, stated, Math.Max(0, all - own), [LevelUncertainty.DirectivityFit(fit.StandardDb)]);
    }

    private static StateDirectivity Plain(ReadingEnvelope power, StateFit? fit, IReadOnlyList<UsableReading> usable) =>
        new(power, fit, OverReadingsDb(power, usable), []);

    private static double OverReadingsDb(DirectionalPower power, IReadOnlyList<UsableReading> usable)
    {
        double plain = Decibels.Mean([.. usable.Select(u => FrequencyWeighting.LevelDbA(u.PowerDb))]);
        return Math.Max(0, FrequencyWeighting.LevelDbA(power.SphereMeanDb()) - plain);
    }

    private static ValueList<ReadingResidual> Named(UsableReading[] directed, DirectivityFit fit) =>
        [.. directed.Zip(fit.Residuals, (u, r) => new ReadingResidual(u.Reading.Id, r.AngleDegrees, r.LevelDb))];

    private static BandValues Largest(IReadOnlyList<UsableReading> usable) =>
        usable.Select(u => u.PowerDb).Aggregate((a, b) => a.With(b, Math.Max));
}
