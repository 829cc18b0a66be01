import type { PlanPoint } from '../../plan/planFile';

/** The direction from one place to another in degrees clockwise from the plan's up direction, from 0 to below 360. */
export function headingDegrees([fromX, fromY]: PlanPoint, [toX, toY]: PlanPoint): number {
  const degrees = (Math.atan2(toX - fromX, toY - fromY) * 180) / Math.PI;
  // A tiny negative angle plus 360 rounds to 360 itself.
  return (degrees + 360) % 360;
}
