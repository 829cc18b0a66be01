import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exampleValues, unitOf } from './exampleValues';

describe('exampleValues', () => {
  it('names what is invented by element, with its unit, and nothing else', () => {
    const plan = {
      title: 'a',
      site: { air: { temperatureCelsius: { value: 15, pedigree: 'example' } } },
      engines: [
        { id: 'b', name: 'Bramble', bench: { lengthMetres: { value: 1.2, pedigree: 'example' } } },
        { id: 'c', bench: { lengthMetres: { value: 1, pedigree: 'estimated' } } },
      ],
    };
    expect(exampleValues(plan)).toEqual([
      { of: 'site', words: 'temperature 15 °C' },
      { of: 'Bramble', words: 'length 1.2 m' },
    ]);
  });

  it('finds as many in a template as its file says', () => {
    const text = readFileSync(
      new URL('../../../../site-templates/sports-hall.json', import.meta.url),
      'utf8',
    );
    const said = text.match(/"pedigree":\s*"example"/g)?.length;
    expect(said).toBeGreaterThan(10);
    expect(exampleValues(JSON.parse(text))).toHaveLength(said ?? 0);
  });

  it('knows the unit of every stated number the schema of the plan file has', () => {
    const schema = new URL('../../../../docs/plan-schema.json', import.meta.url);
    const stated = statedIn(JSON.parse(readFileSync(schema, 'utf8')));
    expect(stated.length).toBeGreaterThan(40);
    for (const { member, unit } of stated) {
      expect({ member, unit: unitOf(member).unit }).toEqual({ member, unit });
    }
  });
});

// Members with a unit and, among them, those whose value carries a pedigree: no plain numbers, no points.
function statedIn(node: unknown): readonly { readonly member: string; readonly unit: string }[] {
  if (typeof node !== 'object' || node === null) {
    return [];
  }
  return Object.entries(node).flatMap(([member, child]) => [
    ...(isStated(child) ? [{ member, unit: child['x-unit'] }] : []),
    ...statedIn(child),
  ]);
}

function isStated(node: unknown): node is { readonly 'x-unit': string } {
  return typeof node === 'object' && node !== null && 'x-unit' in node && '$ref' in node;
}
