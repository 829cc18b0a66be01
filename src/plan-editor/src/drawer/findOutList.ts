import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Answer, Desk } from '../desk/desk';
import type { FindOutItem } from '../service/answers';

/** The list of the last full answer; a quick answer brings none. */
export interface FindOutList {
  readonly items: readonly FindOutItem[];
  /** Whether the plan has changed since. */
  readonly old: boolean;
}

export function watchFindOut(desk: Pick<Desk, 'answer'>): ReadonlySignal<FindOutList | null> {
  const list = signal<FindOutList | null>(null);
  effect(() => {
    list.value = next(list.peek(), desk.answer.value);
  });
  return list;
}

function next(before: FindOutList | null, answer: Answer | null): FindOutList | null {
  const items = answer?.assessment.findOut;
  if (items !== undefined) {
    return { items, old: false };
  }
  return answer === null || before === null ? null : { ...before, old: true };
}

const ways: Readonly<Record<FindOutItem['how'], string>> = {
  none: 'Settle it.',
  decide: 'Decide it.',
  scale: 'Weigh it on a scale.',
  tape: 'Measure it with a tape.',
  maker: 'Ask the maker.',
  meter: 'Measure it with an instrument.',
  soundMeter: 'Measure it with a sound level meter.',
  check: 'Check or try it, and write down when.',
  venue: 'Ask the venue or the authority.',
};

/** How the fact is found out. */
export function howInWords(how: FindOutItem['how']): string {
  return ways[how];
}

/** What not knowing it costs. */
export function costInWords({ cost, lineMetres }: FindOutItem): string {
  const line =
    lineMetres === undefined || lineMetres.planning <= 0
      ? null
      : `up to ${lineMetres.planning.toFixed(1)} m of crowd line`;
  const stands = cost === 'stop' ? 'a stop: NOT TO RUN without it' : null;
  const costs = [stands, line].filter((part) => part !== null);
  return costs.length === 0 ? 'Costs nothing yet.' : `Costs ${costs.join(', and ')}.`;
}
