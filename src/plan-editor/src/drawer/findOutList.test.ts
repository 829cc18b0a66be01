import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../desk/desk';
import { assessmentOf, planOf } from '../desk/fakeAssess';
import type { FindOutItem } from '../service/answers';
import { costInWords, watchFindOut } from './findOutList';

const item: FindOutItem = { field: 'Bench.MassKilograms', meaning: 'mass of the bench', how: 'scale' };
const answerWith = (findOut?: readonly FindOutItem[]): Answer => ({
  plan: planOf('a'),
  assessment: { ...assessmentOf('a'), ...(findOut === undefined ? {} : { findOut }) },
});

describe('watchFindOut', () => {
  it('keeps the last list, marked as old, while only a quick answer is there', () => {
    const answer = signal<Answer | null>(answerWith());
    const list = watchFindOut({ answer });
    expect(list.value).toBeNull();

    answer.value = answerWith([item]);
    expect(list.value).toEqual({ items: [item], old: false });
    answer.value = answerWith();
    expect(list.value).toEqual({ items: [item], old: true });
    answer.value = answerWith([]);
    expect(list.value).toEqual({ items: [], old: false });
  });

  it('forgets the list with its plan', () => {
    const answer = signal<Answer | null>(answerWith([item]));
    const list = watchFindOut({ answer });
    answer.value = null;

    expect(list.value).toBeNull();
  });
});

describe('costInWords', () => {
  const lineMetres = { best: 3, planning: 3.21, unit: 'm' };

  it.each([
    [{ ...item, cost: 'stop' } as const, 'Costs a stop: NOT TO RUN without it.'],
    [{ ...item, lineMetres }, 'Costs up to 3.2 m of crowd line.'],
    [
      { ...item, cost: 'stop', lineMetres } as const,
      'Costs a stop: NOT TO RUN without it, and up to 3.2 m of crowd line.',
    ],
    [{ ...item, cost: 'note' } as const, 'Costs nothing yet.'],
  ])('of %j: %s', (what, words) => {
    expect(costInWords(what)).toBe(words);
  });
});
