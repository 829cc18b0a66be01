import { describe, expect, it } from 'vitest';
import { distanceToPathMetres } from './distanceToPath';

const corner = [
  [0, 0],
  [10, 0],
  [10, 10],
] as const;

describe('distanceToPathMetres', () => {
  it.each([
    [[5, 3], 3],
    [[12, 5], 2],
    [[-3, -4], 5],
    [[10, 0], 0],
  ] as const)('measures from %j: %d m', (place, metres) => {
    expect(distanceToPathMetres(place, corner)).toBeCloseTo(metres, 12);
  });

  it('takes a single place for a path, also twice the same', () => {
    expect(distanceToPathMetres([3, 4], [[0, 0]])).toBe(5);
    expect(
      distanceToPathMetres(
        [3, 4],
        [
          [0, 0],
          [0, 0],
        ],
      ),
    ).toBe(5);
  });

  it('is infinitely far from nothing', () => {
    expect(distanceToPathMetres([0, 0], [])).toBe(Number.POSITIVE_INFINITY);
  });
});
