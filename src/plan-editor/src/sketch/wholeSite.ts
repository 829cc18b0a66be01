import type { PlanPoints } from '../plan/planFile';
import type { Frame } from './geometry/frame';

/** Says when the whole site is to be shown by itself: a plan was opened, or the sheet changed size and nobody has looked elsewhere. */
export class WholeSite {
  #shown: { readonly outline: PlanPoints; readonly frame: Frame } | null = null;

  /** Whether the view should go to the whole site now. */
  isDue(outline: PlanPoints, frame: Frame): boolean {
    if (this.#shown === null || this.#shown.outline !== outline) {
      return true;
    }
    const last = this.#shown.frame;
    const isResized = last.widthPixels !== frame.widthPixels || last.heightPixels !== frame.heightPixels;
    const isUntouched =
      last.middle[0] === frame.middle[0] &&
      last.middle[1] === frame.middle[1] &&
      last.metresPerPixel === frame.metresPerPixel;
    return isResized && isUntouched;
  }

  /** The whole site has been brought into this frame. */
  shown(outline: PlanPoints, frame: Frame): void {
    this.#shown = { outline, frame };
  }
}
