import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlanPoint } from '../../plan/planFile';
import type { Area } from '../../service/answers';
import { distanceMetres } from './distance';
import { movedZone, type Pose } from './movedZone';

const metres = fc.double({ min: -500, max: 500, noNaN: true });
const point = fc.tuple(metres, metres) as fc.Arbitrary<PlanPoint>;
const pose: fc.Arbitrary<Pose> = fc.record({
  place: point,
  headingDegrees: fc.double({ min: 0, max: 359.9, noNaN: true }),
});
const area: fc.Arbitrary<Area> = fc.array(
  fc.array(fc.array(point, { minLength: 3, maxLength: 9 }), { minLength: 1, maxLength: 2 }),
  {
    minLength: 1,
    maxLength: 3,
  },
);

function pointsOf(moved: Area): readonly PlanPoint[] {
  return moved.flat(2);
}

describe('movedZone', () => {
  it('keeps every distance inside the zone', () => {
    fc.assert(
      fc.property(area, pose, pose, (zone, from, to) => {
        const before = pointsOf(zone);
        const after = pointsOf(movedZone(zone, from, to));
        const [a, b] = [before[0], after[0]];
        before.forEach((p, i) => {
          expect(distanceMetres(after[i] ?? [0, 0], b ?? [0, 0])).toBeCloseTo(
            distanceMetres(p, a ?? [0, 0]),
            6,
          );
        });
      }),
    );
  });

  it('keeps every distance from the engine', () => {
    fc.assert(
      fc.property(area, pose, pose, (zone, from, to) => {
        const after = pointsOf(movedZone(zone, from, to));
        pointsOf(zone).forEach((p, i) => {
          expect(distanceMetres(after[i] ?? [0, 0], to.place)).toBeCloseTo(distanceMetres(p, from.place), 6);
        });
      }),
    );
  });

  it('changes nothing where the engine has not moved', () => {
    // Adding a shift of nothing makes 0 of -0, which toBe would tell apart and a plan does not.
    fc.assert(
      fc.property(area, pose, (zone, at) => {
        const after = pointsOf(movedZone(zone, at, at));
        return pointsOf(zone).every(([x, y], i) => after[i]?.[0] === x && after[i]?.[1] === y);
      }),
    );
  });

  it('comes back there and back', () => {
    fc.assert(
      fc.property(area, pose, pose, (zone, from, to) => {
        const back = pointsOf(movedZone(movedZone(zone, from, to), to, from));
        pointsOf(zone).forEach(([x, y], i) => {
          expect(back[i]?.[0]).toBeCloseTo(x, 6);
          expect(back[i]?.[1]).toBeCloseTo(y, 6);
        });
      }),
    );
  });

  it('turns clockwise as seen from above: what lay ahead at heading 0 lies to the right at heading 90', () => {
    const [[[ahead]]] = movedZone(
      [[[[0, 10]]]],
      { place: [0, 0], headingDegrees: 0 },
      { place: [100, 50], headingDegrees: 90 },
    ) as [[[PlanPoint]]];

    expect(ahead[0]).toBeCloseTo(110, 9);
    expect(ahead[1]).toBeCloseTo(50, 9);
  });
});
