import { describe, expect, it } from 'vitest';
import { clockTime, conflictInWords, saveStateInWords } from './saveState';

const now = new Date(2027, 5, 26, 16, 0);
const at = new Date(2027, 5, 26, 14, 5);

describe('saveStateInWords', () => {
  it('gives the local time of the last save', () => {
    expect(saveStateInWords({ kind: 'saved', at }, now)).toBe('Saved at 14:05');
  });

  it.each([{ kind: 'failed', why: 'x' } as const, { kind: 'conflict', theirs: null, at: null } as const])(
    'never calls $kind saved',
    (state) => {
      expect(saveStateInWords(state, now)).toMatch(/^Not saved/);
    },
  );
});

describe('clockTime', () => {
  it('adds the date of another day', () => {
    expect(clockTime(new Date(2027, 5, 25, 9, 30), now)).toBe('09:30 on 25 June 2027');
  });
});

describe('conflictInWords', () => {
  it('says when the other window changed the plan', () => {
    const theirs = { plan: { schema: '', title: '', site: { outline: [] } }, tag: '"2"' };
    expect(conflictInWords({ kind: 'conflict', theirs, at }, now)).toBe(
      'This plan was changed in another window at 14:05.',
    );
  });

  it('says that the other window removed it', () => {
    expect(conflictInWords({ kind: 'conflict', theirs: null, at: null }, now)).toContain('removed');
  });
});
