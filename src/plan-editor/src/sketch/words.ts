import type { ElementKind } from './elements';

/** What an element without a name is called on the plan. */
export const kindWords: Readonly<Record<ElementKind, string>> = {
  groundPatch: 'Ground',
  enclosure: 'Enclosure',
  structure: 'Structure',
  stand: 'Stand',
  burnable: 'Burnable',
  peopleArea: 'People',
  debrisScreen: 'Debris screen',
  exit: 'Way out',
  fuel: 'Fuel store',
  gas: 'Gas',
  battery: 'Battery',
  extinguisher: 'Extinguisher',
  people: 'People',
  wheelchair: 'Wheelchair place',
  steward: 'Steward',
};

export const enclosureWords: Readonly<Record<string, string>> = {
  tent: 'Tent',
  hall: 'Hall',
};

export const crowdLineWords = 'Crowd line';
export const suggestedWords = 'suggested';
export const stopWords = 'stop';
export const askedWords = 'asked here';
export const uncheckedWords = 'unchecked';
export const keepOutWords = 'Keep-out, public';
export const hearingWords = 'Hearing zone';

/** A name short enough for the plan: up to its first comma. */
export function shortNameOf({ id, name = id }: { readonly id: string; readonly name?: string }): string {
  return name.split(',')[0] ?? name;
}

/** A place in words, to the decimetre. */
export function placeInWords([x, y]: readonly [number, number]): string {
  return `${decimetres(x)}, ${decimetres(y)} m`;
}

/** Says of a stretch of the crowd line what is wrong with it. */
export function tooNearInWords(zone: string | undefined, metres: number): string {
  // Rounded up: a decimetre short would leave the line inside.
  const where = zone === undefined ? 'a zone that keeps people out' : `“${zone}”`;
  return `inside ${where},\n${(Math.ceil(metres * 10 - 1e-6) / 10).toFixed(1)} m too near`;
}

function decimetres(metres: number): string {
  // No "-0.0".
  return (Math.round(metres * 10) / 10 + 0).toFixed(1);
}
