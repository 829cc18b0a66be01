import { describe, expect, it } from 'vitest';
import type { PlanPoints } from '../plan/planFile';
import { FirstView } from './firstView';
import type { Frame } from './geometry/frame';

const outline: PlanPoints = [
  [0, 0],
  [9, 0],
  [9, 9],
];
const frame: Frame = { middle: [5, 5], metresPerPixel: 0.1, widthPixels: 400, heightPixels: 300 };

function shown(): FirstView {
  const first = new FirstView();
  first.shown(outline, frame);
  return first;
}

describe('FirstView', () => {
  it('is due when a plan is opened, and once it is shown no more', () => {
    expect(new FirstView().isDue(outline, frame)).toBe(true);
    expect(shown().isDue(outline, frame)).toBe(false);
    expect(shown().isDue([...outline], frame)).toBe(true);
  });

  it('is due when the sheet changes size under a view nobody has moved', () => {
    expect(shown().isDue(outline, { ...frame, heightPixels: 200 })).toBe(true);
  });

  it.each([
    ['shifted', { middle: [6, 5] as const }],
    ['brought closer', { metresPerPixel: 0.05 }],
  ])('leaves a view alone that somebody has %s', (_, change) => {
    expect(shown().isDue(outline, { ...frame, ...change, heightPixels: 200 })).toBe(false);
  });
});
