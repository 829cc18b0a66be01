import type { PlanPoint, PlanPoints } from '../../plan/planFile';

/** Whether a place lies inside an outline (even-odd rule; the edge itself may count either way). */
export function isInside([x, y]: PlanPoint, outline: PlanPoints): boolean {
  let inside = false;
  let [px, py] = outline.at(-1) ?? [0, 0];
  for (const [qx, qy] of outline) {
    if (py > y !== qy > y && x < ((px - qx) * (y - qy)) / (py - qy) + qx) {
      inside = !inside;
    }
    [px, py] = [qx, qy];
  }
  return inside;
}
