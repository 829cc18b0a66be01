import type { PlanPoints } from '../plan/planFile';
import type { Frame } from './geometry/frame';

/** Says when a plan is to be shown by itself: it was opened, or the sheet changed size and nobody has looked elsewhere. */
export class FirstView {
  #shown: { readonly outline: PlanPoints; readonly frame: Frame } | null = null;

  /** Whether the view should go to the plan now. */
  isDue(outline: PlanPoints, frame: Frame): boolean {
    if (this.#shown === null || this.#shown.outline !== outline) {
      return true;
    }
    const last = this.#shown.frame;
    const isResized = last.widthPixels !== frame.widthPixels || last.heightPixels !== frame.heightPixels;
    return isResized && this.isUntouched(frame);
  }

  /** Whether nobody has shifted or scaled the view since. */
  isUntouched(frame: Frame): boolean {
    const last = this.#shown?.frame;
    return (
      last !== undefined &&
      last.middle[0] === frame.middle[0] &&
      last.middle[1] === frame.middle[1] &&
      last.metresPerPixel === frame.metresPerPixel
    );
  }

  /** The plan has been brought into this frame. */
  shown(outline: PlanPoints, frame: Frame): void {
    this.#shown = { outline, frame };
  }
}
