import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelWindow } from './levelWindow';

describe('levelWindow', () => {
  it('covers what is in view and a little more', () => {
    const frame = { middle: [10, -20], metresPerPixel: 0.1, widthPixels: 800, heightPixels: 400 } as const;
    const window = levelWindow(frame, 40);

    expect(window?.lowerLeft).toEqual([-38, -44]);
    expect(window?.stepMetres).toBeCloseTo(2.4, 12);
    expect((window?.columns ?? 0) * 2.4).toBeGreaterThanOrEqual(80);
    expect((window?.rows ?? 0) * 2.4).toBeGreaterThanOrEqual(40);
  });

  it('asks for nothing the service refuses (docs/openapi.json, DrawLevels), whatever is in view', () => {
    const frames = fc.record({
      middle: fc.tuple(
        fc.double({ min: -9000, max: 9000, noNaN: true }),
        fc.double({ min: -9000, max: 9000, noNaN: true }),
      ),
      metresPerPixel: fc.double({ min: 0.004, max: 10, noNaN: true }),
      widthPixels: fc.integer({ min: 1, max: 4000 }),
      heightPixels: fc.integer({ min: 1, max: 4000 }),
    });
    fc.assert(
      fc.property(frames, fc.constantFrom(40, 160), (frame, steps) => {
        const window = levelWindow(frame, steps);
        if (window === null) {
          return;
        }
        const { lowerLeft, stepMetres, columns, rows } = window;
        expect(Math.min(...lowerLeft)).toBeGreaterThanOrEqual(-5000);
        expect(Math.max(...lowerLeft)).toBeLessThanOrEqual(5000);
        expect(stepMetres).toBeGreaterThanOrEqual(0.05);
        expect(stepMetres).toBeLessThanOrEqual(100);
        expect(Math.min(columns, rows)).toBeGreaterThanOrEqual(2);
        expect(Math.max(columns, rows)).toBeLessThanOrEqual(600);
      }),
    );
  });

  it('has nothing to ask for beyond the world of plans', () => {
    const frame = { middle: [9000, 0], metresPerPixel: 0.1, widthPixels: 800, heightPixels: 400 } as const;

    expect(levelWindow(frame, 40)).toBeNull();
  });
});
