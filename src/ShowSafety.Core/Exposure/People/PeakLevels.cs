using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure.People;

/// <summary>C-weighted peaks at a group.</summary>
public static class PeakLevels
{
    /// <summary>
    /// The highest peak of any combination heard at any place tried, in dB(C); null when any of them was not measured.
    /// </summary>
    public static Quantity? Highest(PersonContext context, StayPattern stay, IEnumerable<HeardLevels> ears)
    {
        Quantity? highest = null;
        foreach (HeardLevels ear in ears)
        {
            foreach (int index in stay.Heard)
            {
                StateCombination combination = context.Timeline.Combinations[index];
                Quantity? peak = combination.IsContradictory
                    ? null
                    : context.Sound.PeakDbCAt(ear.Place, ear.EarHeightMetres, combination.StateByEngine);
                if (peak is null)
                {
                    return null;
                }

                highest = highest is null || peak.Planning > highest.Planning ? peak : highest;
            }
        }

        return highest;
    }
}
