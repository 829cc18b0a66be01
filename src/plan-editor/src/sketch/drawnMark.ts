import { effect, type ReadonlySignal } from '@preact/signals';

/** Name of the mark in the browser's own timeline. */
export const drawnMark = 'showsafety:drawn';

/** Marks when a new answer has been painted, so that a script can measure what a drag waits (tests/page-speed.sh). */
export function markWhenDrawn(answer: ReadonlySignal<unknown>): () => void {
  return effect(() => {
    if (answer.value !== null) {
      // The canvases are painted in the coming frame; what is posted inside it runs after the frame.
      requestAnimationFrame(() =>
        setTimeout(() => {
          performance.clearMarks(drawnMark);
          performance.mark(drawnMark);
        }),
      );
    }
  });
}
