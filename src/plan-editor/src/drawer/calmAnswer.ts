import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Answer, Desk } from '../desk/desk';

/** The answer as the drawer tells it: while a finger is down it stays as it is, so that the plan alone is drawn. */
export function calmAnswer(desk: Pick<Desk, 'answer' | 'plan' | 'settled'>): ReadonlySignal<Answer | null> {
  const calm = signal<Answer | null>(null);
  effect(() => {
    if (desk.plan.value === desk.settled.value) {
      calm.value = desk.answer.value;
    }
  });
  return calm;
}
