using NetTopologySuite.Algorithm;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound.Enclosures;

/// <summary>Makes the sound of an enclosure from the plan and says what was assumed.</summary>
internal sealed class EnclosureBuilder(Enclosure enclosure, BandValues airDecibelsPerKilometre, SoundFindings findings)
{
    // Heaviest common fabric: the heavier, the more it reflects. A choice.
    private const double AssumedFabricKilogramsPerSquareMetre = 1.0;
    private const double EvenProportions = 3;

    private readonly SortedSet<string> _citations = new(StringComparer.Ordinal);

    /// <summary>The enclosure, or null when its field can't be told.</summary>
    public EnclosureSound? Build()
    {
        if (!Footprint.IsUsable(enclosure.Footprint))
        {
            CannotTell("Enclosure.Footprint");
            return null;
        }

        if (enclosure.EavesHeightMetres is not { Value: > 0 and < 1e4 } eaves)
        {
            CannotTell("Enclosure.EavesHeightMetres");
            return null;
        }

        var footprint = new Footprint(enclosure.Footprint);
        RoomSurface[] walls = [.. footprint.Sides.SelectMany((side, i) => Wall(i, Length(side) * eaves.Value))];
        RoomSurface roof = Surface(footprint.AreaSquareMetres, enclosure.RoofMaterial, "Enclosure.RoofMaterial");
        var floor = new RoomSurface(footprint.AreaSquareMetres, Floor(), BandValues.Zero);
        SayUnknownSides(enclosure.Footprint.Count);
        bool outside = IsOutsideRange(eaves.Value);
        if (outside)
        {
            findings.Add("sound.diffuse-model-outside-range", Severity.Note, enclosure.Id);
        }

        double volume = footprint.AreaSquareMetres * eaves.Value;
        return new(enclosure.Id, footprint, new DiffuseRoom([.. walls, roof], floor, Other(volume), outside))
        {
            MaterialCitations = [.. _citations],
        };
    }

    private IEnumerable<RoomSurface> Wall(int index, double area)
    {
        EnclosureSide? side = enclosure.Sides.FirstOrDefault(s => s.Side == index);
        double open = side?.OpenShare is { } share && double.IsFinite(share.Value) ? Math.Clamp(share.Value, 0, 1) : 0;
        yield return new(area * open, BandValues.Uniform(1), BandValues.Uniform(1));
        if (open < 1)
        {
            yield return side?.Absorption is { } own
                ? Opaque(area * (1 - open), own.Map(a => Math.Clamp(a, 0, 1)))
                : Surface(area * (1 - open), side?.Material ?? enclosure.WallMaterial, "Enclosure.WallMaterial");
        }
    }

    private RoomSurface Surface(double area, string? id, string field)
    {
        if (id == Materials.FabricId || (id is null && enclosure.Kind == EnclosureKind.Tent))
        {
            return Fabric(area);
        }

        Material material = Named(id, field) ?? Materials.Find(Materials.LeastAbsorbingId)!;
        _citations.Add(material.CitationId);
        return Opaque(area, material.Absorption);
    }

    // Sound that passes a wall is part of what the wall absorbs, so the absorption bounds what gets out.
    private static RoomSurface Opaque(double area, BandValues absorption) => new(area, absorption, absorption);

    private RoomSurface Fabric(double area)
    {
        double mass = enclosure.FabricKilogramsPerSquareMetre is { Value: > 0 } stated
            ? stated.Value
            : AssumedFabricKilogramsPerSquareMetre;
        if (enclosure.FabricKilogramsPerSquareMetre is not { Value: > 0 })
        {
            SayOnce(
                "sound.fabric-mass-assumed",
                "Enclosure.FabricKilogramsPerSquareMetre",
                FindingArgument.Of("mass", Quantity.Plain(mass, Unit.KilogramPerSquareMetre))
            );
        }

        _citations.Add("limp-wall");
        BandValues through = LimpWall.BandsTransmission(mass);
        return new(area, through.Map(t => Math.Min(1, t + Materials.FabricDissipation)), through);
    }

    // A floor nobody names is a perfect mirror.
    private BandValues Floor()
    {
        Material? floor = Named(enclosure.FloorMaterial, "Enclosure.FloorMaterial");
        _citations.UnionWith(floor is null ? [] : [floor.CitationId]);
        return floor?.Absorption ?? BandValues.Zero;
    }

    private Material? Named(string? id, string field)
    {
        Material? material = id is null ? null : Materials.Find(id);
        if (material is null)
        {
            SayOnce(
                id is null ? "sound.material-assumed" : "sound.material-unknown",
                field,
                FindingArgument.Of("material", id ?? "")
            );
        }

        return material;
    }

    private BandValues Other(double volume)
    {
        double people = enclosure.FewestPeople.Or<Enclosure>(nameof(Enclosure.FewestPeople)).Value;
        double counted = double.IsFinite(people) ? Math.Max(0, people) : 0;
        _citations.UnionWith(counted > 0 ? ["absorption-of-people"] : []);
        return BandValues.Build(band =>
            (counted * Materials.PersonSquareMetres[band])
            + (4 * volume * AirAbsorption.PowerCoefficientPerMetre(airDecibelsPerKilometre[band]))
        );
    }

    private bool IsOutsideRange(double height)
    {
        NetTopologySuite.Geometries.Coordinate[] box = MinimumDiameter
            .GetMinimumRectangle(SiteGeometry.Polygon(enclosure.Footprint))
            .Coordinates;
        double[] lengths = [box[0].Distance(box[1]), box[1].Distance(box[2]), height];
        bool open = enclosure.Sides.Any(s => s.OpenShare is { Value: > 0 });
        return open || enclosure.Kind == EnclosureKind.Tent || lengths.Max() > EvenProportions * lengths.Min();
    }

    private void SayUnknownSides(int sides)
    {
        foreach (EnclosureSide side in enclosure.Sides.Where(s => s.Side < 0 || s.Side >= sides))
        {
            findings.Add(
                "sound.enclosure-side-unknown",
                Severity.Act,
                enclosure.Id,
                "EnclosureSide.Side",
                FindingArgument.Of("side", side.Side)
            );
        }
    }

    private void SayOnce(string code, string field, FindingArgument argument)
    {
        Severity severity = code == "sound.material-unknown" ? Severity.Act : Severity.Note;
        if (!findings.All.Any(f => f.Code == code && f.Field == field))
        {
            findings.Add(code, severity, enclosure.Id, field, argument);
        }
    }

    private void CannotTell(string field) =>
        findings.Add(
            new Finding("sound.enclosure-cannot-tell", Severity.Stop)
            {
                ElementId = enclosure.Id,
                Field = field,
                CannotTell = true,
                Row = ZoneRow.AudienceLimit,
            }
        );

    private static double Length((PlanPoint From, PlanPoint To) side) => side.From.DistanceMetres(side.To);
}
