using CsCheck;
using ShowSafety.Core.Debris;

namespace ShowSafety.Core.Tests.Debris;

/// <summary>The integrator against closed forms of mechanics, and properties of flights.</summary>
public sealed class TrajectoryTests
{
    private static readonly Gen<Trajectory> Flights = Gen.Select(
        Gen.Double[10, 450],
        Gen.Double[0.0005, 0.05],
        Gen.Double[0, 3],
        (speed, k, height) =>
            new Trajectory
            {
                StartMetresPerSecond = speed,
                DragPerMetre = k,
                HeightMetres = height,
            }
    );

    [Fact]
    public void After_HalvedSteps_ConvergesWithOrderFour()
    {
        var flight = new Trajectory
        {
            StartMetresPerSecond = 220,
            DragPerMetre = 0.011,
            HeightMetres = 1,
            WindMetresPerSecond = 0,
        };
        FlightState exact = flight.After(35, 4, 20_000);
        double coarse = Error(flight.After(35, 4, 80), exact);
        double fine = Error(flight.After(35, 4, 160), exact);

        Assert.InRange(Math.Log2(coarse / fine), 3.7, 4.3);
    }

    [Fact]
    public void After_StraightUp_MatchesTheClosedForm()
    {
        // v = v_t tan(atan(v₀/v_t) − g t/v_t) on the way up, mechanics.
        const double k = 0.0110738;
        double terminal = Math.Sqrt(VerticalShot.StandardGravity / k);
        double expected =
            terminal * Math.Tan(Math.Atan(220 / terminal) - (VerticalShot.StandardGravity * 2 / terminal));
        var flight = new Trajectory { StartMetresPerSecond = 220, DragPerMetre = k };

        Assert.Equal(expected, flight.After(90, 2, 2000).SpeedY, 6);
    }

    [Fact]
    public void Land_StraightUp_MatchesTheClosedForm() =>
        Gen.Select(Gen.Double[20, 400], Gen.Double[0.001, 0.05])
            .Sample(
                (speed, k) =>
                {
                    VerticalShot closed = VerticalShot.Of(speed, k);
                    Landing flown = new Trajectory { StartMetresPerSecond = speed, DragPerMetre = k }.Land(90);
                    return Near(flown.ApexMetres, closed.ApexMetres)
                        && Near(flown.Seconds, closed.UpSeconds + closed.DownSeconds)
                        && Near(flown.ImpactMetresPerSecond, closed.ImpactMetresPerSecond);
                },
                iter: 50
            );

    [Fact]
    public void Land_NoDrag_MatchesTheParabola() =>
        Gen.Select(Gen.Double[5, 400], Gen.Double[0, 10], Gen.Double[5, 85])
            .Sample(
                (speed, height, elevation) =>
                {
                    double g = VerticalShot.StandardGravity;
                    (double sine, double cosine) = Math.SinCos(elevation * Math.PI / 180);
                    double up = speed * sine;
                    double time = (up + Math.Sqrt((up * up) + (2 * g * height))) / g;
                    Landing flown = new Trajectory
                    {
                        StartMetresPerSecond = speed,
                        DragPerMetre = 0,
                        HeightMetres = height,
                    }.Land(elevation);
                    return Near(flown.DistanceMetres, speed * cosine * time) && Near(flown.Seconds, time);
                },
                iter: 50
            );

    [Fact]
    public void Of_NoDragFromTheGround_FliesFarthestAtFortyFive()
    {
        // R = v₀²/g at 45 degrees, mechanics.
        (double elevation, Landing landing) = FarthestLanding.Of(
            new Trajectory { StartMetresPerSecond = 100, DragPerMetre = 0 },
            30
        );

        Assert.Equal(45, elevation, 0.2);
        Assert.Equal(10_000 / VerticalShot.StandardGravity, landing.DistanceMetres, 0.01);
    }

