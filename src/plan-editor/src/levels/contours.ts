import type { PlanPoint, PlanPoints } from '../plan/planFile';
import { joinedPaths } from './joinedPaths';
import type { LevelWindow } from './levelGrid';

/**
 * The lines on a grid of values along which the value is the given one (marching squares, straight within a cell). A line
 * ends at the edge of the grid or where values are missing; a closed one repeats its first place.
 */
export function contours(
  window: LevelWindow,
  values: ArrayLike<number>,
  level: number,
): readonly PlanPoints[] {
  const crossing = crossings(window, values, level);
  const segments: [number, number][] = [];
  for (let row = 0; row + 1 < window.rows; row++) {
    for (let column = 0; column + 1 < window.columns; column++) {
      segments.push(...cellSegments(window, values, level, row * window.columns + column));
    }
  }
  return joinedPaths(segments).map((path) => path.map(crossing));
}

// A crossing is named by the value it starts from and whether it lies on the way right (0) or up (1).
function crossings(
  { lowerLeft: [x, y], stepMetres, columns }: LevelWindow,
  values: ArrayLike<number>,
  level: number,
) {
  return (name: number): PlanPoint => {
    const from = name >> 1;
    const up = name & 1;
    const a = values[from] ?? 0;
    const b = values[from + (up === 1 ? columns : 1)] ?? 0;
    const share = (level - a) / (b - a);
    const column = (from % columns) + (up === 1 ? 0 : share);
    const row = Math.floor(from / columns) + (up === 1 ? share : 0);
    return [x + column * stepMetres, y + row * stepMetres];
  };
}

function cellSegments(
  { columns }: LevelWindow,
  values: ArrayLike<number>,
  level: number,
  at: number,
): [number, number][] {
  const corners = [at, at + 1, at + columns + 1, at + columns].map((i) => values[i] ?? Number.NaN);
  const [a, b, c, d] = corners as [number, number, number, number];
  if (!corners.every(Number.isFinite)) {
    return [];
  }
  const below = at * 2;
  const right = (at + 1) * 2 + 1;
  const above = (at + columns) * 2;
  const left = at * 2 + 1;
  const crossed: number[] = [];
  const sides = [
    [a, b, below],
    [b, c, right],
    [c, d, above],
    [d, a, left],
  ] as const;
  for (const [from, to, name] of sides) {
    if (from >= level !== to >= level) {
      crossed.push(name);
    }
  }
  if (crossed.length === 4) {
    // Two opposite corners are above: what the middle is decides which two corners hang together.
    const isMiddleAbove = (a + b + c + d) / 4 >= level;
    return isMiddleAbove === a >= level
      ? [
          [below, right],
          [above, left],
        ]
      : [
          [below, left],
          [above, right],
        ];
  }
  const [first, second] = crossed;
  return first === undefined || second === undefined ? [] : [[first, second]];
}
