import { describe, expect, it } from 'vitest';
import { joinedPaths } from './joinedPaths';

describe('joinedPaths', () => {
  it('joins an open path from one end to the other, in whatever order its parts come', () => {
    const [path = [], ...others] = joinedPaths([
      [3, 4],
      [1, 2],
      [3, 2],
    ]);

    expect(others).toEqual([]);
    expect([path, [...path].reverse()]).toContainEqual([1, 2, 3, 4]);
  });

  it('closes a ring', () => {
    const [path = []] = joinedPaths([
      [1, 2],
      [3, 1],
      [2, 3],
    ]);

    expect(path).toHaveLength(4);
    expect(path.at(-1)).toBe(path[0]);
  });

  it('uses every segment once', () => {
    const segments = [
      [1, 2],
      [5, 6],
      [6, 7],
      [7, 5],
      [2, 9],
    ] as const;

    expect(joinedPaths(segments).reduce((sum, path) => sum + path.length - 1, 0)).toBe(segments.length);
    expect(joinedPaths([])).toEqual([]);
  });
});
