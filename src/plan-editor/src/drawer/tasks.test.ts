import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FindingEntry } from '../service/answers';
import { type Severity, tasksOf } from './tasks';

function entry(severity: Severity, sentence: string, remedy: string): FindingEntry {
  return { sentence, remedy, finding: { code: 'x', severity, cannotTell: false } };
}

describe('tasksOf', () => {
  it('names a deed once with everything that asks for it, in the order given', () => {
    const tasks = tasksOf([
      entry('stop', 'a is loud', 'Measure.'),
      entry('stop', 'no rotor', 'Ask the maker.'),
      entry('stop', 'b is loud', 'Measure.'),
      entry('stop', 'b is loud', 'Measure.'),
      entry('note', 'c is loud', 'Measure.'),
    ]);

    expect(tasks.map((t) => [t.severity, t.remedy, t.findings.map((f) => f.sentence)])).toEqual([
      ['stop', 'Measure.', ['a is loud', 'b is loud']],
      ['stop', 'Ask the maker.', ['no rotor']],
      ['note', 'Measure.', ['c is loud']],
    ]);
  });

  it('loses no sentence of any severity', () => {
    const word = fc.constantFrom('a', 'b', 'c');
    const anyEntry = fc
      .tuple(fc.constantFrom<Severity>('stop', 'act', 'note'), word, word)
      .map(([severity, sentence, remedy]) => entry(severity, sentence, remedy));
    fc.assert(
      fc.property(fc.array(anyEntry), (entries) => {
        const text = (f: FindingEntry) => `${f.finding.severity} ${f.sentence} ${f.remedy}`;
        const kept = tasksOf(entries).flatMap((task) => task.findings);
        expect(new Set(kept.map(text))).toEqual(new Set(entries.map(text)));
      }),
    );
  });
});
