import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { niceLengthMetres } from './niceLength';

describe('niceLengthMetres', () => {
  it.each([
    [1, 1],
    [1.99, 1],
    [4.9, 2],
    [73, 50],
    [100, 100],
    [0.37, 0.2],
  ])('takes at most %d m as %d m', (longest, nice) => {
    expect(niceLengthMetres(longest)).toBeCloseTo(nice, 12);
  });

  it('is never longer than asked and never shorter than two fifths of it', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e4, noNaN: true }), (longest) => {
        const nice = niceLengthMetres(longest);
        // A power of ten may come out a hair above itself in binary.
        return nice <= longest * (1 + 1e-12) && nice >= 0.39 * longest;
      }),
    );
  });
});
