using ShowSafety.Brief.Drawing;
using ShowSafety.Core;

namespace ShowSafety.Brief.Documents;

/// <summary>How a row of the zones table is drawn: outline and, where people are kept out or asked something, hatch.</summary>
internal sealed record ZoneStyle(Stroke Outline, Hatch? Hatch)
{
    /// <summary>
    /// Debris is heavy, the jet slants, sound is dotted, fuel and things within reach are squared. What covers whole
    /// sites (landing area, published practice, noise limits) is an outline, or it would hide everything else.
    /// </summary>
    public static ZoneStyle Of(ZoneRow row) =>
        row switch
        {
            ZoneRow.DirectFlight => new(Stroke.Medium, Hatches.RisingHeavy),
            ZoneRow.LandingArea => new(new(0.35, LineStyle.LongDashed), null),
            ZoneRow.JetSpeedPublic => new(Stroke.Thin, Hatches.Rising),
            ZoneRow.JetSpeedCrew => new(Stroke.Thin, Hatches.Falling),
            ZoneRow.JetHeatPublic => new(Stroke.Thin, Hatches.Shallow),
            ZoneRow.JetHeatCrew => new(Stroke.Thin, Hatches.Steep),
            ZoneRow.JetHeatMaterials => new(new(0.25, LineStyle.Dotted), null),
            ZoneRow.StartFlame => new(Stroke.Thin, Hatches.Upright),
            ZoneRow.Intake => new(Stroke.Thin, Hatches.Level),
            ZoneRow.HotAndSpinningParts => new(Stroke.Thin, Hatches.Squared),
            ZoneRow.PublishedPractice => new(new(0.35, LineStyle.DashDotted), null),
            ZoneRow.HearingZone => new(new(0.35, LineStyle.Dashed), Hatches.Dotted),
            ZoneRow.AudienceLimit => new(new(0.5, LineStyle.Dashed), null),
            ZoneRow.SoundCeiling => new(Stroke.Medium, Hatches.DottedHeavy),
            ZoneRow.AtTheEar => new(Stroke.Thin, Hatches.DottedRising),
            ZoneRow.IndoorAir => new(new(0.5, LineStyle.Dotted), Hatches.DottedLevel),
            ZoneRow.FuelAndGas => new(Stroke.Thin, Hatches.Crossed),
            ZoneRow.SpillFire => new(Stroke.Thin, Hatches.CrossedShallow),
            _ => new(Stroke.Thin, null),
        };
}
