using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Gate;

/// <summary>What running under a roof asks for before any physics: the engine maker's word, and a tent's papers.</summary>
internal static class TentCheck
{
    public static IEnumerable<Finding> Findings(Plan plan)
    {
        if (plan.Site.Enclosure is not { } enclosure)
        {
            yield break;
        }

        yield return new("gate.indoors-practice", Severity.Act)
        {
            ElementId = enclosure.Id,
            Citations = [SiteSources.GateNeverIndoors],
        };
        if (enclosure.Kind == EnclosureKind.Tent)
        {
            foreach (Finding finding in Papers(plan, enclosure))
            {
                yield return finding;
            }
        }
    }

    private static IEnumerable<Finding> Papers(Plan plan, Enclosure tent)
    {
        TentPapers papers = plan.Gate?.Tent ?? new TentPapers();
        if (string.IsNullOrWhiteSpace(papers.FabricCertificate))
        {
            yield return CannotTell.Without(
                typeof(TentPapers),
                "gate.tent-fabric-certificate-missing",
                Severity.Stop,
                nameof(TentPapers.FabricCertificate),
                tent.Id
            ) with
            {
                Citations = [SiteSources.GateTentFabric],
            };
        }

        Stated planned = (plan.Site.Weather?.HighestWindMetresPerSecond).Or<WeatherBand>(
            nameof(WeatherBand.HighestWindMetresPerSecond)
        );
        if (papers.ClearAtWindMetresPerSecond.Positive() is not { } limit)
        {
            yield return CannotTell.Without(
                typeof(TentPapers),
                "gate.tent-wind-limit-missing",
                Severity.Act,
                nameof(TentPapers.ClearAtWindMetresPerSecond),
                tent.Id
            ) with
            {
                Citations = [SiteSources.GateTentWind],
            };
        }
        else if (planned.NotNegative() is { } wind && limit <= wind)
        {
            yield return new("gate.tent-wind-within-plan", Severity.Act)
            {
                ElementId = tent.Id,
                Arguments =
                [
                    FindingArgument.Of("limit", Quantity.CautiousLow(limit, limit, Unit.MetrePerSecond)),
                    FindingArgument.Of("wind", Quantity.CautiousHigh(wind, wind, Unit.MetrePerSecond)),
                ],
                Citations = [SiteSources.GateTentWind],
            };
        }
    }
}
