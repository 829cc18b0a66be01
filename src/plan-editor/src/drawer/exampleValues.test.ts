import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exampleValues } from './exampleValues';

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
});
