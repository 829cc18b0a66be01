import { describe, expect, it } from 'vitest';
import { keyStep } from './keyStep';

describe('keyStep', () => {
  it.each([
    ['ArrowRight', false, [0.1, 0, 0]],
    ['ArrowLeft', true, [-1, 0, 0]],
    ['ArrowUp', false, [0, 0.1, 0]],
    ['ArrowDown', true, [0, -1, 0]],
    [']', false, [0, 0, 1]],
    ['[', false, [0, 0, -1]],
    ['}', true, [0, 0, 10]],
    ['{', true, [0, 0, -10]],
    ['r', false, [0, 0, 1]],
    ['R', true, [0, 0, 10]],
  ] as const)('takes %s, Shift %s, as %j', (key, shiftKey, [rightMetres, upMetres, turnDegrees]) => {
    expect(keyStep({ key, shiftKey })).toEqual({ rightMetres, upMetres, turnDegrees });
  });

  it.each(['Tab', 'Enter', ' ', 'a', 'Home'])('leaves %j alone', (key) => {
    expect(keyStep({ key, shiftKey: false })).toBeNull();
  });
});
