import type { Hatch } from './hatch';

const hatchOfRow: Readonly<Record<string, Hatch>> = {
  directFlight: 'debris',
  landingArea: 'debris',
  jetSpeedPublic: 'jet',
  jetSpeedCrew: 'jet',
  jetHeatPublic: 'jet',
  jetHeatCrew: 'jet',
  jetHeatMaterials: 'jet',
  startFlame: 'jet',
  intake: 'near',
  hotAndSpinningParts: 'near',
  publishedPractice: 'near',
  hearingZone: 'sound',
  audienceLimit: 'sound',
  soundCeiling: 'sound',
  atTheEar: 'sound',
  indoorAir: 'air',
  fuelAndGas: 'fuel',
  spillFire: 'fuel',
};

/** The hatch of a zone's row group; a row this page does not know is hatched like a keep-out. */
export function zoneHatch(row: string): Hatch {
  return hatchOfRow[row] ?? 'keepOut';
}
