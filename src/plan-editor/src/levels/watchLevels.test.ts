import { signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PlanFile } from '../plan/planFile';
import type { Frame } from '../sketch/geometry/frame';
import type { LevelGrid, LevelWindow } from './levelGrid';
import { watchLevels } from './watchLevels';

const plan: PlanFile = { schema: 'showsafety-plan/1', title: 'A field', site: { outline: [] } };
const seen: Frame = { middle: [0, 0], metresPerPixel: 0.1, widthPixels: 400, heightPixels: 400 };

interface Asked {
  readonly plan: PlanFile;
  readonly window: LevelWindow;
  readonly signal: AbortSignal;
  answer(known?: boolean): Promise<void>;
}

function trial() {
  const desk = { plan: signal<PlanFile | null>(plan), unchecked: signal(false) };
  const frame = signal<Frame | null>(seen);
  const on = signal(true);
  const asked: Asked[] = [];
  const { state, stop } = watchLevels({ desk, frame, on }, (of, window, aborted) => {
    let resolve: (grid: LevelGrid | null) => void = () => {};
    const promise = new Promise<LevelGrid | null>((settle) => {
      resolve = settle;
    });
    const answer = async (known = true) => {
      resolve(known ? { ...window, earHeightMetres: 1.55, planningDbA: new Float32Array() } : null);
      await vi.advanceTimersByTimeAsync(0);
    };
    asked.push({ plan: of, window, signal: aborted, answer });
    return promise;
  });
  return { desk, frame, on, asked, state, stop, rest: () => vi.advanceTimersByTimeAsync(500) };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('watchLevels', () => {
  it('asks for a coarse picture, then for a fine one', async () => {
    const { asked, state, rest } = trial();
    await rest();
    expect(state.value.kind).toBe('asking');
    await asked[0]?.answer();
    expect(state.value.kind).toBe('shown');
    await asked[1]?.answer();

    expect(asked).toHaveLength(2);
    expect(asked[1]?.window.columns).toBeGreaterThan(3 * (asked[0]?.window.columns ?? 0));
  });

  it('hides the picture as soon as the plan has moved on, and drops what was asked', async () => {
    const { desk, asked, state, rest } = trial();
    await rest();
    await asked[0]?.answer();
    desk.unchecked.value = true;

    expect(state.value.kind).toBe('off');
    expect(asked[1]?.signal.aborted).toBe(true);
    await asked[1]?.answer();
    expect(state.value.kind).toBe('off');
  });

  it('never shows the picture of another plan', async () => {
    const { desk, asked, state, rest } = trial();
    await rest();
    await asked[0]?.answer();
    desk.plan.value = { ...plan, title: 'Another' };
    expect(state.value.kind).toBe('asking');
    await rest();

    expect(asked.at(-1)?.plan.title).toBe('Another');
  });

  it('keeps the picture while the view moves and asks again when it rests', async () => {
    const { frame, asked, state, rest } = trial();
    await rest();
    await asked[0]?.answer();
    await asked[1]?.answer();
    frame.value = { ...seen, middle: [1, 0] };
    frame.value = { ...seen, middle: [5, 0] };
    expect(state.value.kind).toBe('shown');
    await rest();

    expect(asked).toHaveLength(3);
    expect(asked[2]?.window.lowerLeft[0]).toBeCloseTo(5 + (asked[0]?.window.lowerLeft[0] ?? 0), 9);
  });

  it('says that the level cannot be told and asks no further', async () => {
    const { asked, state, rest } = trial();
    await rest();
    await asked[0]?.answer(false);

    expect(state.value.kind).toBe('cannotTell');
    expect(asked).toHaveLength(1);
  });

  it('asks for nothing while it is switched off', async () => {
    const { on, asked, state, rest } = trial();
    on.value = false;
    await rest();

    expect(asked).toHaveLength(0);
    expect(state.value.kind).toBe('off');
  });

  it('tells why no picture came', async () => {
    const desk = { plan: signal<PlanFile | null>(plan), unchecked: signal(false) };
    const { state } = watchLevels({ desk, frame: signal<Frame | null>(seen), on: signal(true) }, () =>
      Promise.reject(new Error('broken')),
    );
    await vi.advanceTimersByTimeAsync(500);

    expect(state.value.kind).toBe('trouble');
  });
});
