namespace ShowSafety.Core.Citations;

/// <summary>Ids of the sources in <see cref="DebrisCitations"/>, so that none can be misspelt.</summary>
internal static class DebrisSources
{
    public const string AirworthinessModel = "ac-20-128a";
    public const string AnglesTooNarrow = "dot-faa-ar-99-11";
    public const string BurstMechanics = "disc-burst-mechanics";
    public const string ThreePieces = "hagg-sankey-1974";
    public const string MeanShadow = "cauchy-mean-shadow";
    public const string QuadraticDrag = "quadratic-drag";
    public const string BestRange = "nasa-cr-134906";
    public const string DragValues = "hoerner-drag";
    public const string StandardAir = "iso-2533-1975";
    public const string WindProfile = "wind-seventh-root";
    public const string AbleToInjure = "14-cfr-417-appendix-c";
    public const string SevereInjury = "14-cfr-107-130";
    public const string ExplosiveSafety = "dod-6055-09";
    public const string FragmentLength = "ddesb-tp-12";
    public const string SkinSperrazza = "sperrazza-kokinakis-1968";
    public const string SkinLewis = "lewis-csl-tr-78004";
    public const string SkinMeasured = "dimaio-1982";
    public const string Blunt = "sturdivan-blunt-criterion";
    public const string Eye = "j-trauma-2005-eye";
    public const string GuardTest = "ifa-project-6054";
    public const string GuardMaterials = "mewes-trapp-2000";
    public const string GuardClasses = "iso-23125-annex-a";
    public const string SteelPlate = "bc-top-9a-1974";
    public const string RechtIpson = "recht-ipson-1963";
    public const string Densities = "rotor-material-densities";
    public const string ChoiceTrip = "choice-trip-speed";
    public const string ChoiceBounding = "choice-bounding-rotor";
    public const string ChoiceDragLow = "choice-drag-low";
    public const string ChoiceScreen = "choice-screen-evidence";
}
