using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Tests.Sound.Patches;

/// <summary>A patch of ground and a place in it, drawn at random: thin and thick, narrow and wide, near and far.</summary>
internal sealed record PatchCase(Patch Patch, PlanPoint Place)
{
    public static Gen<PatchCase> Any { get; } =
        from seed in Point(20)
        from heading in Gen.Double[0, 360]
        from half in Gen.Int[0, 1]
        from begins in Gen.Double[0, 179]
        from wide in Gen.Double[0.01, 89]
        from isNarrow in Gen.Bool
        from near in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.3, 50])
        from long_ in Gen.OneOf(Gen.Double[0, 0.01], Gen.Double[0.01, 100])
        from share in Gen.OneOf(Gen.Double[0, 1], Gen.Const(0.0), Gen.Const(1.0))
        from reach in Gen.OneOf(Gen.Double[0, 1], Gen.Const(0.0), Gen.Const(1.0))
        let width = Math.Min(isNarrow ? Math.Min(wide, 1) : wide, 180 - begins)
        let from_ = (half * 180) + begins
        let sector = new Sector(seed, heading, from_, from_ + width)
        select new PatchCase(
            new Patch(sector, near, near + long_),
            seed.Along(heading + from_ + (share * width), near + (reach * long_))
        );

    public static Gen<PlanPoint> Point(double within) =>
        Gen.Select(Gen.Double[-within, within], Gen.Double[-within, within], (x, y) => new PlanPoint(x, y));
}
