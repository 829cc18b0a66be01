import { expect, it } from 'vitest';
import { nameOf, shortNameOf } from './names';
import type { PlanFile } from './planFile';

const plan = {
  schema: 'showsafety-plan/1',
  title: 'A field',
  site: { outline: [], exits: [{ id: 'gate', name: 'West gate', place: [0, 0] }] },
  engines: [
    {
      id: 'bramble',
      name: 'Bramble, bench demonstrator',
      place: [0, 0],
      sheet: { rotors: [{ id: 'wheel' }] },
    },
  ],
} as unknown as PlanFile;

it.each([
  ['gate', 'West gate', 'West gate'],
  ['bramble', 'Bramble, bench demonstrator', 'Bramble'],
  ['wheel', 'wheel', 'wheel'],
  ['nobody', 'nobody', 'nobody'],
])('calls %s by its name', (id, name, short) => {
  expect(nameOf(plan, id)).toBe(name);
  expect(shortNameOf(plan, id)).toBe(short);
});
