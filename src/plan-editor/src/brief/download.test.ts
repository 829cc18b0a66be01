import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fileNameOf } from './download';

it.each([
  ['Open field with a neighbour', 'Open field with a neighbour.pdf'],
  ['Été 2027: démo / essai', 'Été 2027 démo essai.pdf'],
  ['../../etc/passwd', 'etc passwd.pdf'],
  ['   ', 'Plan.pdf'],
])('names the file of "%s" %s', (title, name) => {
  expect(fileNameOf(title, 'pdf')).toBe(name);
});

it('never gives a name that leads to another folder or hides', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (title) => {
      const name = fileNameOf(title, 'pdf');
      expect(name).not.toMatch(/[/\\:]|^\.|\s\./u);
    }),
  );
});
