using ShowSafety.Core.Citations;
using ShowSafety.Core.Crowd;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.SumLines;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of the crowd: room, ways out, barriers, reach, alarm, signs.</summary>
internal static class CrowdSums
{
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "capacity-by-area",
            "People an area holds",
            [
                Zero("areaSquareMetres", "area", Unit.SquareMetre),
                new("perPersonSquareMetres", "area for each person", Unit.SquareMetre)
                {
                    Min = 0.1,
                    Max = 100,
                    Default = Capacity.AreaPerPersonSquareMetres,
                },
            ],
            [SiteSources.CrowdArea],
            ByArea
        ),
        new(
            "capacity-by-exits",
            "People who leave in time when the widest exit can't be used",
            [
                Zero("widthsMetres", "clear widths of all exits", Unit.Metre) with
                {
                    ListLength = 0,
                },
                Zero("flowPerMetreMinute", "flow", Unit.PersonPerMetreMinute) with
                {
                    Default = Capacity.EnclosedFlowPerMetreMinute,
                },
                Zero("minutes", "time to leave", Unit.Minute) with
                {
                    Default = Capacity.EnclosedMinutes,
                },
            ],
            [SiteSources.CrowdOpenAirFlow, SiteSources.CrowdEnclosedFlow, SiteSources.CrowdEnclosedTime],
            ByExits
        ),
        new(
            "exit-by-width",
            "People one exit of a building serves by its width",
            [Zero("widthMetres", "clear width", Unit.Metre)],
            [SiteSources.CrowdExitWidths],
            ByWidth
        ),
        new(
            "barrier-panels",
            "Panels a crowd line needs",
            [
                Zero("lineMetres", "length of the line", Unit.Metre),
                new("panelMetres", "length of a panel", Unit.Metre) { Min = 0.1, Max = 100 },
            ],
            [SiteSources.CrowdPanels],
            Panels
        ),
        new(
            "reach-over-barrier",
            "Distance of a hazard from a barrier people lean over",
            [
                Zero("hazardMillimetres", "height of the hazard", Unit.Millimetre),
                new("barrierMillimetres", "height of the barrier", Unit.Millimetre)
                {
                    Min = ReachTable.LowestBarrierMillimetres,
                },
            ],
            [SiteSources.CrowdReach],
            Reach
        ),
        new(
            "alarm-level",
            "Level an alarm needs to be heard",
            [new("ambientDbA", "ambient level", Unit.DecibelA) { Min = 0, Max = 200 }],
            [SiteSources.CrowdAlarm],
            AlarmLevel
        ),
        new(
            "escape-sign",
            "Distance from which an escape-route sign is read",
            [Zero("heightMetres", "height of the sign", Unit.Metre)],
            [SiteSources.CrowdEscapeSigns],
            EscapeSign
        ),
        new(
            "sign-size",
            "Size of a prohibition, warning or mandatory sign",
            [new("distanceMetres", "distance it is read from", Unit.Metre) { Min = 0, Max = 50 }],
            [SiteSources.CrowdSigns],
            Signs
        ),
    ];

    private static SumParameter Zero(string key, string meaning, Unit unit) => new(key, meaning, unit) { Min = 0 };

    private static SumAnswer ByArea(SumInput input)
    {
        double area = input.Number("areaSquareMetres");
        double each = input.Number("perPersonSquareMetres");
        double people = Capacity.ByArea(area, each);
        return new(
            [new("people", people, Unit.Person, "people the area holds")],
            [Line($"A/a = {area}/{each}, rounded down: {people}")]
        );
    }

    private static SumAnswer ByExits(SumInput input)
    {
        ValueList<double> widths = input.Numbers("widthsMetres");
        double flow = input.Number("flowPerMetreMinute");
        double minutes = input.Number("minutes");
        double width = Capacity.WidthWithoutTheWidestMetres(widths);
        double people = Capacity.ByFlow(width, flow, minutes);
        double table = Capacity.OfExitsWithoutTheWidest(widths);
        return new(
            [
                new("people", people, Unit.Person, "people who leave in time"),
                new("usableWidthMetres", width, Unit.Metre, "width without the widest exit"),
                new("peopleAllWidths", Capacity.ByFlow(widths.Sum(), flow, minutes), Unit.Person, "with every exit"),
                new("peopleByWidths", table, Unit.Person, "by the English table of widths, without the widest"),
            ],
            [
                Line($"{string.Join(" + ", widths.Select(w => Line($"{w}")))} less the widest = {width:G6} m"),
                Line($"w f t = {width:G6} · {flow} · {minutes}, rounded down: {people}"),
            ]
        );
    }

    private static SumAnswer ByWidth(SumInput input)
    {
        double width = input.Number("widthMetres");
        double people = Capacity.OfOneExit(width);
        return new(
            [new("people", people, Unit.Person, "people the exit serves")],
            [Line($"0.75 m 60, 0.85 m 110, 1.05 m 220, then one for each 5 mm: {width} m serve {people}")]
        );
    }

    private static SumAnswer Panels(SumInput input)
    {
        double line = input.Number("lineMetres");
        double panel = input.Number("panelMetres");
        double panels = Barriers.Panels(line, panel);
        return new([new("panels", panels, Unit.One, "panels")], [Line($"{line}/{panel}, rounded up: {panels}")]);
    }

    private static SumAnswer Reach(SumInput input)
    {
        double hazard = input.Number("hazardMillimetres");
        double barrier = input.Number("barrierMillimetres");
        double distance = ReachTable.DistanceMillimetres(hazard, barrier) ?? ReachTable.LongestReachMillimetres;
        return new(
            [new("distanceMillimetres", distance, Unit.Millimetre, "horizontal distance of the hazard")],
            [Line($"a = {hazard} mm, b = {barrier} mm, neighbour that asks for more: c = {distance} mm")]
        );
    }

    private static SumAnswer AlarmLevel(SumInput input)
    {
        double ambient = input.Number("ambientDbA");
        double needed = Alarm.NeededDbA(ambient);
        return new(
            [
                new("neededDbA", needed, Unit.DecibelA, "level the alarm needs"),
                new("highestAmbientDbA", Alarm.HighestAmbientDbA, Unit.DecibelA, "highest ambient level it can beat"),
            ],
            [
                Line($"{ambient} + {Alarm.AboveAmbientDb} = {needed:G6} dB(A)"),
                Line($"at most {Alarm.HighestDbA} dB(A), so ambient at most {Alarm.HighestAmbientDbA} dB(A)"),
            ]
        );
    }

    private static SumAnswer EscapeSign(SumInput input)
    {
        double height = input.Number("heightMetres");
        double outside = SignSize.EscapeSignDistanceMetres(height, SignSize.LitFromOutside);
        double inside = SignSize.EscapeSignDistanceMetres(height, SignSize.LitFromInside);
        return new(
            [
                new("litFromOutsideMetres", outside, Unit.Metre, "lit from outside"),
                new("litFromInsideMetres", inside, Unit.Metre, "lit from inside"),
            ],
            [Line($"L = Z h = 100 · {height} = {outside:G6} m, 200 · {height} = {inside:G6} m")]
        );
    }

    private static SumAnswer Signs(SumInput input)
    {
        double distance = input.Number("distanceMetres");
        double area = SignSize.AreaSquareMetres(distance);
        double disc = 1000 * SignSize.DiscMetres(area);
        double triangle = 1000 * SignSize.TriangleMetres(area);
        return new(
            [
                new("areaSquareMetres", area, Unit.SquareMetre, "area"),
                new("discMillimetres", disc, Unit.Millimetre, "diameter of a disc"),
                new("triangleMillimetres", triangle, Unit.Millimetre, "side of a triangle"),
            ],
            [
                Line($"A = L²/2000 = {distance}²/2000 = {area:G6} m²"),
                Line($"d = √(4 A/π) = {disc:G6} mm, s = √(4 A/√3) = {triangle:G6} mm"),
            ]
        );
    }
}
