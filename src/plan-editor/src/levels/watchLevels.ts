import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import type { PlanFile } from '../plan/planFile';
import { isAbort } from '../service/httpService';
import { reasonOf } from '../service/refusal';
import type { Frame } from '../sketch/geometry/frame';
import type { AskLevels } from './askLevels';
import type { LevelGrid } from './levelGrid';
import { levelWindow } from './levelWindow';

/** What there is to see of the levels. */
export type LevelState =
  | { readonly kind: 'off' | 'asking' | 'cannotTell' }
  | { readonly kind: 'trouble'; readonly reason: string }
  | { readonly kind: 'shown'; readonly plan: PlanFile; readonly grid: LevelGrid };

/** Steps along the longer side of the view: first a coarse picture, then a fine one. */
const coarseThenFine = [40, 160] as const;
// The view has come to rest when it has not moved for so long.
const restMilliseconds = 200;

interface Watched {
  readonly desk: Pick<Desk, 'plan' | 'unchecked'>;
  readonly frame: ReadonlySignal<Frame | null>;
  readonly on: ReadonlySignal<boolean>;
}

/** Keeps the level picture behind plan and view. A picture of a plan that has moved on is never shown. */
export function watchLevels({ desk, frame, on }: Watched, ask: AskLevels) {
  const state = signal<LevelState>({ kind: 'off' });

  const draw = async (plan: PlanFile, seen: Frame, signal: AbortSignal) => {
    for (const steps of coarseThenFine) {
      const window = levelWindow(seen, steps);
      const grid = window === null ? null : await ask(plan, window, signal);
      if (signal.aborted) {
        return;
      }
      state.value = grid === null ? { kind: 'cannotTell' } : { kind: 'shown', plan, grid };
      if (grid === null) {
        return;
      }
    }
  };

  const stop = effect(() => {
    const plan = desk.plan.value;
    const seen = frame.value;
    if (!on.value || plan === null || seen === null || desk.unchecked.value) {
      state.value = { kind: 'off' };
      return undefined;
    }
    const last = state.peek();
    if (last.kind !== 'shown' || last.plan !== plan) {
      state.value = { kind: 'asking' };
    }
    const abort = new AbortController();
    const rest = setTimeout(() => {
      draw(plan, seen, abort.signal).catch((thrown: unknown) => {
        if (!abort.signal.aborted && !isAbort(thrown)) {
          state.value = { kind: 'trouble', reason: reasonOf(thrown) };
        }
      });
    }, restMilliseconds);
    return () => {
      clearTimeout(rest);
      abort.abort();
    };
  });
  return { state: state as ReadonlySignal<LevelState>, stop };
}
