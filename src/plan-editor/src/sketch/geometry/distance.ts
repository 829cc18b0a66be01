import type { PlanPoint } from '../../plan/planFile';

/** The distance between two places in metres. */
export function distanceMetres([ax, ay]: PlanPoint, [bx, by]: PlanPoint): number {
  return Math.hypot(bx - ax, by - ay);
}
