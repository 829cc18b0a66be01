import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { RuleSet } from '../service/answers';
import { limitsInWords, limitsOf } from './levelLimits';

// The rule sets the service gives are these files.
const folder = new URL('../../../ShowSafety.Core/Exposure/RuleSets/', import.meta.url);
const ruleSets = readdirSync(folder).map(
  (file) => JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as RuleSet,
);

describe('limitsOf', () => {
  it('gives the action values of Directive 2003/10/EC, Art. 3(1), without its peaks and its limit at the ear', () => {
    expect(limitsOf(ruleSets, ['eu-2003-10']).map(({ label }) => label)).toEqual([
      '80 dB(A) lower action level',
      '85 dB(A) upper action level',
    ]);
  });

  it('gives the criterion level of a whole dose: 85 dB(A) for NIOSH 98-126, 90 dB(A) for 29 CFR 1910.95', () => {
    const levels = limitsOf(ruleSets, ['niosh-1998', 'osha-1910-95']).map(({ levelDbA }) => levelDbA);
    expect(levels).toEqual([85, 90, 115, 140]);
  });

  it('makes one line of two rules with the same level, and names both', () => {
    const limits = limitsOf(ruleSets, ['eu-2003-10', 'niosh-1998', 'who-venues-2022']);
    expect(limits.filter(({ levelDbA }) => levelDbA === 85)).toHaveLength(1);
    expect(limits.find(({ levelDbA }) => levelDbA === 85)?.rules).toHaveLength(2);
    expect(limitsInWords(limits)[0]).toBe('80, 85 dB(A): Directive 2003/10/EC on noise at work');
  });

  it('has nothing for no rule', () => {
    expect(limitsOf(ruleSets, [])).toEqual([]);
  });
});
