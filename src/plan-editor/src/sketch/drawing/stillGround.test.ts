import { effect, signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { movedEngine, movedLineCorner } from '../../plan/edits';
import type { PlanFile } from '../../plan/planFile';
import { stillGround } from './stillGround';

const plan: PlanFile = {
  schema: 'showsafety-plan/1',
  title: 'A field',
  site: { outline: [] },
  engines: [{ id: 'fern', place: [0, 0] }],
  crowdLine: { line: [[0, 0]] },
};

describe('stillGround', () => {
  it('paints the ground once, however often an engine or the crowd line moves', () => {
    const now = signal<PlanFile | null>(plan);
    const ground = stillGround(now);
    let painted = 0;
    effect(() => {
      painted += ground.value === null ? 0 : 1;
    });
    for (let i = 1; i <= 30; i++) {
      now.value = movedLineCorner(0, [i, i])(movedEngine('fern', [i, 0])(plan));
    }

    expect(painted).toBe(1);
    now.value = { ...plan, site: { outline: [[1, 1]] } };
    expect(painted).toBe(2);
  });
});
