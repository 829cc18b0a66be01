import type { PlanPoint } from '../../plan/planFile';

/** A place turned about another one, in degrees clockwise as seen from above. */
export function turned([x, y]: PlanPoint, [aboutX, aboutY]: PlanPoint, degreesClockwise: number): PlanPoint {
  const radians = (degreesClockwise * Math.PI) / 180;
  const cos = Math.cos(radians);
  const sin = Math.sin(radians);
  const right = x - aboutX;
  const up = y - aboutY;
  return [aboutX + right * cos + up * sin, aboutY - right * sin + up * cos];
}
