using BenchmarkDotNet.Attributes;
using ShowSafety.Core;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Layout;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Benchmarks;

/// <summary>How long a plan takes, whole and in the stages that cost most.</summary>
public class AssessorBenchmarks
{
    private Plan _plan = new();
    private SoundField _field = SoundField.Build(new Plan());
    private ValueList<Zone> _zones = [];

    [Params("field-with-neighbour", "closed-marquee", "open-sided-marquee", "sports-hall")]
    public string Template { get; set; } = "";

    [GlobalSetup]
    public void Setup()
    {
        byte[] file = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "site-templates", Template + ".json"));
        _plan = PlanReader.Read(file).Plan ?? throw new InvalidOperationException($"{Template} does not read.");
        _field = SoundField.Build(_plan);
        _zones = [.. Assessor.Assess(_plan).Zones];
    }

    [Benchmark(Baseline = true)]
    public Assessment Whole() => Assessor.Assess(_plan);

    [Benchmark]
    public Assessment WithoutCosts() => Assessor.WithoutCosts(_plan);

    [Benchmark]
    public ExposureAssessment Exposure() => ExposureAssessor.Assess(_plan, _field);

    [Benchmark]
    public DebrisAssessment Debris() => DebrisAssessor.Assess(_plan);

    [Benchmark]
    public LayoutAssessment Layout() => LayoutAssessor.Assess(_plan, _zones);

    [Benchmark]
    public string Hash() => PlanHash.Of(_plan);
}
