import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { sections } from './sections';

/** The labels of the lexicon: second column of its table, several to a cell parted by commas. */
function lexicon(): ReadonlySet<string> {
  const decisions = readFileSync(new URL('../../../../docs/decisions.md', import.meta.url), 'utf8');
  const table = decisions.slice(decisions.indexOf('# Lexicon')).split('\n');
  const cells = table.filter((line) => line.startsWith('|')).map((line) => line.split('|')[2] ?? '');
  return new Set(cells.flatMap((cell) => cell.split(',')).map((label) => label.trim()));
}

it.each(sections.map(({ label }) => label))('section "%s" stands in the lexicon', (label) => {
  expect(lexicon()).toContain(label);
});

it('the lexicon is read as it is meant', () => {
  expect(lexicon()).toContain('crowd line');
  expect(lexicon()).not.toContain('the drawer of another tool');
  expect(lexicon().size).toBeGreaterThan(20);
});
