import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { planOf } from '../desk/fakeAssess';
import type { PlanFile, PlanPoint } from '../plan/planFile';
import type { PlaceAnswer } from '../service/answers';
import { Refusal } from '../service/refusal';
import { watchSpot, wordsFor } from './spotAnswer';

const answer: PlaceAnswer = {
  place: [1, 2],
  loud: 'loud',
  stay: 'stay',
  wear: 'wear',
  why: 'why',
  forChild: {},
  forCrew: { wear: 'crew wear' },
};
const rest = () => new Promise((resolve) => setTimeout(resolve));

describe('watchSpot', () => {
  it('asks about the spot, anew when the plan changed, and drops the older question', async () => {
    const spot = signal<PlanPoint | null>(null);
    const settled = signal<PlanFile | null>(planOf('a'));
    const asked: { title: string; signal: AbortSignal }[] = [];
    const state = watchSpot(
      { spot, settled },
      {
        askPlace: async ({ title }, _, abort) => {
          asked.push({ title, signal: abort });
          await rest();
          return { ...answer, loud: title };
        },
      },
    );
    expect(state.value.kind).toBe('none');

    spot.value = [1, 2];
    expect(state.value).toEqual({ kind: 'asking', place: [1, 2] });
    settled.value = planOf('b');
    expect(asked.map((q) => [q.title, q.signal.aborted])).toEqual([
      ['a', true],
      ['b', false],
    ]);
    await rest();
    await rest();
    expect(state.value).toMatchObject({ kind: 'known', answer: { loud: 'b' } });

    spot.value = null;
    expect(state.value.kind).toBe('none');
  });

  it('says why nothing can be told', async () => {
    const state = watchSpot(
      { spot: signal<PlanPoint | null>([1, 2]), settled: signal<PlanFile | null>(planOf('a')) },
      { askPlace: () => Promise.reject(new Refusal(503, 'It took too long.')) },
    );
    await rest();

    expect(state.value).toEqual({ kind: 'trouble', place: [1, 2], why: 'It took too long.' });
  });
});

describe('wordsFor', () => {
  it('puts in what is different for a child or for crew', () => {
    expect(wordsFor(answer, 'visitor')).toEqual({ loud: 'loud', stay: 'stay', wear: 'wear', why: 'why' });
    expect(wordsFor(answer, 'child')).toEqual(wordsFor(answer, 'visitor'));
    expect(wordsFor(answer, 'crew')).toEqual({ loud: 'loud', stay: 'stay', wear: 'crew wear', why: 'why' });
  });
});
