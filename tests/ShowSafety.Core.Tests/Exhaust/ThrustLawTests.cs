using CsCheck;
using ShowSafety.Core.Exhaust;

namespace ShowSafety.Core.Tests.Exhaust;

public sealed class ThrustLawTests
{
    [Fact]
    public void SpeedConstant_MoreThrust_ReachesFarther() =>
        Gen.Select(Gen.Double[1, 3000], Gen.Double[1.01, 3])
            .Sample(
                (thrust, factor) =>
                    ThrustLaw.SpeedConstant(7, thrust * factor, 1.2) > ThrustLaw.SpeedConstant(7, thrust, 1.2)
            );

    [Fact]
    public void RiseConstant_MoreThrustAtFixedHeat_ReachesLess() =>
        Gen.Select(Gen.Double[1, 3000], Gen.Double[1.01, 3], Gen.Double[1e3, 1e6])
            .Sample(
                (thrust, factor, heat) =>
                    ThrustLaw.RiseConstant(5.6, heat, thrust * factor, 1.2)
                    < ThrustLaw.RiseConstant(5.6, heat, thrust, 1.2)
            );

    [Fact]
    public void RiseConstant_MoreHeat_ReachesFartherInProportion() =>
        Gen.Select(Gen.Double[1, 3000], Gen.Double[1e3, 1e6])
            .Sample(
                (thrust, heat) =>
                    Math.Abs(
                        (
                            ThrustLaw.RiseConstant(5.6, 2 * heat, thrust, 1.2)
                            / ThrustLaw.RiseConstant(5.6, heat, thrust, 1.2)
                        ) - 2
                    ) < 1e-12
            );

    // The far field from thrust alone equals decay with the momentum diameter (exact consequence of both).
    [Fact]
    public void SpeedConstant_SameNozzle_EqualsTheDecayLaw()
    {
        double density = 0.39;
        double speed = 400;
        double diameter = 0.0537;
        double thrust = density * speed * speed * Math.PI * diameter * diameter / 4;
        double decay = JetConstants.DecayConstant(7);

        double byDecay = decay * RoundJet.MomentumDiameter(diameter, density / 1.2) * speed;

        Assert.Equal(byDecay, ThrustLaw.SpeedConstant(7, thrust, 1.2), 1e-9 * byDecay);
    }

    // ISO 2533 standard atmosphere at sea level: 1.225 kg/m³ (memory).
    [Fact]
    public void AirDensity_StandardAtmosphere_IsAsPrinted() =>
        Assert.Equal(1.225, ThrustLaw.AirDensity(15, 101.325), 0.0005);
}
