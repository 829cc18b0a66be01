import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeInWords, shortNameOf, tooNearInWords } from './words';

describe('placeInWords', () => {
  it.each([
    [[0, 0], '0.0, 0.0 m'],
    [[-0.04, 12.34], '0.0, 12.3 m'],
    [[-2.25, 100], '-2.2, 100.0 m'],
  ] as const)('says %j as %s', (place, words) => {
    expect(placeInWords(place)).toBe(words);
  });
});

describe('tooNearInWords', () => {
  it('names the zone and the metres', () => {
    expect(tooNearInWords('jet heat zone', 8.1)).toBe('inside “jet heat zone”,\n8.1 m too near');
    expect(tooNearInWords(undefined, 3)).toBe('inside a zone that keeps people out,\n3.0 m too near');
  });

  it('never says less than the line has to move', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 900, noNaN: true }), (metres) => {
        const said = Number(/([\d.]+) m too near/.exec(tooNearInWords('a zone', metres))?.[1]);
        return said >= metres - 1e-6 && said < metres + 0.1001;
      }),
    );
  });
});

describe('shortNameOf', () => {
  it.each([
    [{ id: 'fern', name: 'Fern, bench demonstrator' }, 'Fern'],
    [{ id: 'fern', name: 'Fern' }, 'Fern'],
    [{ id: 'fern' }, 'fern'],
  ])('calls %j %s', (engine, name) => {
    expect(shortNameOf(engine)).toBe(name);
  });
});
