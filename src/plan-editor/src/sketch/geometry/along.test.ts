import { describe, expect, it } from 'vitest';
import { along } from './along';

describe('along', () => {
  it.each([
    [0, [1, 7]],
    [90, [6, 2]],
    [180, [1, -3]],
    [270, [-4, 2]],
  ] as const)('goes 5 m at %d° to %j', (heading, [x, y]) => {
    const [alongX, alongY] = along([1, 2], heading, 5);

    expect(alongX).toBeCloseTo(x, 12);
    expect(alongY).toBeCloseTo(y, 12);
  });
});
