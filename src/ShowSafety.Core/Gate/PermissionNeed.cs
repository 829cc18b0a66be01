using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Gate;

/// <summary>A permission without which nothing runs.</summary>
/// <param name="Name">Name in finding codes.</param>
/// <param name="Givers">Who can give it; one of them is enough.</param>
internal sealed record PermissionNeed(string Name, ValueList<PermissionGiver> Givers)
{
    private static readonly PermissionNeed Venue = new("venue", [PermissionGiver.Venue]);

    private static readonly PermissionNeed VenueOrOrganiser = new(
        "venue-or-organiser",
        [PermissionGiver.Venue, PermissionGiver.Organiser]
    );

    private static readonly PermissionNeed Insurer = new("insurer", [PermissionGiver.Insurer]);

    /// <summary>The fire officer or fire authority.</summary>
    public static PermissionNeed FireAuthority { get; } = new("fire-authority", [PermissionGiver.FireAuthority]);

    /// <summary>
    /// What the place and the fuels ask for. A hall or tent: venue, fire authority, insurer. Outdoors: venue or
    /// organiser, and insurer; with petrol or liquefied gas as a fuel, the fire authority as well.
    /// </summary>
    public static ValueList<PermissionNeed> Of(Plan plan) =>
        plan.Site.Enclosure is not null ? [Venue, FireAuthority, Insurer]
        : BurnsEasily(plan) ? [VenueOrOrganiser, FireAuthority, Insurer]
        : [VenueOrOrganiser, Insurer];

    /// <summary>Whether an engine's fuel is unknown and might ask for one permission more.</summary>
    public static bool DependsOnAnUnknownFuel(Plan plan) =>
        plan.Site.Enclosure is null && !BurnsEasily(plan) && plan.Engines.Any(e => e.Sheet?.Fuel is null);

    private static bool BurnsEasily(Plan plan) =>
        plan.Engines.Any(e => e.Sheet?.Fuel is FuelKind.LiquefiedGas or FuelKind.Petrol);
}
