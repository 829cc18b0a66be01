import type { PlanPoint } from '../../plan/planFile';

/** The part of the plan in view: what lies in the middle, how large a pixel is, how large the sheet is. */
export interface Frame {
  readonly middle: PlanPoint;
  readonly metresPerPixel: number;
  readonly widthPixels: number;
  readonly heightPixels: number;
}

/** A place on the screen in CSS pixels from the sheet's upper left corner, y down. */
export interface ScreenPoint {
  readonly leftPixels: number;
  readonly topPixels: number;
}

/** Where a place of the plan is on the screen. */
export function toScreen(frame: Frame, [x, y]: PlanPoint): ScreenPoint {
  return {
    leftPixels: frame.widthPixels / 2 + (x - frame.middle[0]) / frame.metresPerPixel,
    topPixels: frame.heightPixels / 2 - (y - frame.middle[1]) / frame.metresPerPixel,
  };
}

/** Which place of the plan is under a place of the screen. */
export function toPlan(frame: Frame, { leftPixels, topPixels }: ScreenPoint): PlanPoint {
  return [
    frame.middle[0] + (leftPixels - frame.widthPixels / 2) * frame.metresPerPixel,
    frame.middle[1] - (topPixels - frame.heightPixels / 2) * frame.metresPerPixel,
  ];
}
