import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import type { PlanFile } from '../plan/planFile';
import { Refusal, reasonOf } from '../service/refusal';
import type { LastChance, Saved, Service } from '../service/service';
import type { SaveState } from './saveState';

/** Saves the plan on the desk by itself, and never over somebody else's later state. */
export interface Saving {
  readonly state: ReadonlySignal<SaveState>;
  /** Id of the saved plan on the desk, or null for an example nobody has changed yet. */
  readonly planId: ReadonlySignal<string | null>;
  /** Whether leaving the page now would lose something. */
  readonly owes: ReadonlySignal<boolean>;

  /** Puts a plan on the desk that is kept there, or nowhere yet. */
  open(plan: PlanFile, kept: Saved | null): void;
  /** Saves what is owed now. Whether everything is saved afterwards. */
  flush(): Promise<boolean>;
  /** The page is being left: sends what is owed without waiting. */
  leave(): void;
  /** In a conflict: mine becomes a plan of its own. */
  keepMineAsCopy(): Promise<void>;
  /** In a conflict: theirs comes onto the desk, mine stays one undo away. */
  takeTheirs(): void;
  /** Keeps the plan as it is now for good under a name. */
  keepState(name: string): Promise<void>;
}

/** Calls back later; gives a way to call it off. */
export type Later = (milliseconds: number, act: () => void) => () => void;

type PlanKeeping = Pick<Service, 'add' | 'save' | 'plan' | 'plans' | 'keep'>;

export const restMilliseconds = 800;
export const retryMilliseconds = 5000;

export const takeTheirsName = 'Take the plan of the other window';

export function createSaving(
  service: PlanKeeping,
  desk: Pick<Desk, 'settled' | 'open' | 'change'>,
  later: Later,
): Saving {
  const state = signal<SaveState>({ kind: 'example' });
  const kept = signal<{ readonly home: Saved | null; readonly plan: PlanFile | null }>({
    home: null,
    plan: null,
  });
  const owes = computed(() => desk.settled.value !== null && desk.settled.value !== kept.value.plan);
  let callOff = () => {};
  let underWay: Promise<void> | null = null;

  const schedule = (milliseconds: number) => {
    callOff();
    callOff = later(milliseconds, () => void flush());
  };

  const keepAt = (home: Saved, plan: PlanFile) => {
    kept.value = { home, plan };
    state.value = { kind: 'saved', at: home.savedAt };
  };

  const send = async (plan: PlanFile, last?: LastChance) => {
    const { home } = kept.value;
    state.value = { kind: 'saving' };
    try {
      keepAt(
        home === null ? await service.add(plan, last) : await service.save(home.id, home.tag, plan, last),
        plan,
      );
    } catch (thrown) {
      await notSaved(thrown, home);
    }
  };

  const notSaved = async (thrown: unknown, home: Saved | null) => {
    const status = thrown instanceof Refusal ? thrown.status : 0;
    if (home !== null && status === 412) {
      state.value = await conflict(home).catch(failure);
    } else if (home !== null && status === 404) {
      state.value = { kind: 'conflict', theirs: null, at: null };
    } else {
      state.value = failure(thrown);
    }
    if (state.value.kind === 'failed') {
      schedule(retryMilliseconds);
    }
  };

  const conflict = async ({ id }: Saved): Promise<SaveState> => {
    const [theirs, list] = await Promise.all([service.plan(id), service.plans()]);
    const entry = list.find((plan) => plan.id === id);
    return { kind: 'conflict', theirs, at: entry === undefined ? null : new Date(entry.savedAt) };
  };

  const start = (plan: PlanFile, last?: LastChance) => {
    const sending = send(plan, last).finally(() => {
      underWay = null;
    });
    underWay = sending;
    return sending;
  };

  const flush = async (): Promise<boolean> => {
    callOff();
    await underWay;
    while (owes.value && state.value.kind !== 'conflict') {
      const plan = desk.settled.value;
      if (plan !== null) {
        await (underWay ?? start(plan));
      }
      if (state.value.kind === 'failed') {
        return false;
      }
    }
    return !owes.value;
  };

  effect(() => {
    if (owes.value && desk.settled.value !== null && state.peek().kind !== 'conflict') {
      schedule(restMilliseconds);
    }
  });

  return {
    state,
    planId: computed(() => kept.value.home?.id ?? null),
    owes,
    open(plan, home) {
      callOff();
      kept.value = { home, plan };
      state.value = home === null ? { kind: 'example' } : { kind: 'saved', at: home.savedAt };
      desk.open(plan);
    },
    flush,
    leave() {
      const plan = desk.settled.value;
      if (owes.value && plan !== null && underWay === null && state.value.kind !== 'conflict') {
        callOff();
        void start(plan, { leaving: true });
      }
    },
    async keepMineAsCopy() {
      const plan = desk.settled.value;
      const standing = state.value;
      if (standing.kind !== 'conflict' || plan === null) {
        return;
      }
      try {
        keepAt(await service.add(plan), plan);
      } catch (thrown) {
        state.value = { ...standing, why: reasonOf(thrown) };
      }
    },
    takeTheirs() {
      const { home } = kept.value;
      if (state.value.kind !== 'conflict' || state.value.theirs === null || home === null) {
        return;
      }
      const { theirs, at } = state.value;
      keepAt({ id: home.id, tag: theirs.tag, savedAt: at ?? home.savedAt }, theirs.plan);
      desk.change(takeTheirsName, () => theirs.plan);
      kept.value = { ...kept.value, plan: desk.settled.value };
    },
    async keepState(name) {
      const plan = desk.settled.value;
      if (plan !== null && kept.value.home === null) {
        await start(plan);
      }
      if (!(await flush()) || kept.value.home === null) {
        throw new Refusal(0, 'The plan is not saved yet, so its state can’t be kept.');
      }
      await service.keep(kept.value.home.id, name);
    },
  };
}

function failure(thrown: unknown): SaveState {
  return { kind: 'failed', why: reasonOf(thrown) };
}
