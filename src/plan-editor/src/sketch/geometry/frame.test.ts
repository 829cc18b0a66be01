import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlanPoint } from '../../plan/planFile';
import { toPlan, toScreen } from './frame';

const frame = { middle: [10, 20], metresPerPixel: 0.5, widthPixels: 400, heightPixels: 300 } as const;

describe('toScreen', () => {
  it('puts the middle into the middle, x to the right and y up', () => {
    expect(toScreen(frame, [10, 20])).toEqual({ leftPixels: 200, topPixels: 150 });
    expect(toScreen(frame, [15, 30])).toEqual({ leftPixels: 210, topPixels: 130 });
  });

  it('is undone by toPlan', () => {
    const metres = fc.double({ min: -5000, max: 5000, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(metres, metres) as fc.Arbitrary<PlanPoint>, (place) => {
        const [x, y] = toPlan(frame, toScreen(frame, place));
        expect(x).toBeCloseTo(place[0], 8);
        expect(y).toBeCloseTo(place[1], 8);
      }),
    );
  });
});
