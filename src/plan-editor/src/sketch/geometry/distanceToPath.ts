import type { PlanPoint, PlanPoints } from '../../plan/planFile';
import { distanceMetres } from './distance';

/** The least distance from a place to a row of straight stretches in metres; infinite for an empty row. */
export function distanceToPathMetres(place: PlanPoint, path: PlanPoints): number {
  const [first, ...rest] = path;
  if (first === undefined) {
    return Number.POSITIVE_INFINITY;
  }
  let from = first;
  let least = distanceMetres(place, first);
  for (const to of rest) {
    least = Math.min(least, distanceMetres(place, nearestOf(place, from, to)));
    from = to;
  }
  return least;
}

function nearestOf([x, y]: PlanPoint, [ax, ay]: PlanPoint, [bx, by]: PlanPoint): PlanPoint {
  const squared = (bx - ax) ** 2 + (by - ay) ** 2;
  const share = squared === 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / squared;
  const within = Math.min(1, Math.max(0, share));
  return [ax + within * (bx - ax), ay + within * (by - ay)];
}
