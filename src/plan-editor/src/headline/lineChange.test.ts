import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDesk } from '../desk/createDesk';
import { assessmentOf, fakeAssess, planOf } from '../desk/fakeAssess';
import { retitled } from '../plan/edits';
import { headlineParts } from './headlineParts';
import { lineChangeInWords } from './lineChange';
import { watchLine } from './lineWatch';

const at = (...metres: number[]) => assessmentOf('x', ...metres);

describe('lineChangeInWords', () => {
  it.each([
    [[10], [11.8], 'Suggested line 1.8 m farther back'],
    [[10.4], [10], 'Suggested line 0.4 m closer'],
    [[10], [10.04], 'Suggested line unchanged'],
    [[12, 10], [12, 10.5], 'Suggested line 0.5 m farther back'],
    [[10], [], 'No crowd line can be suggested any more'],
    [[], [], 'No crowd line can be suggested'],
    [[], [10.5], 'A crowd line can be suggested: 10.5 m from the nozzle at its nearest'],
  ])('from %j m to %j m: %s', (before, after, words) => {
    expect(lineChangeInWords(at(...before), at(...after))).toBe(words);
  });

  it('says back and closer of the same way gone in either direction', () => {
    const metres = fc.double({ min: 1, max: 500, noNaN: true });
    fc.assert(
      fc.property(metres, metres, (a, b) => {
        fc.pre(Math.abs(a - b) >= 0.051);
        const size = /(\d+\.\d) m/;
        const [there, back] = [lineChangeInWords(at(a), at(b)), lineChangeInWords(at(b), at(a))];
        expect(there.includes('back')).toBe(b > a);
        expect(there.includes('closer')).toBe(b < a);
        expect(size.exec(there)?.[1]).toBe(size.exec(back)?.[1]);
      }),
    );
  });
});

describe('watchLine', () => {
  it('tells a finished change once, from rest to rest, whatever was dragged between', async () => {
    const lines = new Map([
      ['a', 10],
      ['b', 30],
      ['c', 12],
    ]);
    const { asked, assess } = fakeAssess();
    const desk = createDesk(async (plan, detail, signal) => {
      await assess(plan, detail, signal);
      return assessmentOf(plan.title, lines.get(plan.title) ?? 0);
    });
    const said = watchLine(desk);
    desk.open(planOf('a'));
    await asked.at(-1)?.answer();
    await asked.at(-1)?.answer();
    expect(said.value).toBeNull();

    desk.move(retitled('b'));
    await asked.at(-1)?.answer();
    expect(said.value).toBeNull();

    desk.change('move', retitled('c'));
    await asked.at(-1)?.answer();
    expect(said.value).toBe('Suggested line 2.0 m farther back');
    await asked.at(-1)?.answer();
    expect(said.value).toBe('Suggested line 2.0 m farther back');

    desk.open(planOf('b'));
    expect(said.value).toBeNull();
  });
});

describe('headlineParts', () => {
  it('parts the verdict from what it rests on', () => {
    expect(headlineParts('NOT TO RUN: 3 stops stand. First: no rotor.')).toEqual({
      verdict: 'NOT TO RUN',
      rest: '3 stops stand. First: no rotor.',
    });
    expect(headlineParts('No stop found with the data given: the line is near')).toEqual({
      verdict: 'No stop found with the data given',
      rest: 'The line is near',
    });
  });

  it('loses nothing of a sentence it does not know', () => {
    expect(headlineParts('NOT TO RUN')).toEqual({ verdict: 'NOT TO RUN', rest: '' });
  });
});
