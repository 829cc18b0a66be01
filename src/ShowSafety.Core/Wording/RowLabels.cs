namespace ShowSafety.Core.Wording;

/// <summary>What people call the rows of the zones table.</summary>
public static class RowLabels
{
    /// <summary>The label of a row, as a phrase.</summary>
    public static string Of(ZoneRow row) =>
        row switch
        {
            ZoneRow.DirectFlight => "direct flight of rotor pieces",
            ZoneRow.LandingArea => "landing area of lobbed pieces",
            ZoneRow.JetSpeedPublic => "jet too fast for the public",
            ZoneRow.JetSpeedCrew => "jet too fast for crew",
            ZoneRow.JetHeatPublic => "jet too hot for the public",
            ZoneRow.JetHeatCrew => "jet too hot for crew",
            ZoneRow.JetHeatMaterials => "jet too hot for materials",
            ZoneRow.StartFlame => "flame at a start",
            ZoneRow.Intake => "intake",
            ZoneRow.HotAndSpinningParts => "hot and spinning parts within reach",
            ZoneRow.PublishedPractice => "distance of published practice",
            ZoneRow.HearingZone => "hearing zone",
            ZoneRow.AudienceLimit => "audience noise limit",
            ZoneRow.SoundCeiling => "sound ceiling",
            ZoneRow.AtTheEar => "no listed protector is enough",
            ZoneRow.IndoorAir => "indoor air",
            ZoneRow.FuelAndGas => "fuel and gas",
            ZoneRow.SpillFire => "heat of a spill fire",
            _ => throw new ArgumentOutOfRangeException(nameof(row), row, "Not a row of the zones table."),
        };
}
