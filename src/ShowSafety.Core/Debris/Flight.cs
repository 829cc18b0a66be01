namespace ShowSafety.Core.Debris;

/// <summary>The two flights looked at for one piece: level and straight, and the lob that lands farthest.</summary>
internal readonly record struct Flight(double StartJoules, double FlatFireMetres, Landing Landing, double LandingJoules)
{
    public static Flight Of(double mass, double speed, double dragPerMetre, double height, double wind)
    {
        double start = FlatFire.Energy(mass, speed);
        Landing farthest = FarthestLanding
            .Of(
                new Trajectory
                {
                    StartMetresPerSecond = speed,
                    DragPerMetre = dragPerMetre,
                    HeightMetres = height,
                    WindMetresPerSecond = wind,
                }
            )
            .Landing;
        return new(
            start,
            FlatFire.DistanceTo(start, dragPerMetre, InjuryEnergy.AbleToInjureJoules),
            farthest,
            FlatFire.Energy(mass, farthest.ImpactMetresPerSecond)
        );
    }
}
