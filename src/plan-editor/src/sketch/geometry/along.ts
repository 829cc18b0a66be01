import type { PlanPoint } from '../../plan/planFile';

/** The place so many metres away in a direction given in degrees clockwise from the plan's up direction. */
export function along([x, y]: PlanPoint, headingDegrees: number, metres: number): PlanPoint {
  const radians = (headingDegrees * Math.PI) / 180;
  return [x + metres * Math.sin(radians), y + metres * Math.cos(radians)];
}
