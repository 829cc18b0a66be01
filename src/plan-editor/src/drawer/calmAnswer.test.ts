import { expect, it } from 'vitest';
import { createDesk } from '../desk/createDesk';
import { fakeAssess, planOf } from '../desk/fakeAssess';
import { retitled } from '../plan/edits';
import { calmAnswer } from './calmAnswer';

it('leaves the drawer as it is while a finger is down, and tells the answer that lands afterwards', async () => {
  const { asked, assess } = fakeAssess();
  const desk = createDesk(assess);
  const calm = calmAnswer(desk);
  desk.open(planOf('a'));
  await asked.at(-1)?.answer();
  expect(calm.value?.plan.title).toBe('a');

  desk.move(retitled('b'));
  await asked.at(-1)?.answer();
  expect(desk.answer.value?.plan.title).toBe('b');
  expect(calm.value?.plan.title).toBe('a');

  desk.change('Rename', retitled('c'));
  await asked.at(-1)?.answer();
  expect(calm.value?.plan.title).toBe('c');
});
