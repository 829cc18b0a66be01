using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure;

/// <summary>A task of a day, for ISO 9612:2009 strategy 1.</summary>
/// <param name="LevelDbA">L_Aeq of the task in dB(A).</param>
/// <param name="Hours">Duration of the task in hours, above zero.</param>
/// <param name="SamplingUncertaintyDb">u1a in dB: scatter of the samples.</param>
/// <param name="HalfRangeHours">u1b: half the range the duration may have, in hours.</param>
public readonly record struct DayTask(
    double LevelDbA,
    double Hours,
    double SamplingUncertaintyDb,
    double HalfRangeHours
)
{
    /// <summary>
    /// A task from L_Aeq samples: their energy mean, and u1a = √[ Σ(L_i − L̄)² / (I(I−1)) ] with the arithmetic mean; zero
    /// for a single sample, which says nothing about scatter.
    /// </summary>
    /// <param name="samplesDbA">Samples in dB(A), one at least.</param>
    /// <param name="hours">Duration in hours.</param>
    /// <param name="halfRangeHours">Half the range of the duration in hours.</param>
    public static DayTask FromSamples(IReadOnlyCollection<double> samplesDbA, double hours, double halfRangeHours)
    {
        int count = samplesDbA.Count;
        double mean = samplesDbA.Average();
        double squares = samplesDbA.Sum(level => (level - mean) * (level - mean));
        double sampling = count < 2 ? 0 : Math.Sqrt(squares / (count * (count - 1.0)));
        return new(Decibels.Mean(samplesDbA), hours, sampling, halfRangeHours);
    }
}

/// <summary>A daily level with its expanded uncertainty.</summary>
/// <param name="DailyDbA">L_EX,8h in dB(A).</param>
/// <param name="StandardUncertaintyDb">u in dB.</param>
/// <param name="ExpandedUncertaintyDb">U = 1.65 u in dB, one-sided 95 %.</param>
public readonly record struct DailyLevelUncertainty(
    double DailyDbA,
    double StandardUncertaintyDb,
    double ExpandedUncertaintyDb
);

/// <summary>
/// Uncertainty of L_EX,8h. <see cref="Measured"/> is ISO 9612:2009 Annex C for tasks measured one by one, whose
/// instrument and position errors are independent. <see cref="Predicted"/> is for levels predicted from one source by
/// one model: those errors are common to all tasks and add linearly, or splitting a task would shrink the result.
/// </summary>
public static class TaskUncertainty
{
    /// <summary>Coverage factor, one-sided 95 % (ISO 9612:2009 cl. C.1).</summary>
    public const double CoverageFactor = 1.65;

    /// <summary>Standard uncertainty of a class 1 sound level meter in dB (ISO 9612:2009 table C.5).</summary>
    public const double Class1MeterDb = 0.7;

    /// <summary>Standard uncertainty of a class 2 meter or a personal exposure meter in dB.</summary>
    public const double Class2MeterDb = 1.5;

    /// <summary>Standard uncertainty of the microphone's position in dB (ISO 9612:2009 cl. C.6).</summary>
    public const double PositionDb = 1.0;

    /// <summary>
    /// u² = Σ { c1a² (u1a² + u2² + u3²) + (c1b u1b)² } with c1a = (T_m/8 h) 10^(0.1(L_m − L_EX)) and
    /// c1b = 4.34 c1a/T_m.
    /// </summary>
    /// <param name="tasks">The tasks, one at least.</param>
    /// <param name="meterDb">u2 in dB.</param>
    public static DailyLevelUncertainty Measured(IReadOnlyCollection<DayTask> tasks, double meterDb)
    {
        double daily = Daily(tasks);
        double instrument = (meterDb * meterDb) + (PositionDb * PositionDb);
        double variance = tasks.Sum(task =>
        {
            double share = Share(task, daily);
            double sampling = task.SamplingUncertaintyDb;
            return (share * share * ((sampling * sampling) + instrument)) + DurationVariance(task, share);
        });
        return Result(daily, Math.Sqrt(variance));
    }

    /// <summary>
    /// u² = (Σ c1a u_common)² + Σ { (c1a u1a)² + (c1b u1b)² }: the common part adds linearly over tasks, and Σ c1a = 1.
    /// </summary>
    /// <param name="tasks">The tasks, one at least.</param>
    /// <param name="commonDb">Standard uncertainty common to all levels, in dB.</param>
    public static DailyLevelUncertainty Predicted(IReadOnlyCollection<DayTask> tasks, double commonDb)
    {
        double daily = Daily(tasks);
        double common = commonDb * tasks.Sum(task => Share(task, daily));
        double variance = tasks.Sum(task =>
        {
            double share = Share(task, daily);
            double sampling = share * task.SamplingUncertaintyDb;
            return (sampling * sampling) + DurationVariance(task, share);
        });
        return Result(daily, Math.Sqrt((common * common) + variance));
    }

    /// <summary>
    /// Combined form for job-based and full-day measurement, u² = (c1 u1)² + u2² + u3² (ISO 9612:2009 cl. C.3, C.4).
    /// </summary>
    /// <param name="samplingDb">c1 u1 in dB.</param>
    /// <param name="meterDb">u2 in dB.</param>
    /// <returns>U in dB.</returns>
    public static double WholeDayExpandedDb(double samplingDb, double meterDb) =>
        CoverageFactor * Math.Sqrt((samplingDb * samplingDb) + (meterDb * meterDb) + (PositionDb * PositionDb));

    private static double Daily(IReadOnlyCollection<DayTask> tasks) =>
        tasks.Count > 0
            ? ExposureLevel.DailyDbA(tasks.Select(t => new LevelTime(t.LevelDbA, t.Hours)))
            : throw new ArgumentException("At least one task is needed.", nameof(tasks));

    private static double Share(DayTask task, double dailyDbA) =>
        task.Hours / ExposureLevel.ReferenceHours * Decibels.ToEnergy(task.LevelDbA - dailyDbA);

    private static double DurationVariance(DayTask task, double share)
    {
        // 4.34 = 10 lg e: the slope of a level against the logarithm of its duration.
        double sensitivity = 10 * Math.Log10(Math.E) * share / task.Hours;
        return sensitivity * sensitivity * task.HalfRangeHours * task.HalfRangeHours;
    }

    private static DailyLevelUncertainty Result(double daily, double standard) =>
        new(daily, standard, CoverageFactor * standard);
}
