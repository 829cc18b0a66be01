import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Answer, Desk } from '../desk/desk';
import { lineChangeInWords } from './lineChange';

/** Says after each finished change what became of the crowd line; null until there is something to compare. */
export function watchLine(desk: Pick<Desk, 'answer' | 'settled'>): ReadonlySignal<string | null> {
  const said = signal<string | null>(null);
  let last: Answer | null = null;
  effect(() => {
    const answer = desk.answer.value;
    if (answer === null) {
      last = null;
      said.value = null;
    } else if (answer.plan === desk.settled.value && answer.plan !== last?.plan) {
      // Answers of a plan in movement are passed over: the change is told once, from rest to rest.
      said.value = last === null ? null : lineChangeInWords(last.assessment, answer.assessment);
      last = answer;
    }
  });
  return said;
}
