import { describe, expect, it } from 'vitest';
import { isInside } from './isInside';

// An L: the upper right quarter is cut out.
const outline = [
  [0, 0],
  [10, 0],
  [10, 4],
  [4, 4],
  [4, 10],
  [0, 10],
] as const;

describe('isInside', () => {
  it.each([
    [[1, 1], true],
    [[9, 3], true],
    [[1, 9], true],
    [[9, 9], false],
    [[-1, 5], false],
    [[11, 2], false],
  ] as const)('%j: %s', (place, inside) => {
    expect(isInside(place, outline)).toBe(inside);
    expect(isInside(place, [...outline].reverse())).toBe(inside);
  });
});
