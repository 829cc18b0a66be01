using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors.Screens;

/// <summary>What the obstacles of a site take off the sound from one point to another.</summary>
public static class ScreeningLoss
{
    /// <summary>
    /// Loss in dB per octave band, 0 or more: sound over the tops and round both sides added up, never above the level
    /// without the obstacles. Null when no obstacle stands between.
    /// </summary>
    /// <param name="source">The source.</param>
    /// <param name="receiver">The receiver.</param>
    /// <param name="obstacles">Obstacles of the site.</param>
    /// <param name="groundDb">A_gr of the path without obstacles, per band.</param>
    public static BandValues? BandsDb(
        RaisedPoint source,
        RaisedPoint receiver,
        ValueList<Obstacle> obstacles,
        BandValues groundDb
    )
    {
        Obstacle[] between = [.. obstacles.Where(o => o.Meets(source.Place, receiver.Place).Any())];
        return between.Length == 0
            ? null
            : BandValues.Build(band => Loss(band, source, receiver, between, groundDb[band]));
    }

    private static double Loss(int band, RaisedPoint source, RaisedPoint receiver, Obstacle[] between, double groundDb)
    {
        // Narrower than a wavelength it is no obstacle in that band, clause 7.4.
        double wavelength = ScreenDiffraction.WavelengthMetres(band);
        Obstacle[] wide = [.. between.Where(o => o.WidthAcross(source.Place, receiver.Place) > wavelength)];
        if (Detours.OverTop(source, receiver, wide) is not { } top)
        {
            return 0;
        }

        double over = ScreenDiffraction.AttenuationDb(ScreenDiffraction.OverTopDb(band, top), groundDb);
        double energy = Decibels.ToEnergy(-over) + Side(left: true) + Side(left: false);
        return Math.Max(0, -Decibels.FromEnergy(energy));

        double Side(bool left) =>
            Detours.RoundSide(source, receiver, wide, left) is { } round
                ? Decibels.ToEnergy(-ScreenDiffraction.RoundEndDb(band, round))
                : 0;
    }
}
