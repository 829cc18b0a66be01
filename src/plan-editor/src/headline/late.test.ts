import { signal } from '@preact/signals';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { late, lateMilliseconds } from './late';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it('is true only after a moment without a break', () => {
  const other = signal(true);
  const shown = late(other);
  vi.advanceTimersByTime(lateMilliseconds - 1);
  expect(shown.value).toBe(false);

  other.value = false;
  other.value = true;
  vi.advanceTimersByTime(lateMilliseconds - 1);
  expect(shown.value).toBe(false);
  vi.advanceTimersByTime(1);
  expect(shown.value).toBe(true);

  other.value = false;
  expect(shown.value).toBe(false);
});
