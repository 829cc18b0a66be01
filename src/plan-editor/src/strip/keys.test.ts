import { expect, it } from 'vitest';
import { stepOf } from './keys';

const none = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

it.each([
  [{ key: 'z', ctrlKey: true }, 'undo'],
  [{ key: 'z', metaKey: true }, 'undo'],
  [{ key: 'Z', ctrlKey: true, shiftKey: true }, 'redo'],
  [{ key: 'Z', metaKey: true, shiftKey: true }, 'redo'],
  [{ key: 'y', ctrlKey: true }, 'redo'],
  [{ key: 'z' }, null],
  [{ key: 'z', ctrlKey: true, altKey: true }, null],
  [{ key: 'x', ctrlKey: true }, null],
] as const)('takes %j as %s', (stroke, step) => {
  expect(stepOf({ ...none, ...stroke })).toBe(step);
});
