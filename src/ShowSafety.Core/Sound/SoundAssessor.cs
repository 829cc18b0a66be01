using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Enclosures;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound;

/// <summary>Assesses the sound of a plan: sources, enclosure, what is missing. Levels at places are the field's.</summary>
public static class SoundAssessor
{
    private const double StandardDistanceMetres = 10;
    private const int OneKilohertz = 4;

    /// <summary>The assessment of a plan whose field has been built.</summary>
    public static SoundAssessment Assess(Plan plan, SoundField field)
    {
        SourceSummary[] sources = [.. field.Engines.SelectMany(e => e.States.Select(s => Summary(field, e, s)))];
        return new()
        {
            Sources = [.. sources],
            Enclosure = field.Enclosure is { } enclosure ? Summary(enclosure) : null,
            Figures =
            [
                .. sources.SelectMany(s => Figures(field, s)),
                .. field.Engines.SelectMany(e => e.States.SelectMany(s => Residuals(e.Id, s))),
                .. field.Enclosure is { } room ? Figures(room) : [],
            ],
            Findings = [.. field.Findings, .. MissingLevels.Of(plan, field)],
        };
    }

    private static SourceSummary Summary(SoundField field, EngineSound engine, StateSound state)
    {
        ValueList<UncertaintyPart> parts = state.Power is null ? [] : field.UncertaintyOf(engine.Id, state);
        double expanded = LevelUncertainty.ExpandedDb(parts);
        return new(engine.Id, state.StateId, state.Origin)
        {
            PowerBandsDb = state.SphereMeanDb,
            PowerDbA = state.SphereMeanDb is { } bands
                ? Level(FrequencyWeighting.LevelDbA(bands), expanded, state)
                : null,
            Spectrum = state.Spectrum,
            TableAddsDb = state.TableAddsDb,
            Uncertainty = parts,
            MeasurementIds = state.MeasurementIds,
            HasPeak = state.PeakSourceDbC is not null,
        };
    }

    private static Quantity Level(double best, double expanded, StateSound state) =>
        Quantity.CautiousHigh(best, best + expanded, Unit.DecibelA) with
        {
            Pedigree = state.Pedigree,
            Citations =
            [
                "iec-61672-1",
                "iso-9613-2",
                "iso-9613-1",
                "jet-directivity",
                "iso-3744",
                "iso-9612-uncertainty",
            ],
            Sum = "source-power",
        };

    private static IEnumerable<Figure> Figures(SoundField field, SourceSummary source)
    {
        if (source.PowerDbA is not { } power)
        {
            yield break;
        }

        StateSound state = field.Engines.First(e => e.Id == source.EngineId).State(source.StateId)!;
        yield return new("sound.power-level", source.EngineId, power) { PartId = source.StateId };
        yield return new("sound.level-at-10-m", source.EngineId, LoudestAtTenMetres(field, source, state))
        {
            PartId = source.StateId,
        };
        yield return new(
            "sound.uncertainty",
            source.EngineId,
            Quantity.Plain(LevelUncertainty.ExpandedDb(source.Uncertainty), Unit.Decibel) with
            {
                Citations = ["iso-9612-uncertainty", "iso-9613-2", "sound-uncertainty-choice"],
                Sum = "expanded-uncertainty",
            }
        )
        {
            PartId = source.StateId,
        };
    }

    private static IEnumerable<Figure> Residuals(string engineId, StateSound state) =>
        (state.Fit?.Residuals ?? []).Select(r => new Figure(
            "sound.fit-residual",
            engineId,
            Quantity.Plain(r.LevelDb, Unit.Decibel) with
            {
                Citations = ["jet-directivity"],
                Sum = "directivity-fit",
            }
        )
        {
            PartId = r.MeasurementId,
        });

    // In the loudest direction, over open hard ground, whatever stands on the site: comparable between plans.
    private static Quantity LoudestAtTenMetres(SoundField field, SourceSummary source, StateSound state)
    {
        EngineSound engine = field.Engines.First(e => e.Id == source.EngineId);
        double loudest = Enumerable
            .Range(0, 181)
            .Max(angle =>
                FrequencyWeighting.LevelDbA(
                    state.Power!.LevelsDb(angle)
                        + field.OpenPathDb(StandardDistanceMetres, engine.HeightMetres, Ears.StandingMetres)
                )
            );
        return Level(loudest, LevelUncertainty.ExpandedDb(source.Uncertainty), state) with { Sum = "outdoor-level" };
    }

    private static EnclosureSummary Summary(EnclosureSound enclosure) =>
        new(
            enclosure.Id,
            enclosure.Room.AbsorptionSquareMetres,
            enclosure.Room.MeanAbsorption,
            BandValues.Build(enclosure.Room.RoomConstantSquareMetres),
            enclosure.Room.HasHardFloor,
            enclosure.Room.IsOutsideRange
        );

    private static IEnumerable<Figure> Figures(EnclosureSound enclosure)
    {
        double area = enclosure.Room.AbsorptionSquareMetres[OneKilohertz];
        double critical = RoomAcoustics.CriticalDistanceMetres(
            2,
            enclosure.Room.RoomConstantSquareMetres(OneKilohertz)
        );
        ValueList<string> citations = ["room-acoustics", "en-12354-6", .. enclosure.MaterialCitations];
        yield return new(
            "sound.absorption-area",
            enclosure.Id,
            Quantity.Plain(area, Unit.SquareMetre) with
            {
                Citations = citations,
                Sum = "absorption-area",
            }
        );
        yield return new(
            "sound.critical-distance",
            enclosure.Id,
            Quantity.Plain(critical, Unit.Metre) with
            {
                Citations = citations,
                Sum = "critical-distance",
            }
        );
    }
}
