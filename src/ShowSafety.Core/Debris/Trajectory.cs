namespace ShowSafety.Core.Debris;

/// <summary>Where, when and how fast a piece comes down.</summary>
/// <param name="DistanceMetres">Horizontal distance from the start in m.</param>
/// <param name="ApexMetres">Greatest height above the ground in m.</param>
/// <param name="Seconds">Time of flight in s.</param>
/// <param name="ImpactMetresPerSecond">Speed over the ground at landing in m/s.</param>
public readonly record struct Landing(
    double DistanceMetres,
    double ApexMetres,
    double Seconds,
    double ImpactMetresPerSecond
);

/// <summary>
/// A piece in flight with gravity, quadratic drag against the moving air and a wind along its path: dv/dt = −g −
/// k|v − w|(v − w). Classical fourth-order Runge-Kutta; the step follows the time in which drag or gravity changes
/// the speed, so a fast start and a slow fall take as many steps each.
/// </summary>
public sealed record Trajectory
{
    /// <summary>Step as a share of the time in which the speed changes by itself: 0.2 keeps five figures.</summary>
    public const double DefaultStepShare = 0.2;

    private const int MostSteps = 200_000;

    /// <summary>Launch speed in m/s, above 0.</summary>
    public required double StartMetresPerSecond { get; init; }

    /// <summary>k = ρ C_d A/(2m) in 1/m, 0 or more.</summary>
    public required double DragPerMetre { get; init; }

    /// <summary>Launch height above the ground in m, 0 or more.</summary>
    public double HeightMetres { get; init; }

    /// <summary>Wind along the flight at 2 m height in m/s; it grows with height (<see cref="WindProfile"/>).</summary>
    public double WindMetresPerSecond { get; init; }

    /// <summary>Acceleration of free fall in m/s², above 0.</summary>
    public double Gravity { get; init; } = VerticalShot.StandardGravity;

    /// <summary>Step as a share of the time in which the speed changes by itself, above 0 to 1.</summary>
    public double StepShare { get; init; } = DefaultStepShare;

    /// <summary>Flies the piece until it reaches the ground.</summary>
    /// <param name="elevationDegrees">Launch angle above level in degrees, −90 to 90.</param>
    public Landing Land(double elevationDegrees)
    {
        (double sine, double cosine) = Math.SinCos(Measures.Heading.ToRadians(elevationDegrees));
        var state = new FlightState(0, HeightMetres, StartMetresPerSecond * cosine, StartMetresPerSecond * sine);
        double time = 0;
        double apex = HeightMetres;
        for (int i = 0; i < MostSteps; i++)
        {
            double step = Step(state);
            FlightState next = Advance(state, step);
            if (next.Y <= 0)
            {
                double last = LastStep(state, step);
                FlightState end = Advance(state, last);
                return new(end.X, apex, time + last, end.Speed);
            }

            apex = Math.Max(apex, Top(state, next, step));
            (state, time) = (next, time + step);
        }

        throw new InvalidOperationException("The flight does not end: drag and gravity leave it no ground.");
    }

    /// <summary>The state after <paramref name="seconds"/> of flight in steps of equal size, wherever the ground is.</summary>
    /// <param name="elevationDegrees">Launch angle above level in degrees.</param>
    /// <param name="seconds">Time in s, above 0.</param>
    /// <param name="steps">Number of equal steps, 1 or more.</param>
    public FlightState After(double elevationDegrees, double seconds, int steps)
    {
        (double sine, double cosine) = Math.SinCos(Measures.Heading.ToRadians(elevationDegrees));
        var state = new FlightState(0, HeightMetres, StartMetresPerSecond * cosine, StartMetresPerSecond * sine);
        for (int i = 0; i < steps; i++)
        {
            state = Advance(state, seconds / steps);
        }

        return state;
    }

    private double Step(FlightState state)
    {
        double terminal = DragPerMetre > 0 ? Math.Sqrt(Gravity / DragPerMetre) : StartMetresPerSecond;
        // At the top of a steep flight the speed is nearly nothing and says nothing about the time that matters.
        double typical = state.Speed + Math.Min(terminal, StartMetresPerSecond);
        return StepShare / ((DragPerMetre * (state.Speed + Math.Abs(WindMetresPerSecond))) + (Gravity / typical));
    }

    private FlightState Advance(FlightState state, double step)
    {
        FlightState first = Slope(state);
        FlightState second = Slope(state.Plus(first, step / 2));
        FlightState third = Slope(state.Plus(second, step / 2));
        FlightState fourth = Slope(state.Plus(third, step));
        return state.Plus(first, step / 6).Plus(second, step / 3).Plus(third, step / 3).Plus(fourth, step / 6);
    }

    private FlightState Slope(FlightState state)
    {
        double wind = WindMetresPerSecond == 0 ? 0 : WindProfile.At(WindMetresPerSecond, state.Y);
        double along = state.SpeedX - wind;
        double drag = DragPerMetre * Math.Sqrt((along * along) + (state.SpeedY * state.SpeedY));
        return new(state.SpeedX, state.SpeedY, -drag * along, -Gravity - (drag * state.SpeedY));
    }

    // Newton's method on the height, kept inside the step: the height falls steadily towards the ground.
    private double LastStep(FlightState state, double step)
    {
        double part = step;
        for (int i = 0; i < 8; i++)
        {
            FlightState end = Advance(state, part);
            if (Math.Abs(end.Y) < 1e-9 || end.SpeedY >= 0)
            {
                break;
            }

            part = Math.Clamp(part - (end.Y / end.SpeedY), 0, step);
        }

        return part;
    }

    private double Top(FlightState state, FlightState next, double step) =>
        state.SpeedY > 0 && next.SpeedY < 0
            ? Advance(state, step * state.SpeedY / (state.SpeedY - next.SpeedY)).Y
            : next.Y;
}

/// <summary>Place and velocity in the vertical plane of a flight, or their changes per second.</summary>
/// <param name="X">Distance along the ground in m.</param>
/// <param name="Y">Height above the ground in m.</param>
/// <param name="SpeedX">Speed along the ground in m/s.</param>
/// <param name="SpeedY">Speed upwards in m/s.</param>
public readonly record struct FlightState(double X, double Y, double SpeedX, double SpeedY)
{
    /// <summary>Speed over the ground in m/s.</summary>
    public double Speed => Math.Sqrt((SpeedX * SpeedX) + (SpeedY * SpeedY));

    /// <summary>This state changed at a rate for a time.</summary>
    /// <param name="rate">Changes per second.</param>
    /// <param name="seconds">Time in s.</param>
    public FlightState Plus(FlightState rate, double seconds) =>
        new(
            X + (rate.X * seconds),
            Y + (rate.Y * seconds),
            SpeedX + (rate.SpeedX * seconds),
            SpeedY + (rate.SpeedY * seconds)
        );
}
