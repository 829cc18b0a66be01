namespace ShowSafety.Core.Citations;

/// <summary>Ids of the entries of <see cref="SiteCitations"/>, so that rooms and list can't drift apart.</summary>
internal static class SiteSources
{
    public const string GatePermissions = "gate-permissions";
    public const string GateEvidence = "gate-evidence-rated-runs";
    public const string GateRestraint = "gate-restraint-factor";
    public const string GateStopping = "gate-stopping-two-seconds";
    public const string GateNeverIndoors = "gate-never-indoors";
    public const string GateTentFabric = "gate-tent-fabric";
    public const string GateTentWind = "gate-en-13782";
    public const string GateMomentum = "gate-momentum-theorem";
    public const string GateRiskBands = "gate-risk-bands";
    public const string SuppliesGasSeparation = "supplies-gas-separation";
    public const string SuppliesGasOpenAir = "supplies-gas-open-air";
    public const string SuppliesGasExtinguishers = "supplies-gas-extinguishers";
    public const string SuppliesFuelSeparation = "supplies-hsg51";
    public const string SuppliesReach = "supplies-iso-13857-longest-reach";
    public const string SuppliesLowerLimit = "supplies-iec-60079-20-1";
    public const string SuppliesPetrol = "supplies-petrol-england";
    public const string SuppliesExtinguisher = "supplies-extinguisher-co2";
    public const string SuppliesExtinguisherReach = "supplies-extinguisher-reach";
    public const string SuppliesOrdinaryExtinguisher = "supplies-ordinary-extinguisher";
    public const string SuppliesPowder = "supplies-powder-ingested";
    public const string SuppliesClassA = "supplies-class-a-per-area";
    public const string SuppliesRating = "supplies-en-3-7";
    public const string SuppliesSpill = "supplies-spill-depth";
    public const string SuppliesPoolFire = "supplies-nureg-1805-pool";
    public const string SuppliesPointSource = "supplies-nureg-1805-point-source";
    public const string SuppliesRadiation = "supplies-api-521";
    public const string CrowdArea = "crowd-half-square-metre";
    public const string CrowdUnstable = "crowd-unstable-density";
    public const string CrowdOpenAirFlow = "crowd-open-air-flow";
    public const string CrowdEnclosedFlow = "crowd-enclosed-flow";
    public const string CrowdEnclosedTime = "crowd-enclosed-time";
    public const string CrowdExitWidths = "crowd-adb-exit-widths";
    public const string CrowdPanels = "crowd-barrier-panels";
    public const string CrowdBarriers = "crowd-barriers-risk-assessed";
    public const string CrowdReach = "crowd-iso-13857-table-2";
    public const string CrowdAssumedSize = "crowd-assumed-engine-size";
    public const string CrowdPracticeTen = "crowd-practice-ten-metres";
    public const string CrowdPracticeNine = "crowd-practice-nine-metres";
    public const string CrowdPracticeFeet = "crowd-practice-twenty-five-feet";
    public const string CrowdWheelchair = "crowd-wheelchair-space";
    public const string CrowdAlarm = "crowd-iso-7731";
    public const string CrowdEscapeSigns = "crowd-en-1838-signs";
    public const string CrowdSigns = "crowd-directive-92-58";
}
