import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Address, addressOf, hashOf } from './address';

it('reads what it writes', () => {
  const name = fc.string({ minLength: 1, unit: 'grapheme' });
  const address: fc.Arbitrary<Address> = fc.oneof(
    name.map((id) => ({ kind: 'plan' as const, id })),
    name.map((n) => ({ kind: 'example' as const, name: n })),
    fc.constant({ kind: 'none' as const }),
  );
  fc.assert(
    fc.property(address, (a) => {
      expect(addressOf(hashOf(a))).toEqual(a);
    }),
  );
});

it.each(['', '#', '#/', '#/plan/', '#/plan/a/b', '#/other/a', '#/plan/%'])(
  'takes "%s" as naming nothing',
  (hash) => {
    expect(addressOf(hash)).toEqual({ kind: 'none' });
  },
);
