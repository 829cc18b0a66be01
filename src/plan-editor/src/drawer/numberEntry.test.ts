import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber } from './numberEntry';

const metres = { label: 'x', unit: 'm', least: -5000, most: 5000 };

describe('readNumber', () => {
  it.each([
    ['1.5', 1.5],
    [' 1,5 ', 1.5],
    ['−2', -2],
    ['-2', -2],
    ['+.5', 0.5],
    ['5000', 5000],
    ['-5000', -5000],
  ])('takes "%s" as %d', (text, value) => {
    expect(readNumber(text, metres)).toEqual({ valid: true, value });
  });

  it.each(['', 'x', '1e3', '5000.1', '-5000.1', 'NaN', 'Infinity', '1.2.3', '0x10', '1,000.5'])(
    'refuses "%s" and says what is allowed',
    (text) => {
      expect(readNumber(text, metres)).toEqual({
        valid: false,
        reason: `x can’t be “${text}”. Allowed: a number from -5000 to 5000 m.`,
      });
    },
  );

  it('never gives a number outside the range', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.double().map(String)), (text) => {
        const entry = readNumber(text, metres);
        expect(!entry.valid || (entry.value >= -5000 && entry.value <= 5000)).toBe(true);
      }),
    );
  });
});
