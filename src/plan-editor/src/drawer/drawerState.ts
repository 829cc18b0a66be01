import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import type { PlanPoint } from '../plan/planFile';
import type { SectionId } from './sections';

/** Which section lies open, and how far the drawer is pulled up where it lies at the bottom. */
export interface DrawerState {
  readonly section: ReadonlySignal<SectionId>;
  readonly tall: ReadonlySignal<boolean>;
  show(section: SectionId): void;
  pull(tall: boolean): void;
  /** Points at something on the plan from inside the drawer: the section stays, the plan comes into view. */
  point(at: Pointed): void;
}

export interface Pointed {
  readonly elementId?: string | undefined;
  readonly place?: PlanPoint | undefined;
}

type Pointing = Pick<Desk, 'spot' | 'chosen' | 'settled' | 'choose' | 'ask'>;

export function createDrawer(desk: Pointing): DrawerState {
  const section = signal<SectionId>('toDo');
  const tall = signal(false);
  let pointing = false;

  // What is tapped on the plan opens its section; what is pointed at from a section does not leave it.
  effect(() => {
    if (desk.spot.value !== null && !pointing) {
      section.value = 'spot';
      // Where the drawer lies low, the answer would lie below the edge.
      tall.value = true;
    }
  });
  effect(() => {
    const id = desk.chosen.value;
    if (id !== null && !pointing && isEngine(desk, id)) {
      section.value = 'numbers';
    }
  });

  return {
    section,
    tall,
    show(wanted) {
      section.value = wanted;
      tall.value = true;
    },
    pull(far) {
      tall.value = far;
    },
    point({ elementId, place }) {
      pointing = true;
      desk.choose(elementId ?? null);
      desk.ask(place ?? null);
      pointing = false;
      tall.value = false;
    },
  };
}

function isEngine({ settled }: Pointing, id: string): boolean {
  return settled.peek()?.engines?.some((engine) => engine.id === id) ?? false;
}
