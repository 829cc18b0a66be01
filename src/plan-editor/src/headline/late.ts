import { effect, type ReadonlySignal, signal } from '@preact/signals';

// Shorter than this nobody reads it, and the page would flicker during a drag.
export const lateMilliseconds = 150;

/** True once the other has been true for a moment without a break; false as soon as it is false. */
export function late(other: ReadonlySignal<boolean>, wait = lateMilliseconds): ReadonlySignal<boolean> {
  const shown = signal(false);
  effect(() => {
    if (!other.value) {
      shown.value = false;
      return;
    }
    const timer = setTimeout(() => {
      shown.value = true;
    }, wait);
    return () => clearTimeout(timer);
  });
  return shown;
}
