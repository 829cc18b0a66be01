import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import type { RuleSet } from '../service/answers';
import { type LevelLimit, limitsOf } from './levelLimits';

export type AskRuleSets = () => Promise<readonly RuleSet[]>;

/** The limits of the rules the plan chooses; null while they are not known. Asked for when they are first to be drawn. */
export function watchLimits(
  { desk, on }: { readonly desk: Pick<Desk, 'settled'>; readonly on: ReadonlySignal<boolean> },
  ask: AskRuleSets,
) {
  const ruleSets = signal<readonly RuleSet[] | null>(null);
  const limits = signal<readonly LevelLimit[] | null>(null);
  let isAsked = false;
  const stop = effect(() => {
    if (on.value && !isAsked) {
      isAsked = true;
      ask().then(
        (given) => {
          ruleSets.value = given;
        },
        // Without an answer there are no lines, which the note says; the next time it is switched on they are asked for again.
        () => {
          isAsked = false;
        },
      );
    }
    const chosen = desk.settled.value?.ruleSets ?? [];
    limits.value = ruleSets.value === null ? null : limitsOf(ruleSets.value, chosen);
  });
  return { limits: limits as ReadonlySignal<readonly LevelLimit[] | null>, stop };
}
