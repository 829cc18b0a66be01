import { describe, expect, it } from 'vitest';
import type { PlanFile, PlanPoints } from '../plan/planFile';
import { elementAt } from './elementAt';
import { elementsOf, middleOf } from './elements';

const square = (left: number, low: number, side: number): PlanPoints => [
  [left, low],
  [left + side, low],
  [left + side, low + side],
  [left, low + side],
];

const plan: PlanFile = {
  schema: 'showsafety-plan/1',
  title: 'A field',
  site: {
    outline: square(-50, -50, 100),
    enclosure: { id: 'marquee', kind: 'tent', footprint: square(0, 0, 20) },
    stands: [{ id: 'tea', name: 'Tea', outline: square(2, 2, 4) }],
    exits: [{ id: 'gate', place: [-40, 0] }],
    structures: [
      {
        id: 'wall',
        name: 'Wall',
        line: [
          [30, 0],
          [30, 20],
        ],
      },
    ],
  },
  people: [
    { id: 'visitors', name: 'Visitors', role: 'visitor', area: square(-30, -30, 20) },
    { id: 'operator', role: 'crew', place: [3, 3] },
    { id: 'nowhere', role: 'crew' },
  ],
  supplies: { fuel: [{ id: 'can', place: [12, 12] }] },
};
const elements = elementsOf(plan);

describe('elementsOf', () => {
  it('lists what stands somewhere, each once, and calls the nameless by their kind', () => {
    expect(elements.map(({ id, name }) => [id, name])).toEqual([
      ['marquee', 'Tent'],
      ['wall', 'Wall'],
      ['tea', 'Tea'],
      ['visitors', 'Visitors'],
      ['gate', 'Way out'],
      ['can', 'Fuel store'],
      ['operator', 'People'],
    ]);
  });

  it('lists nothing of a plan that holds nothing', () => {
    expect(elementsOf({ schema: '', title: '', site: { outline: [] } })).toEqual([]);
  });
});

describe('middleOf', () => {
  it('is the mean of the points', () => {
    expect(middleOf({ points: square(2, 2, 4) })).toEqual([4, 4]);
  });
});

describe('elementAt', () => {
  it.each([
    ['the nearest place within reach', [12.5, 12], 'can'],
    ['a place rather than the outline it stands in', [3.2, 3], 'operator'],
    ['the outline where no place is in reach', [5.5, 5.5], 'tea'],
    ['a line', [30.5, 10], 'wall'],
    ['a large area at its edge', [-30.2, -20], 'visitors'],
    ['the edge of the enclosure', [20, 15], 'marquee'],
  ] as const)('means %s', (_, tapped, id) => {
    expect(elementAt(elements, tapped, 1)?.id).toBe(id);
  });

  it.each([
    ['inside a crowd', [-20, -20]],
    ['inside the tent', [16, 6]],
    ['on open ground', [40, 40]],
  ] as const)('means the place itself %s', (_, tapped) => {
    expect(elementAt(elements, tapped, 1)).toBeNull();
  });
});
