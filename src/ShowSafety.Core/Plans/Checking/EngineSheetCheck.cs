using ShowSafety.Core.Measures;
using static ShowSafety.Core.Plans.CheckFinding;

namespace ShowSafety.Core.Plans;

/// <summary>Whether the numbers of an engine sheet can all be true of one engine.</summary>
internal static class EngineSheetCheck
{
    public static IEnumerable<Finding> Findings(Plan plan) =>
        plan.Engines.Where(e => e.Sheet is not null).SelectMany(e => Findings(e.Id, e.Sheet!));

    private static IEnumerable<Finding> Findings(string engineId, EngineSheet sheet) =>
        [
            .. sheet.Rotors.SelectMany(r => Radii(engineId, r)),
            .. sheet.Rotors.SelectMany(r => Fits(engineId, r, sheet)),
            .. sheet.Rotors.SelectMany(r => Speeds(engineId, r, sheet)),
            .. StateOrder(engineId, sheet.States),
        ];

    private static IEnumerable<Finding> Radii(string engineId, Rotor rotor)
    {
        if (IsAbove(rotor.RimRadiusMetres, rotor.TipRadiusMetres))
        {
            yield return Pair("plan.rim-beyond-tip", engineId, rotor, rotor.RimRadiusMetres!, rotor.TipRadiusMetres!);
        }

        if (IsAbove(rotor.BoreRadiusMetres, rotor.RimRadiusMetres))
        {
            yield return Pair("plan.bore-beyond-rim", engineId, rotor, rotor.BoreRadiusMetres!, rotor.RimRadiusMetres!);
        }
    }

    private static IEnumerable<Finding> Fits(string engineId, Rotor rotor, EngineSheet sheet)
    {
        if (
            rotor.TipRadiusMetres is { } tip
            && sheet.CasingDiameterMetres is { } casing
            && 2 * tip.Value > casing.Value
        )
        {
            Stated diameter = tip with { Value = 2 * tip.Value };
            yield return Pair("plan.rotor-larger-than-casing", engineId, rotor, diameter, casing);
        }

        if (IsAbove(rotor.AxialPositionMetres, sheet.LengthMetres))
        {
            yield return Pair(
                "plan.rotor-beyond-intake",
                engineId,
                rotor,
                rotor.AxialPositionMetres!,
                sheet.LengthMetres!
            );
        }
    }

    private static IEnumerable<Finding> Speeds(string engineId, Rotor rotor, EngineSheet sheet)
    {
        Stated? highest = rotor.MaximumSpeedRevolutionsPerMinute;
        if (IsAbove(highest, rotor.TripSpeedRevolutionsPerMinute))
        {
            yield return Act(
                "plan.trip-below-maximum-speed",
                engineId,
                Text("rotor", rotor.Id),
                Number("trip", rotor.TripSpeedRevolutionsPerMinute!, Unit.RevolutionPerMinute),
                Number("maximum", highest!, Unit.RevolutionPerMinute)
            );
        }

        foreach (ThrottleState state in sheet.States.Where(s => IsAbove(s.ShaftSpeedRevolutionsPerMinute, highest)))
        {
            yield return Act(
                "plan.state-above-maximum-speed",
                engineId,
                Text("state", state.Name ?? state.Id),
                Text("rotor", rotor.Id),
                Number("speed", state.ShaftSpeedRevolutionsPerMinute!, Unit.RevolutionPerMinute),
                Number("maximum", highest!, Unit.RevolutionPerMinute)
            );
        }
    }

    // A turbojet that turns faster pushes harder and burns more; a sheet that says otherwise has two rows mixed up.
    private static IEnumerable<Finding> StateOrder(string engineId, ValueList<ThrottleState> states)
    {
        ThrottleState[] bySpeed =
        [
            .. states
                .Where(s => s.ShaftSpeedRevolutionsPerMinute is not null)
                .OrderBy(s => s.ShaftSpeedRevolutionsPerMinute!.Value),
        ];
        return bySpeed
            .Zip(bySpeed.Skip(1))
            .Where(pair =>
                pair.First.ShaftSpeedRevolutionsPerMinute!.Value < pair.Second.ShaftSpeedRevolutionsPerMinute!.Value
            )
            .Where(pair =>
                IsAbove(pair.First.ThrustNewtons, pair.Second.ThrustNewtons)
                || IsAbove(pair.First.FuelFlowKilogramsPerSecond, pair.Second.FuelFlowKilogramsPerSecond)
            )
            .Select(pair =>
                Act(
                    "plan.state-order",
                    engineId,
                    Text("slower", pair.First.Name ?? pair.First.Id),
                    Text("faster", pair.Second.Name ?? pair.Second.Id)
                )
            );
    }

    private static Finding Pair(string code, string engineId, Rotor rotor, Stated value, Stated limit) =>
        Act(
            code,
            engineId,
            Text("rotor", rotor.Id),
            Number("value", value, Unit.Metre),
            Number("limit", limit, Unit.Metre)
        );

    private static bool IsAbove(Stated? value, Stated? limit) =>
        value is not null && limit is not null && value.Value > limit.Value;
}
