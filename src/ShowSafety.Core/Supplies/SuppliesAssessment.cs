namespace ShowSafety.Core.Supplies;

/// <summary>Fuel, gas and extinguishers: separations, quantities, the fire of the largest spill.</summary>
public sealed record SuppliesAssessment : RoomAssessment;
