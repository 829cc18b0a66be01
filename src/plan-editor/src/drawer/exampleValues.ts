/** A value of the plan that somebody invented for an example, in words. */
export interface ExampleValue {
  /** Name of the element it belongs to, or the part of the plan. */
  readonly of: string;
  readonly words: string;
}

// The unit is the end of a member's name. Longer ends first.
const units: readonly (readonly [end: string, unit: string])[] = [
  ['CubicMetresPerSecond', 'm³/s'],
  ['KilogramsPerSquareMetre', 'kg/m²'],
  ['KilogramsPerSecond', 'kg/s'],
  ['MetresPerSecond', 'm/s'],
  ['CubicMetres', 'm³'],
  ['SquareMetres', 'm²'],
  ['Kilopascals', 'kPa'],
  ['Kilograms', 'kg'],
  ['Celsius', '°C'],
  ['Percent', '%'],
  ['Degrees', '°'],
  ['Minutes', 'min'],
  ['Seconds', 's'],
  ['Newtons', 'N'],
  ['Metres', 'm'],
  ['Litres', 'l'],
];

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
  const [end, unit] = units.find(([ending]) => member.endsWith(ending)) ?? ['', ''];
  const what = inWords(member.slice(0, member.length - end.length) || member);
  return typeof value === 'number' || typeof value === 'string' ? `${what} ${value} ${unit}`.trim() : what;
}

function inWords(member: string): string {
  return member.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).trim();
}
