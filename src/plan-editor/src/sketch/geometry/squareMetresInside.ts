import type { PlanPoints } from '../../plan/planFile';

/** The area inside an outline in square metres, whichever way round it runs. */
export function squareMetresInside(outline: PlanPoints): number {
  let twice = 0;
  let [px, py] = outline.at(-1) ?? [0, 0];
  for (const [qx, qy] of outline) {
    twice += px * qy - qx * py;
    [px, py] = [qx, qy];
  }
  return Math.abs(twice) / 2;
}
