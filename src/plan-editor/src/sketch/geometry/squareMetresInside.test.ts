import { describe, expect, it } from 'vitest';
import { squareMetresInside } from './squareMetresInside';

describe('squareMetresInside', () => {
  it('is the same whichever way round an outline runs', () => {
    const triangle = [
      [100, 100],
      [104, 100],
      [100, 103],
    ] as const;

    expect(squareMetresInside(triangle)).toBeCloseTo(6, 9);
    expect(squareMetresInside([...triangle].reverse())).toBeCloseTo(6, 9);
  });
});
