import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { along } from './along';
import { headingDegrees } from './heading';

describe('headingDegrees', () => {
  it.each([
    [[0, 5], 0],
    [[5, 5], 45],
    [[5, 0], 90],
    [[0, -5], 180],
    [[-5, 0], 270],
  ] as const)('sees %j from the origin at %d°', (to, degrees) => {
    expect(headingDegrees([0, 0], to)).toBeCloseTo(degrees, 12);
  });

  it('finds the heading a place was set out at', () => {
    const heading = fc.double({ min: 0, max: 359, noNaN: true });
    const metres = fc.double({ min: 0.01, max: 500, noNaN: true });
    fc.assert(
      fc.property(heading, metres, (degrees, far) => {
        const seen = headingDegrees([3, -4], along([3, -4], degrees, far));
        // 0 and 360 are the same direction.
        const apart = Math.abs(seen - degrees);
        expect(Math.min(apart, 360 - apart)).toBeLessThan(1e-6);
      }),
    );
  });
});
