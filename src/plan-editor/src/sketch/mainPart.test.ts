import { describe, expect, it } from 'vitest';
import type { PlanFile } from '../plan/planFile';
import { mainPart } from './mainPart';

const site = {
  outline: [
    [-500, -500],
    [500, -500],
    [500, 500],
  ],
} as const;
const bare: PlanFile = { schema: 'showsafety-plan/1', title: 'a', site };
const engine = { id: 'e', place: [0, 0], exhaustHeadingDegrees: 0 } as const;

describe('mainPart', () => {
  it('is the whole site while nothing stands on it', () => {
    expect(mainPart(bare)).toBe(site.outline);
  });

  it('holds engines, the crowd line and people, with room round them', () => {
    const [lowerLeft, , upperRight] = mainPart({
      ...bare,
      engines: [engine],
      crowdLine: {
        line: [
          [-20, -10],
          [20, -10],
        ],
      },
      people: [
        {
          id: 'v',
          role: 'visitor',
          area: [
            [-5, -30],
            [5, -30],
            [5, -12],
          ],
        },
      ],
    });
    expect(lowerLeft?.[0]).toBeLessThan(-20);
    expect(lowerLeft?.[1]).toBeLessThan(-30);
    expect(lowerLeft?.[0]).toBeGreaterThan(-30);
    expect(upperRight?.[1]).toBeGreaterThan(6);
  });

  it('leaves out neighbours far away', () => {
    const people = [{ id: 'n', role: 'neighbour', place: [400, 400] as const }];
    const [, , upperRight] = mainPart({ ...bare, engines: [engine], people });
    expect(upperRight?.[0]).toBeLessThan(20);
  });
});