    [Fact]
    public void Of_TenthOfTheStep_StaysWithinOneInTenThousand() =>
        Flights.Sample(
            flight =>
            {
                double coarse = FarthestLanding.Of(flight).Landing.DistanceMetres;
                double fine = FarthestLanding.Of(flight with { StepShare = 0.02 }, 25).Landing.DistanceMetres;
                return Math.Abs(coarse - fine) <= 1e-4 * fine;
            },
            iter: 40
        );

    [Fact]
    public void Of_AnyFlight_IsNotBeatenByAnyAngle() =>
        Gen.Select(Flights, Gen.Double[0, 90])
            .Sample(
                (flight, elevation) =>
                    flight.Land(elevation).DistanceMetres <= FarthestLanding.Of(flight).Landing.DistanceMetres * 1.0001,
                iter: 60
            );

    [Fact]
    public void Land_LevelAndFast_FollowsFlatFireWhileGravityIsSmall()
    {
        var flight = new Trajectory
        {
            StartMetresPerSecond = 400,
            DragPerMetre = 0.01,
            Gravity = 1e-6,
            HeightMetres = 10,
        };
        FlightState after = flight.After(0, 0.3, 500);

        Assert.Equal(FlatFire.SpeedAt(400, 0.01, after.X), after.SpeedX, 6);
        Assert.Equal(0.3, FlatFire.TimeTo(400, 0.01, after.X), 9);
    }

    [Fact]
    public void After_StillAir_NeverGainsEnergy() =>
        Gen.Select(Flights, Gen.Double[-20, 90], Gen.Double[0.01, 3])
            .Sample(
                (flight, elevation, seconds) =>
                {
                    FlightState early = flight.After(elevation, seconds, 200);
                    FlightState late = flight.After(elevation, seconds * 1.5, 300);
                    return Whole(late) <= Whole(early) * (1 + 1e-9) + 1e-6 && Whole(early) <= Start(flight) + 1e-6;
                },
                iter: 60
            );

    [Fact]
    public void Of_TailWind_CarriesFarther() =>
        Gen.Select(Flights, Gen.Double[1, 15])
            .Sample(
                (flight, wind) =>
                    FarthestLanding.Of(flight with { WindMetresPerSecond = wind }).Landing.DistanceMetres
                    > FarthestLanding.Of(flight).Landing.DistanceMetres,
                iter: 40
            );

    [Fact]
    public void SpeedAt_AnyDistance_NeverGrows() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[0, 0.1], Gen.Double[0, 500], Gen.Double[0, 500])
            .Sample(
                (speed, k, first, more) =>
                    FlatFire.SpeedAt(speed, k, first + more) <= FlatFire.SpeedAt(speed, k, first)
                    && FlatFire.SpeedAt(speed, k, first) <= speed
            );

    [Fact]
    public void DistanceTo_AnyLine_EndsAtThatEnergy() =>
        Gen.Select(Gen.Double[0.001, 1], Gen.Double[50, 500], Gen.Double[0.001, 0.05])
            .Sample(
                (mass, speed, k) =>
                {
                    double start = FlatFire.Energy(mass, speed);
                    double end = start / 7;
                    double there = FlatFire.SpeedAt(speed, k, FlatFire.DistanceTo(start, k, end));
                    return Near(FlatFire.Energy(mass, there), end);
                }
            );

    [Fact]
    public void TimeTo_WithoutDrag_IsDistanceOverSpeed() => Assert.Equal(0.5, FlatFire.TimeTo(100, 0, 50), 12);

    private static double Whole(FlightState state) =>
        (state.Speed * state.Speed / 2) + (VerticalShot.StandardGravity * state.Y);

    private static double Start(Trajectory flight) =>
        (flight.StartMetresPerSecond * flight.StartMetresPerSecond / 2)
        + (VerticalShot.StandardGravity * flight.HeightMetres);

    private static bool Near(double actual, double expected) =>
        Math.Abs(actual - expected) <= 1e-4 * Math.Abs(expected);

    private static double Error(FlightState state, FlightState exact) =>
        Math.Sqrt(Math.Pow(state.X - exact.X, 2) + Math.Pow(state.Y - exact.Y, 2));
}
