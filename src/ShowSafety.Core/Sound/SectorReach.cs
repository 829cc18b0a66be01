namespace ShowSafety.Core.Sound;

/// <summary>
/// How far along a sector a value may reach a threshold. A place to begin at is guessed from thin patches; from there
/// outwards, patch after patch is shown to stay below. Where that fails, the same is done from outside in, and the reach
/// is where the outermost patch begins that can't be shown to stay below. What was learnt in one sector guesses the
/// next: a guess costs time when it is wrong, never truth.
/// </summary>
internal sealed class SectorReach
{
    /// <summary>Nearer than this to an engine, in metres, an area is not told apart from the engine.</summary>
    public const double FirstMetres = 0.3;

    /// <summary>The largest distance looked at, in metres.</summary>
    public const double LargestMetres = 20_000;

    // A reach is found to this share, outwards.
    private const double Tolerance = 0.001;

    // 20 lg r as growth: a point source in the open.
    private const double PointSourceGrowth = 8.69;

    // The longest patch taken in one step inwards, as a factor of distances, and the one tried first.
    private const double LongestStep = 4;
    private const double FirstStep = 1.3;

    // The reach of a patch that is not longer than this, as a factor, is as good as that of a thin one.
    private const double ShortPatch = 1.02;

    private const int MostGuesses = 5;

    // Over a shorter way, in the logarithm of distance, a jump at a wall would pass for growth.
    private const double ShortestLesson = 0.1;

    // By how much patches grow and shrink outwards, in the logarithm of their length.
    private const double LongerPatch = 4;
    private const double ShorterPatch = 3;

    // How much the value grew at last when the distance fell by a factor of e.
    private double _growth = PointSourceGrowth;

    // How long the first patch outwards may well be.
    private double _length = Math.Log(LargestMetres);

    /// <summary>The reach in metres, 0 when nothing reaches.</summary>
    /// <param name="excess">
    /// The value no place between two distances exceeds, less the threshold: where it is below 0 all stays below.
    /// </param>
    /// <param name="guess">Where the reach may be, in metres, any value.</param>
    public double Farthest(Func<double, double, double> excess, double guess)
    {
        Clear edge = Edge(excess, Math.Clamp(guess, FirstMetres, LargestMetres));
        double found = Inwards(excess, StaysBelowBeyond(excess, edge.Metres) ? edge : Beyond(excess, edge.Metres));
        return found > FirstMetres ? found
            : excess(0, FirstMetres) < 0 ? 0
            : FirstMetres;
    }

    // Where thin patches say that the value falls under the threshold, if they say so soon: a place to begin at.
    private Clear Edge(Func<double, double, double> excess, double at)
    {
        double over = excess(at, at * (1 + Tolerance));
        for (int i = 0; i < MostGuesses && !IsLittleUnder(over) && (over >= 0 || at > FirstMetres); i++)
        {
            double factor = Math.Exp(over / _growth) * (1 + (Tolerance / 2));
            double next = Math.Clamp(at * Math.Clamp(factor, 1 / LongestStep, LongestStep), FirstMetres, LargestMetres);
            double nextOver = excess(next, next * (1 + Tolerance));
            Learn(over - nextOver, next / at);
            (at, over) = (next, nextOver);
        }

        return new(at, over, 1 + Tolerance);
    }

    private static bool IsLittleUnder(double over) => over < 0 && -over <= PointSourceGrowth * Tolerance;

    // From a thin patch outwards, in patches that grow as the value falls away from the threshold.
    private bool StaysBelowBeyond(Func<double, double, double> excess, double near)
    {
        double length = _length;
        bool isFirst = true;
        while (near < LargestMetres)
        {
            double far = Math.Min(LargestMetres, near * Math.Exp(length));
            if (excess(near, far) < 0)
            {
                _length = isFirst ? Math.Min(length * 2, Math.Log(LargestMetres)) : _length;
                (near, isFirst) = (far, false);
                length *= LongerPatch;
            }
            else if (length > Tolerance)
            {
                length /= ShorterPatch;
            }
            else
            {
                return false;
            }
        }

        return true;
    }

    private Clear Beyond(Func<double, double, double> excess, double near)
    {
        double further = 1 + Tolerance;
        while (near < LargestMetres)
        {
            double over = excess(near, LargestMetres);
            if (over < 0)
            {
                return new(near, over, LargestMetres / near);
            }

            double guessed = Math.Min(LongestStep, Math.Exp(over / _growth) * (1 + Tolerance));
            near = Math.Min(LargestMetres, near * Math.Max(guessed, further));
            further = Math.Min(LongestStep, further * further * further);
        }

        return new(LargestMetres, double.NegativeInfinity, LongestStep);
    }

    private double Inwards(Func<double, double, double> excess, Clear beyond)
    {
        (double clear, double under, double length) = beyond;
        double step = FirstStep;
        while (clear > FirstMetres && !(length <= ShortPatch && IsLittleUnder(under)))
        {
            double near = Math.Max(FirstMetres, clear / Math.Max(1 + Tolerance, Math.Min(step, Guess(under))));
            double next = excess(near, clear);
            Learn(next - under, clear / near);
            if (next < 0)
            {
                (length, clear, under) = (clear / near, near, next);
                step = Math.Min(LongestStep, step * step);
            }
            else if (clear <= near * (1 + (2 * Tolerance)))
            {
                return clear;
            }
            else
            {
                step = Math.Sqrt(clear / near);
            }
        }

        return clear;
    }

    // By which factor the distance falls until the value is a little under the threshold.
    private double Guess(double under) =>
        double.IsFinite(under) ? Math.Exp(-under / _growth) / (1 + (Tolerance / 2)) : double.PositiveInfinity;

    private void Learn(double grown, double factor)
    {
        double way = Math.Log(factor);
        double learnt = grown / way;
        if (double.IsFinite(learnt) && Math.Abs(way) > ShortestLesson && learnt > PointSourceGrowth / 10)
        {
            _growth = learnt;
        }
    }

    // A distance from which on everything stays below, by how much it does over the first patch, and the length of that
    // patch as a factor.
    private readonly record struct Clear(double Metres, double Under, double Length);
}
