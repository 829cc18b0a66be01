import { describe, expect, it } from 'vitest';
import type { PlanFile } from '../plan/planFile';
import { placeOf } from './placeOf';

const plan: PlanFile = {
  schema: 'showsafety-plan/1',
  title: 'A field',
  site: { outline: [], exits: [{ id: 'gate', place: [7, 8] }] },
  engines: [{ id: 'fern', place: [1, 2] }],
  crowdLine: {
    line: [
      [3, 4],
      [5, 6],
    ],
  },
};

describe('placeOf', () => {
  it.each([
    ['fern', [1, 2]],
    ['gate', [7, 8]],
    ['crowdLine', [3, 4]],
    ['somebody else', null],
  ])('finds %s at %j', (id, place) => {
    expect(placeOf(plan, id)).toEqual(place);
  });
});
