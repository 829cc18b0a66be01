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
        (Obstacle Obstacle, double WidthMetres)[] between =
        [
            .. obstacles
                .Where(o => o.Meets(source.Place, receiver.Place).Any())
                .Select(o => (o, o.WidthAcross(source.Place, receiver.Place))),
        ];
        return between.Length == 0 ? null : Losses(source, receiver, between, groundDb);
    }

    // Narrower than a wavelength it is no obstacle in that band, clause 7.4. From high bands to low ones fewer and fewer
    // are left; the ways round them are looked for only where one drops out.
    private static BandValues Losses(
        RaisedPoint source,
        RaisedPoint receiver,
        (Obstacle Obstacle, double WidthMetres)[] between,
        BandValues groundDb
    )
    {
        var losses = new double[OctaveBand.Count];
        int count = 0;
        Ways ways = default;
        for (int band = losses.Length - 1; band >= 0; band--)
        {
            double wavelength = ScreenDiffraction.WavelengthMetres(band);
            Obstacle[] wide = [.. between.Where(o => o.WidthMetres > wavelength).Select(o => o.Obstacle)];
            if (wide.Length != count)
            {
                (count, ways) = (wide.Length, Ways.Of(source, receiver, wide));
            }

            losses[band] = ways.LossDb(band, groundDb[band]);
        }

        return BandValues.Of(losses);
    }

    /// <summary>The ways past some obstacles; none without obstacles.</summary>
    private readonly record struct Ways(DetourPath? Top, DetourPath? Left, DetourPath? Right)
    {
        public static Ways Of(RaisedPoint source, RaisedPoint receiver, Obstacle[] wide) =>
            Detours.OverTop(source, receiver, wide) is { } top
                ? new(
                    top,
                    Detours.RoundSide(source, receiver, wide, left: true),
                    Detours.RoundSide(source, receiver, wide, left: false)
                )
                : default;

        public double LossDb(int band, double groundDb)
        {
            if (Top is not { } top)
            {
                return 0;
            }

            double over = ScreenDiffraction.AttenuationDb(ScreenDiffraction.OverTopDb(band, top), groundDb);
            double energy = Decibels.ToEnergy(-over) + Side(band, Left) + Side(band, Right);
            return Math.Max(0, -Decibels.FromEnergy(energy));
        }

        private static double Side(int band, DetourPath? round) =>
            round is { } way ? Decibels.ToEnergy(-ScreenDiffraction.RoundEndDb(band, way)) : 0;
    }
}
