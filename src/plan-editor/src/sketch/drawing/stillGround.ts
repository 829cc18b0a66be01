import { computed, type ReadonlySignal } from '@preact/signals';
import type { PlanFile } from '../../plan/planFile';

/** The plan as far as the ground is drawn from it: the same object while only an engine or the crowd line moves. */
export function stillGround(plan: ReadonlySignal<PlanFile | null>): ReadonlySignal<PlanFile | null> {
  let last: PlanFile | null = null;
  return computed(() => {
    const now = plan.value;
    if (last === null || now === null || !sameGround(last, now)) {
      last = now;
    }
    return last;
  });
}

// Edits carry along by reference whatever they do not change.
function sameGround(a: PlanFile, b: PlanFile): boolean {
  return (
    a.site === b.site &&
    a.people === b.people &&
    a.viewing === b.viewing &&
    a.supplies === b.supplies &&
    a.debrisScreens === b.debrisScreens
  );
}
