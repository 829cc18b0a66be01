import { describe, expect, it } from 'vitest';
import type { Engine } from '../../plan/planFile';
import { distanceMetres } from '../geometry/distance';
import { benchOf } from './bench';

const engine: Engine = {
  id: 'fern',
  place: [10, 20],
  exhaustHeadingDegrees: 90,
  bench: { lengthMetres: { value: 1.2 }, widthMetres: { value: 0.7 } },
};

describe('benchOf', () => {
  it('is true to scale from near by, with the nozzle in the middle of its front edge', () => {
    const { corners, lengthMetres } = benchOf(engine, 0.005);
    const [right = [0, 0], left = [0, 0], backLeft = [0, 0]] = corners;

    expect(lengthMetres).toBe(1.2);
    expect(distanceMetres(right, left)).toBeCloseTo(0.7, 9);
    expect(distanceMetres(left, backLeft)).toBeCloseTo(1.2, 9);
    expect((right[0] + left[0]) / 2).toBeCloseTo(10, 9);
    expect((right[1] + left[1]) / 2).toBeCloseTo(20, 9);
  });

  it('lies behind the nozzle and the handle before it', () => {
    const { middle, armEnd } = benchOf(engine, 0.01);

    expect(middle[0]).toBeCloseTo(9.4, 9);
    expect(armEnd[0]).toBeGreaterThan(10);
    expect(armEnd[1]).toBeCloseTo(20, 9);
  });

  it('keeps handle and bench apart by more than a finger, however far the view', () => {
    for (const metresPerPixel of [0.005, 0.05, 0.5, 5]) {
      const { middle, armEnd } = benchOf(engine, metresPerPixel);

      expect(distanceMetres(middle, armEnd) / metresPerPixel).toBeGreaterThan(44);
    }
  });

  it('draws a bench without a size and an exhaust without a heading', () => {
    const { lengthMetres, armEnd } = benchOf({ id: 'bare', place: [0, 0] }, 0.005);

    expect(lengthMetres).toBeGreaterThan(0);
    expect(armEnd[0]).toBeCloseTo(0, 9);
    expect(armEnd[1]).toBeGreaterThan(0);
  });
});
