import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { begun, type History, mostSteps, redone, stepped, undone } from './history';

type Deed = { readonly kind: 'step'; readonly value: number } | { readonly kind: 'undo' | 'redo' };

const deed: fc.Arbitrary<Deed> = fc.oneof(
  fc.record({ kind: fc.constant('step' as const), value: fc.integer() }),
  fc.record({ kind: fc.constantFrom('undo' as const, 'redo' as const) }),
);

function done(history: History<number>, { kind, ...rest }: Deed): History<number> {
  if (kind === 'step' && 'value' in rest) {
    return stepped(history, `to ${rest.value}`, rest.value);
  }
  return kind === 'undo' ? undone(history) : redone(history);
}

/** The plain model: a list of values and a finger on one of them. */
function modelled(deeds: readonly Deed[]): number {
  let values = [0];
  let at = 0;
  for (const deed of deeds) {
    if (deed.kind === 'step') {
      values = [...values.slice(0, at + 1), deed.value];
      at++;
    } else {
      at = Math.min(Math.max(at + (deed.kind === 'undo' ? -1 : 1), 0), values.length - 1);
    }
  }
  return values[at] ?? Number.NaN;
}

describe('history', () => {
  it('is at the same value as a list with a finger on it', () => {
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 100 }), (deeds) => {
        expect(deeds.reduce(done, begun(0)).now).toBe(modelled(deeds));
      }),
    );
  });

  it('comes back to where it was when everything taken back is done again', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { maxLength: 50 }), fc.nat(60), (values, times) => {
        const before = values.reduce((h, v) => stepped(h, `to ${v}`, v), begun(0));
        let history = before;
        for (let i = 0; i < times; i++) history = undone(history);
        for (let i = 0; i < times; i++) history = redone(history);
        expect(history).toEqual(before);
      }),
    );
  });

  it('never keeps more steps than it says, and forgets the oldest', () => {
    let history = begun(0);
    for (let i = 1; i <= mostSteps + 5; i++) history = stepped(history, `to ${i}`, i);

    expect(history.past).toHaveLength(mostSteps);
    for (let i = 0; i < mostSteps; i++) history = undone(history);
    expect(history.now).toBe(5);
    expect(undone(history)).toBe(history);
  });

  it('gives a step its name on the way back and on the way forward', () => {
    const history = stepped(stepped(begun(0), 'Move Bramble', 1), 'Turn Bramble', 2);

    expect(history.past.at(-1)?.name).toBe('Turn Bramble');
    expect(undone(history).future.at(-1)?.name).toBe('Turn Bramble');
    expect(undone(history).past.at(-1)?.name).toBe('Move Bramble');
  });
});
