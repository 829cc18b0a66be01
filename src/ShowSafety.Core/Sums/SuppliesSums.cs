using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Supplies;
using static ShowSafety.Core.Sums.SumLines;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of fuel, gas and extinguishers.</summary>
internal static class SuppliesSums
{
    private const string FuelKey = "fuel";

    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "spill-area",
            "Area of a spill on a hard level floor",
            [Zero("litres", "amount spilt", Unit.Litre)],
            [SiteSources.SuppliesSpill],
            SpillArea
        ),
        new(
            "pool-fire",
            "Heat release and flame height of a pool fire",
            [
                Zero("areaSquareMetres", "area of the pool", Unit.SquareMetre),
                new(FuelKey, "fuel", Unit.One) { Words = ["kerosene", "jet-fuel", "petrol"] },
            ],
            [SiteSources.SuppliesPoolFire],
            Pool
        ),
        new(
            "fire-radiation-distance",
            "Distance at which the radiation of a fire has fallen to a value",
            [
                Zero("heatReleaseKilowatts", "heat release rate", Unit.Kilowatt),
                new("radiantFraction", "share of the heat that is radiated", Unit.One)
                {
                    Min = 0,
                    Max = 1,
                    Default = PoolFire.PlanningRadiantFraction,
                },
                new("fluxKilowattsPerSquareMetre", "radiation", Unit.KilowattPerSquareMetre)
                {
                    Min = 0.01,
                    Max = 100,
                    Default = PoolFire.ContinuousExposureKilowattsPerSquareMetre,
                },
            ],
            [SiteSources.SuppliesPointSource, SiteSources.SuppliesRadiation],
            Radiation
        ),
        new(
            "extinguisher-rating",
            "What a class B number means",
            [Zero("classB", "number before the B", Unit.One)],
            [SiteSources.SuppliesRating],
            Rating
        ),
        new(
            "extinguisher-class-a",
            "Class A rating a floor area asks for",
            [Zero("areaSquareMetres", "floor area", Unit.SquareMetre)],
            [SiteSources.SuppliesClassA],
            ClassA
        ),
        new(
            "gas-separation",
            "Distance of gas cylinders, and powder extinguishers beside them",
            [Zero("kilograms", "mass of gas in all cylinders", Unit.Kilogram)],
            [SiteSources.SuppliesGasSeparation, SiteSources.SuppliesGasExtinguishers],
            GasSeparation
        ),
        new(
            "fuel-separation",
            "Distance of fuel containers from ignition sources",
            [Zero("litres", "amount of fuel", Unit.Litre)],
            [SiteSources.SuppliesFuelSeparation],
            FuelSeparation
        ),
        new(
            "gas-mixture",
            "Volume of air and gas that can be lit after a leak",
            [
                Zero("kilograms", "mass of gas", Unit.Kilogram),
                new("kilogramsPerMole", "molar mass in kg/mol", Unit.One)
                {
                    Min = 0.002,
                    Max = 1,
                    Default = LiquefiedGas.PropaneKilogramsPerMole,
                },
                new("temperatureCelsius", "temperature", Unit.Celsius)
                {
                    Min = -100,
                    Max = 200,
                    Default = 20,
                },
                new("pressureKilopascals", "pressure", Unit.Kilopascal)
                {
                    Min = 10,
                    Max = 200,
                    Default = 101.325,
                },
                new("lowerLimit", "lower flammable limit, share of volume", Unit.One)
                {
                    Min = 0.001,
                    Max = 1,
                    Default = LiquefiedGas.PropaneLowerLimit,
                },
            ],
            [SiteSources.SuppliesLowerLimit],
            GasMixture
        ),
    ];

    private static SumParameter Zero(string key, string meaning, Unit unit) => new(key, meaning, unit) { Min = 0 };

    private static SumAnswer SpillArea(SumInput input)
    {
        double litres = input.Number("litres");
        double area = Spill.AreaSquareMetres(litres);
        return new(
            [new("areaSquareMetres", area, Unit.SquareMetre, "area of the spill")],
            [Line($"A = 1.4 m²/L up to 95 L, then 0.36 m²/L: {litres} L cover {area:G6} m²")]
        );
    }

    private static SumAnswer Pool(SumInput input)
    {
        double area = input.Number("areaSquareMetres");
        PoolFuel fuel = input.Word(FuelKey) switch
        {
            "petrol" => PoolFuel.Petrol,
            "jet-fuel" => PoolFuel.JetFuel,
            _ => PoolFuel.Kerosene,
        };
        double diameter = PoolFire.DiameterMetres(area);
        double heat = PoolFire.HeatReleaseKilowatts(fuel, area);
        double height = PoolFire.FlameHeightMetres(heat, diameter);
        return new(
            [
                new("heatReleaseKilowatts", heat, Unit.Kilowatt, "heat release rate"),
                new("diameterMetres", diameter, Unit.Metre, "diameter of the round pool of the same area"),
                new("flameHeightMetres", height, Unit.Metre, "mean height of the flame"),
            ],
            [
                Line($"D = √(4 A/π) = {diameter:G6} m"),
                Line($"Q = ṁ″ ΔH (1 − e^(−kβ D)) A = {Heat(fuel)} = {heat:G6} kW"),
                Line($"H = 0.235 Q^0.4 − 1.02 D = {height:G6} m"),
            ]
        );

        string Heat(PoolFuel f) =>
            Line(
                $"{f.BurningRateKilogramsPerSquareMetreSecond} · {f.HeatOfCombustionMegajoulesPerKilogram * 1000} · (1 − e^(−{f.AbsorptionPerMetre} · {diameter:G6})) · {area}"
            );
    }

    private static SumAnswer Radiation(SumInput input)
    {
        double heat = input.Number("heatReleaseKilowatts");
        double share = input.Number("radiantFraction");
        double flux = input.Number("fluxKilowattsPerSquareMetre");
        double distance = PoolFire.RadiationDistanceMetres(heat, share, flux);
        return new(
            [new("distanceMetres", distance, Unit.Metre, "distance from the middle of the fire")],
            [Line($"R = √(χ Q/(4π q″)) = √({share} · {heat}/(4π · {flux})) = {distance:G6} m")]
        );
    }

    private static SumAnswer Rating(SumInput input)
    {
        double number = input.Number("classB");
        double heptane = FireRating.HeptaneLitres(number);
        double tray = FireRating.TraySquareMetres(number);
        return new(
            [
                new("heptaneLitres", heptane, Unit.Litre, "heptane in the test fire"),
                new("traySquareMetres", tray, Unit.SquareMetre, "area of the test tray"),
            ],
            [
                Line($"two thirds of {number} L = {heptane:G6} L of heptane"),
                Line($"π/100 · {number} = {tray:G6} m² of tray"),
            ]
        );
    }

    private static SumAnswer ClassA(SumInput input)
    {
        double area = input.Number("areaSquareMetres");
        double needed = area * FireRating.ClassAPerSquareMetre;
        return new(
            [
                new("classA", needed, Unit.One, "class A rating"),
                new("classAPerSquareMetre", FireRating.ClassAPerSquareMetre, Unit.One, "class A rating for each m²"),
            ],
            [Line($"13 · {area}/200 = {needed:G6}")]
        );
    }

    private static SumAnswer GasSeparation(SumInput input)
    {
        double kilograms = input.Number("kilograms");
        double distance = LiquefiedGas.SeparationMetres(kilograms);
        int powder = LiquefiedGas.PowderExtinguishers(kilograms);
        return new(
            [
                new("distanceMetres", distance, Unit.Metre, "distance from buildings, tents, boundaries, ignition"),
                new("powderExtinguishers", powder, Unit.One, "powder extinguishers of 9 kg"),
            ],
            [
                Line($"up to 400 kg 1 m, above 3 m: {kilograms} kg keep {distance} m"),
                Line($"under 400 kg 1, from there 2, and 1 for each started 10,000 kg above 5,000 kg: {powder}"),
            ]
        );
    }

    private static SumAnswer FuelSeparation(SumInput input)
    {
        double litres = input.Number("litres");
        double distance = LiquidFuel.SeparationMetres(litres);
        return new(
            [new("distanceMetres", distance, Unit.Metre, "distance from ignition sources")],
            [Line($"up to 1,000 L 2 m, above 4 m: {litres} L keep {distance} m")]
        );
    }

    private static SumAnswer GasMixture(SumInput input)
    {
        double kilograms = input.Number("kilograms");
        double molar = input.Number("kilogramsPerMole");
        double celsius = input.Number("temperatureCelsius");
        double kilopascals = input.Number("pressureKilopascals");
        double limit = input.Number("lowerLimit");
        double gas = LiquefiedGas.GasCubicMetres(kilograms, molar, celsius, kilopascals);
        double mixture = LiquefiedGas.MixtureCubicMetres(gas, limit);
        return new(
            [
                new("mixtureCubicMetres", mixture, Unit.CubicMetre, "volume that can be lit"),
                new("gasCubicMetres", gas, Unit.CubicMetre, "volume of the gas alone"),
            ],
            [
                Line($"V = m R T/(M p) = {kilograms} kg at {celsius} °C and {kilopascals} kPa: {gas:G6} m³"),
                Line($"V/limit = {gas:G6}/{limit} = {mixture:G6} m³"),
            ]
        );
    }
}
