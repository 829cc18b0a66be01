import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { begun, type History, redone, stepped, undone } from '../history/history';
import type { PlanFile, PlanPoint } from '../plan/planFile';
import { type Assess, assessing } from './assessing';
import type { Desk } from './desk';

/** The desk over a way to assess plans. */
export function createDesk(assess: Assess): Desk {
  const history = signal<History<PlanFile> | null>(null);
  const moving = signal<PlanFile | null>(null);
  const chosen = signal<string | null>(null);
  const spot = signal<PlanPoint | null>(null);
  const shownZones = signal<ReadonlySet<string>>(new Set());
  const answers = assessing(assess);
  const settled = computed(() => history.value?.now ?? null);
  const plan = computed(() => moving.value ?? settled.value);

  const rest = (next: History<PlanFile>) => {
    const wasMoving = moving.value !== null;
    const before = history.value?.now;
    moving.value = null;
    history.value = next;
    if (wasMoving || next.now !== before) {
      answers.settle(next.now);
    }
  };
  const withHistory = (act: (history: History<PlanFile>) => History<PlanFile>) => {
    if (history.value !== null) {
      rest(act(history.value));
    }
  };

  return {
    plan,
    settled,
    answer: answers.answer,
    unchecked: computed(() => plan.value !== null && answers.answer.value?.plan !== plan.value),
    trouble: answers.trouble,
    chosen,
    spot,
    shownZones,
    undoName: nameOf(computed(() => history.value?.past.at(-1))),
    redoName: nameOf(computed(() => history.value?.future.at(-1))),

    open(opened) {
      answers.clear();
      chosen.value = null;
      spot.value = null;
      shownZones.value = new Set();
      rest(begun(opened));
    },
    move(edit) {
      if (history.value !== null) {
        moving.value = edit(history.value.now);
        answers.follow(moving.value);
      }
    },
    change: (name, edit) =>
      withHistory((h) => {
        const next = edit(h.now);
        // A finger that came back to where it started has changed nothing.
        return sameContent(next, h.now) ? h : stepped(h, name, next);
      }),
    giveUpMove: () => withHistory((h) => h),
    undo: () => withHistory((h) => (moving.value === null ? undone(h) : h)),
    redo: () => withHistory((h) => (moving.value === null ? redone(h) : h)),
    choose(elementId) {
      chosen.value = elementId;
    },
    ask(place) {
      spot.value = place;
    },
    showZone(key, on) {
      const next = new Set(shownZones.value);
      if (on) {
        next.add(key);
      } else {
        next.delete(key);
      }
      shownZones.value = next;
    },
    askAgain: answers.askAgain,
  };
}

function nameOf(step: ReadonlySignal<{ readonly name: string } | undefined>): ReadonlySignal<string | null> {
  return computed(() => step.value?.name ?? null);
}

// Edits keep the order of members, so equal plans have equal text.
function sameContent(a: PlanFile, b: PlanFile): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
