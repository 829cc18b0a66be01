import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlanPoint } from '../plan/planFile';
import { contours } from './contours';
import type { LevelWindow } from './levelGrid';

function gridOf(window: LevelWindow, value: (at: PlanPoint) => number): Float64Array {
  const { lowerLeft, stepMetres, columns, rows } = window;
  return Float64Array.from({ length: columns * rows }, (_, i) =>
    value([lowerLeft[0] + (i % columns) * stepMetres, lowerLeft[1] + Math.floor(i / columns) * stepMetres]),
  );
}

function lengthOf(line: readonly PlanPoint[]): number {
  return line
    .slice(1)
    .reduce((sum, [x, y], i) => sum + Math.hypot(x - (line[i]?.[0] ?? 0), y - (line[i]?.[1] ?? 0)), 0);
}

describe('contours', () => {
  it('finds circles of the right radius round a source, closed, of the right length', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 17, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        (radius, offset) => {
          const window: LevelWindow = { lowerLeft: [80, -20], stepMetres: 0.5, columns: 81, rows: 81 };
          const source: PlanPoint = [100 + offset, offset / 3];
          const values = gridOf(window, ([x, y]) => -Math.hypot(x - source[0], y - source[1]));
          const lines = contours(window, values, -radius);
          const [line = []] = lines;

          expect(lines).toHaveLength(1);
          expect(line.at(-1)).toEqual(line[0]);
          for (const [x, y] of line) {
            // A cone read straight along a step of 0.5 m is off by at most step² / 8r.
            expect(Math.abs(Math.hypot(x - source[0], y - source[1]) - radius)).toBeLessThan(
              0.25 / (8 * (radius - 0.5)) + 1e-9,
            );
          }
          expect(lengthOf(line) / (2 * Math.PI * radius)).toBeGreaterThan(0.98);
          expect(lengthOf(line) / (2 * Math.PI * radius)).toBeLessThan(1.02);
        },
      ),
    );
  });

  it('puts 6.02 dB less at twice the distance from a point source (20 lg 2)', () => {
    const window: LevelWindow = { lowerLeft: [-30, -30], stepMetres: 0.25, columns: 241, rows: 241 };
    const values = gridOf(window, ([x, y]) => 100 - 20 * Math.log10(Math.max(0.1, Math.hypot(x, y)) / 10));
    const radiusOf = (level: number) => Math.hypot(...(contours(window, values, level)[0]?.[0] ?? [0, 0]));

    expect(radiusOf(100)).toBeCloseTo(10, 2);
    expect(radiusOf(100 - 20 * Math.log10(2))).toBeCloseTo(20, 2);
  });

  it('is exact on a plane and ends at the edges of the grid', () => {
    const window: LevelWindow = { lowerLeft: [0, 0], stepMetres: 1, columns: 5, rows: 4 };
    const [line = [], ...others] = contours(
      window,
      gridOf(window, ([x]) => x),
      2.25,
    );

    expect(others).toEqual([]);
    expect(line.map(([x]) => x)).toEqual([2.25, 2.25, 2.25, 2.25]);
    expect(line.map(([, y]) => y).sort()).toEqual([0, 1, 2, 3]);
  });

  it('keeps two peaks apart or together at a saddle as the middle says', () => {
    const window: LevelWindow = { lowerLeft: [0, 0], stepMetres: 1, columns: 2, rows: 2 };

    // 9 and 9 in opposite corners; the middle is below 5, so each corner is cut off alone.
    expect(contours(window, [9, 0, 0, 9], 5)).toHaveLength(2);
    const [line = []] = contours(window, [9, 4, 4, 9], 5);
    // The middle is 6.5: the lines cut off the low corners, lower right and upper left.
    const lowerRight = line.every(([x, y]) => x >= 0.5 && y <= 0.5);
    const upperLeft = line.every(([x, y]) => x <= 0.5 && y >= 0.5);
    expect(lowerRight || upperLeft).toBe(true);
  });

  it('draws nothing where values are missing, all above or all below', () => {
    const window: LevelWindow = { lowerLeft: [0, 0], stepMetres: 1, columns: 2, rows: 2 };

    expect(contours(window, [0, Number.NaN, 9, 9], 5)).toEqual([]);
    expect(contours(window, [9, 9, 9, 9], 5)).toEqual([]);
    expect(contours(window, [1, 1, 1, 1], 5)).toEqual([]);
    expect(contours(window, [9, 9, Number.NEGATIVE_INFINITY, 1], 5)).toEqual([]);
  });
});
