import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laidLine, movedEngine, movedLineCorner, retitled, turnedEngine } from './edits';
import type { PlanFile } from './planFile';

const plan = {
  schema: 'showsafety-plan/1',
  title: 'A field',
  notes: 'kept',
  site: {
    outline: [
      [0, 0],
      [9, 0],
      [9, 9],
    ],
    air: { kept: true },
  },
  engines: [
    { id: 'a', place: [1, 1], exhaustHeadingDegrees: 10, sheet: { kept: true } },
    { id: 'b', place: [2, 2] },
  ],
  crowdLine: {
    line: [
      [0, 5],
      [9, 5],
    ],
    panelHeightMetres: { value: 1.1 },
  },
} as unknown as PlanFile;

describe('movedEngine', () => {
  it('moves the named engine to the millimetre and carries every other member along', () => {
    const moved = movedEngine('a', [3.00049, -2])(plan);

    expect(moved).toEqual({
      ...plan,
      engines: [
        { id: 'a', place: [3, -2], exhaustHeadingDegrees: 10, sheet: { kept: true } },
        plan.engines?.[1],
      ],
    });
    expect(plan.engines?.[0]?.place).toEqual([1, 1]);
  });

  it('leaves a plan without that engine as it is', () => {
    expect(movedEngine('c', [3, 3])(plan)).toEqual(plan);
  });
});

describe('turnedEngine', () => {
  it.each([
    [370, 10],
    [-90, 270],
    [360, 0],
    [359.96, 0],
    [12.34, 12.3],
  ])('takes %d degrees as %d', (degrees, expected) => {
    expect(turnedEngine('b', degrees)(plan).engines?.[1]?.exhaustHeadingDegrees).toBe(expected);
  });

  it('always gives a heading from 0 to below 360', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (degrees) => {
        const heading = turnedEngine('a', degrees)(plan).engines?.[0]?.exhaustHeadingDegrees ?? -1;
        return heading >= 0 && heading < 360;
      }),
    );
  });
});

describe('movedLineCorner', () => {
  it('moves one corner of the crowd line', () => {
    expect(movedLineCorner(1, [8, 4])(plan).crowdLine).toEqual({
      line: [
        [0, 5],
        [8, 4],
      ],
      panelHeightMetres: { value: 1.1 },
    });
  });

  it.each([2, -1])('has no corner %d to move', (corner) => {
    expect(movedLineCorner(corner, [8, 4])(plan)).toEqual(plan);
  });
});

describe('laidLine', () => {
  const line = [
    [1, 2],
    [3.00049, 4],
  ] as const;

  it('lays the line to the millimetre and keeps its panels', () => {
    expect(laidLine(line)(plan).crowdLine).toEqual({
      line: [
        [1, 2],
        [3, 4],
      ],
      panelHeightMetres: { value: 1.1 },
    });
  });

  it('gives a line to a plan that has none', () => {
    const { crowdLine: _, ...without } = plan;

    expect(laidLine(line)(without).crowdLine).toEqual({
      line: [
        [1, 2],
        [3, 4],
      ],
    });
  });
});

it('retitled changes the title and nothing else', () => {
  expect(retitled('Another field')(plan)).toEqual({ ...plan, title: 'Another field' });
});
