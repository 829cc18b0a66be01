import { describe, expect, it } from 'vitest';
import { turned } from './turned';

describe('turned', () => {
  it.each([
    [90, [3, 1]],
    [180, [2, 0]],
    [-90, [1, 1]],
    [360, [2, 2]],
  ] as const)('takes a place above the pivot by %d° clockwise to %j', (degrees, [x, y]) => {
    const [turnedX, turnedY] = turned([2, 2], [2, 1], degrees);

    expect(turnedX).toBeCloseTo(x, 12);
    expect(turnedY).toBeCloseTo(y, 12);
  });
});
