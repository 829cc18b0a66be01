using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.People;

/// <summary>
/// Levels at one ear, one for each combination of states; combinations that are not heard are silence.
/// </summary>
/// <param name="Place">Place on the plan.</param>
/// <param name="EarHeightMetres">Height of the ear in metres.</param>
/// <param name="ByCombination">Levels by combination.</param>
public sealed record HeardLevels(PlanPoint Place, double EarHeightMetres, ValueList<PointLevel> ByCombination)
{
    private static readonly PointLevel Silence = new(
        BandValues.Uniform(Decibels.SilenceDb),
        Decibels.SilenceDb,
        Decibels.SilenceDb,
        0
    );

    /// <summary>Best estimates in dB(A).</summary>
    public ValueList<double> BestDbA { get; } = [.. ByCombination.Select(l => l.LevelDbA)];

    /// <summary>Best estimates + U in dB(A).</summary>
    public ValueList<double> PlanningDbA { get; } = [.. ByCombination.Select(l => l.PlanningDbA)];

    /// <summary>Index of the combination with the highest planning level.</summary>
    public int Loudest =>
        Enumerable.Range(0, PlanningDbA.Count).Aggregate(0, (a, b) => PlanningDbA[b] > PlanningDbA[a] ? b : a);

    /// <summary>Levels at a place, or null when any combination heard can't be told.</summary>
    public static HeardLevels? At(
        PlanPoint place,
        double earHeightMetres,
        IReadOnlyList<StateCombination> combinations,
        IReadOnlyCollection<int> heard,
        ISoundLevels sound
    )
    {
        var levels = new PointLevel[combinations.Count];
        Array.Fill(levels, Silence);
        foreach (int index in heard)
        {
            StateCombination combination = combinations[index];
            PointLevel? level = combination.IsContradictory
                ? null
                : sound.LevelAt(place, earHeightMetres, combination.StateByEngine);
            if (level is null || !double.IsFinite(level.PlanningDbA))
            {
                return null;
            }

            levels[index] = level;
        }

        return new(place, earHeightMetres, [.. levels]);
    }

    /// <summary>
    /// The levels under a protector, best and best + U in dB(A) by combination; null when its ratings are missing.
    /// </summary>
    public (ValueList<double> Best, ValueList<double> Planning)? UnderProtector(HearingProtector protector)
    {
        ValueList<double?> best = [.. ByCombination.Select(level => WornProtector.LevelDbA(protector, level))];
        return best.Any(level => level is null)
            ? null
            : (
                [.. best.Select(level => level!.Value)],
                [.. best.Select((level, i) => level!.Value + ByCombination[i].ExpandedUncertaintyDb)]
            );
    }
}
