using System.Globalization;
using System.Text.RegularExpressions;

namespace ShowSafety.PageSpeed;

/// <summary>What the page noted while a finger dragged; times in milliseconds of one clock.</summary>
/// <param name="Moves">When the finger moved.</param>
/// <param name="Answers">Assessments that were drawn.</param>
internal sealed record DragTimes(IReadOnlyList<double> Moves, IReadOnlyList<DrawnAnswer> Answers)
{
    /// <summary>For each movement the wait until zones of that movement, or of a later one, were drawn.</summary>
    public IEnumerable<double> MovementToZones() =>
        Moves
            .Select(moved => Answers.Where(a => a.Moved >= moved).Select(a => (double?)a.Drawn).Min() - moved)
            .OfType<double>();
}

/// <summary>One assessment, from the last movement it takes in to the drawing of its zones.</summary>
/// <param name="Moved">The last movement before it was asked for.</param>
/// <param name="Asked">The request was sent.</param>
/// <param name="Came">Its head came back.</param>
/// <param name="Drawn">The page has drawn it.</param>
/// <param name="Service">Server-Timing header of the answer.</param>
/// <param name="Detail">Detail asked for: drag or full.</param>
internal sealed partial record DrawnAnswer(
    double Moved,
    double Asked,
    double Came,
    double Drawn,
    string Service,
    string Detail
)
{
    public double BeforeRequest => Asked - Moved;

    /// <summary>Time inside the assessor as the service says, or 0 when it says nothing.</summary>
    public double Assessor =>
        AssessDuration().Match(Service) is { Success: true } match
            ? double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)
            : 0;

    public double RequestWithoutAssessor => Came - Asked - Assessor;

    public double Drawing => Drawn - Came;

    public double Whole => Drawn - Moved;

    [GeneratedRegex(@"assess;dur=([0-9.]+)")]
    private static partial Regex AssessDuration();
}
