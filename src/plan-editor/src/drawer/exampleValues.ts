/** A value of the plan that somebody invented for an example, in words. */
export interface ExampleValue {
  /** Name of the element it belongs to, or the part of the plan. */
  readonly of: string;
  readonly words: string;
}

// The unit is the end of a member's name. Longer ends first.
const units: readonly (readonly [end: string, unit: string])[] = [
  ['MegajoulesPerKilogram', 'MJ/kg'],
  ['CubicMetresPerSecond', 'm³/s'],
  ['KilogramsPerSquareMetre', 'kg/m²'],
  ['RevolutionsPerMinute', 'rpm'],
  ['KilogramsPerSecond', 'kg/s'],
  ['GramsPerKilogram', 'g/kg'],
  ['MetresPerSecond', 'm/s'],
  ['WattsPerKelvin', 'W/K'],
  ['NewtonMetres', 'N·m'],
  ['CubicMetres', 'm³'],
  ['SquareMetres', 'm²'],
  ['Kilopascals', 'kPa'],
  ['Kilograms', 'kg'],
  ['Celsius', '°C'],
  ['Percent', '%'],
  ['Degrees', '°'],
  ['Seconds', 's'],
  ['Newtons', 'N'],
  ['Joules', 'J'],
  ['Metres', 'm'],
  ['Litres', 'L'],
  ['People', 'people'],
  ['Hours', 'h'],
  ['DbA', 'dB(A)'],
  ['DbC', 'dB(C)'],
  ['Db', 'dB'],
];

/** The unit of a member of the plan file as its name says it, and what is left of the name; no unit for a plain number. */
export function unitOf(member: string): { readonly name: string; readonly unit: string } {
  const spelt = capital(member);
  const [end, unit] = units.find(([ending]) => spelt.endsWith(ending)) ?? ['', ''];
  return { name: member.slice(0, member.length - end.length) || member, unit };
}

/** Every value of the plan whose pedigree still is "example". */
export function exampleValues(plan: object): readonly ExampleValue[] {
  return Object.entries(plan).flatMap(([part, node]) => found(node, inWords(part), inWords(part)));
}

function found(node: unknown, of: string, member: string): readonly ExampleValue[] {
  if (typeof node !== 'object' || node === null) {
    return [];
  }
  const inside = Array.isArray(node) ? of : (ownName(node) ?? of);
  const within = Object.entries(node).flatMap(([key, child]) =>
    found(child, inside, Array.isArray(node) ? member : key),
  );
  return 'pedigree' in node && node.pedigree === 'example'
    ? [{ of: inside, words: valueInWords(member, 'value' in node ? node.value : undefined) }, ...within]
    : within;
}

function ownName(node: object): string | null {
  const name = 'name' in node ? node.name : 'id' in node ? node.id : null;
  return typeof name === 'string' ? name : null;
}

function valueInWords(member: string, value: unknown): string {
  const { name, unit } = unitOf(member);
  const what = inWords(name);
  return typeof value === 'number' || typeof value === 'string' ? `${what} ${value} ${unit}`.trim() : what;
}

function inWords(member: string): string {
  return member.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).trim();
}

function capital(member: string): string {
  return member.charAt(0).toUpperCase() + member.slice(1);
}
