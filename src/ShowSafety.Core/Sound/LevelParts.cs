using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Enclosures;
using ShowSafety.Core.Sound.Outdoors;

namespace ShowSafety.Core.Sound;

/// <summary>Takes a level at a place apart.</summary>
internal static class LevelParts
{
    /// <summary>The parts of the level from some running engines, the loudest first; parts of no sound are left out.</summary>
    public static ValueList<LevelPart> Of(
        IEnumerable<RunningEngine> running,
        EnclosureSound? enclosure,
        PlanPoint place,
        double earHeightMetres
    ) =>
        [
            .. running
                .SelectMany(engine => Of(engine, enclosure, place, Math.Max(0, earHeightMetres)))
                .Where(part => part.LevelDbA > Decibels.SilenceDb)
                .OrderByDescending(part => part.LevelDbA),
        ];

    private static IEnumerable<LevelPart> Of(
        RunningEngine engine,
        EnclosureSound? enclosure,
        PlanPoint place,
        double ear
    )
    {
        foreach (OpenAirPath path in engine.Ways.To(place, ear))
        {
            yield return By(engine, path);
        }

        if (enclosure is not null && engine.SphereEnergies is { } whole)
        {
            var energies = new double[OctaveBand.Count];
            enclosure.AddTo(energies, place, whole);
            BandValues bands = BandValues.Of(energies).Map(Decibels.FromEnergy);
            yield return new(
                engine.Id,
                LevelPartKind.Room,
                enclosure.Id,
                FrequencyWeighting.LevelDbA(bands),
                bands,
                null
            );
        }
    }

    private static LevelPart By(RunningEngine engine, OpenAirPath path)
    {
        BandValues power = engine.Power.LevelsDb(path.AngleDegrees);
        BandValues spread = power - path.Flat.SpreadDb;
        BandValues air = spread - path.Flat.AirDb;
        BandValues ground = air - path.Flat.GroundDb;
        BandValues screened = ground - path.ScreenDb;
        BandValues arriving = path.LevelsDb(power);
        double level = FrequencyWeighting.LevelDbA(arriving);
        return new(
            engine.Id,
            path.WallId is null ? LevelPartKind.Straight : LevelPartKind.Wall,
            path.WallId,
            level,
            arriving,
            new(
                path.AngleDegrees,
                FrequencyWeighting.LevelDbA(power),
                path.Flat.SpreadDb,
                Taken(spread, air),
                Taken(air, ground),
                Taken(ground, screened),
                FrequencyWeighting.LevelDbA(screened) - level,
                path.ScreenDb
            )
        );
    }

    private static double Taken(BandValues before, BandValues after) =>
        FrequencyWeighting.LevelDbA(before) - FrequencyWeighting.LevelDbA(after);
}
