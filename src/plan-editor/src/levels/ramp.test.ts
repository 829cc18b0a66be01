import { describe, expect, it } from 'vitest';
import { darkestDbA, palestDbA, toneOf } from './ramp';

// Relative luminance and contrast by WCAG 2.2.
function luminance(rgb: readonly number[]): number {
  const [r = 0, g = 0, b = 0] = rgb.map((part) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

describe('toneOf', () => {
  it('is darker for every louder decibel', () => {
    for (let level = palestDbA; level < darkestDbA; level++) {
      expect(luminance(toneOf(level + 1))).toBeLessThan(luminance(toneOf(level)));
    }
  });

  it('stays within its ends', () => {
    expect(toneOf(-300)).toEqual(toneOf(palestDbA));
    expect(toneOf(300)).toEqual(toneOf(darkestDbA));
  });

  it('leaves ink readable on its darkest tone: 3 to 1, what WCAG 2.2 asks of graphics (1.4.11)', () => {
    const ink = luminance([0x15, 0x20, 0x2b]);

    expect((luminance(toneOf(darkestDbA)) + 0.05) / (ink + 0.05)).toBeGreaterThan(3);
  });
});
