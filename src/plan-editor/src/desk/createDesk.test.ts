import { describe, expect, it } from 'vitest';
import type { PlanFile } from '../plan/planFile';
import { Refusal } from '../service/refusal';
import { createDesk } from './createDesk';
import type { Edit } from './desk';
import { fakeAssess, planOf } from './fakeAssess';

function titled(title: string): Edit {
  return (plan) => ({ ...plan, title });
}

function appended(text: string): Edit {
  return (plan) => ({ ...plan, title: plan.title + text });
}

function opened(title = 'a') {
  const { asked, assess } = fakeAssess();
  const desk = createDesk(assess);
  desk.open(planOf(title));
  return { asked, desk };
}

describe('a plan at rest', () => {
  it('gets a quick answer at once and a full one after it', async () => {
    const { asked, desk } = opened();
    expect(asked.map((q) => q.detail)).toEqual(['drag']);
    expect(desk.unchecked.value).toBe(true);

    await asked[0]?.answer('quick');
    expect(desk.unchecked.value).toBe(false);
    expect(desk.answer.value?.assessment.headline).toBe('quick');
    expect(asked.map((q) => q.detail)).toEqual(['drag', 'full']);

    await asked[1]?.answer('whole');
    expect(desk.answer.value?.assessment.headline).toBe('whole');
    expect(asked).toHaveLength(2);
  });

  it('drops every question about an older plan', async () => {
    const { asked, desk } = opened();
    desk.change('rename', titled('b'));

    expect(asked[0]?.signal.aborted).toBe(true);
    await asked[0]?.answer('too late');
    expect(desk.answer.value).toBeNull();
    expect(asked[1]?.plan.title).toBe('b');
  });

  it('has a full answer ready again after undo', async () => {
    const { asked, desk } = opened();
    await asked[0]?.answer();
    await asked[1]?.answer('whole a');
    desk.change('rename', titled('b'));
    await asked[2]?.answer('quick b');

    desk.undo();
    expect(desk.unchecked.value).toBe(false);
    expect(desk.answer.value?.assessment.headline).toBe('whole a');
    expect(asked).toHaveLength(4);
    expect(asked[3]?.signal.aborted).toBe(true);
  });
});

describe('a movement', () => {
  it('has one question under way at a time, and the newest plan is next', async () => {
    const { asked, desk } = opened();
    await asked[0]?.answer();
    for (const title of ['1', '2', '3']) desk.move(titled(title));

    expect(asked[1]?.detail).toBe('full');
    expect(asked[1]?.signal.aborted).toBe(true);
    expect(asked.slice(2).map((q) => q.plan.title)).toEqual(['1']);

    await asked[2]?.answer();
    expect(asked.slice(3).map((q) => q.plan.title)).toEqual(['3']);
    expect(desk.answer.value?.plan.title).toBe('1');
    expect(desk.unchecked.value).toBe(true);

    await asked[3]?.answer();
    expect(desk.unchecked.value).toBe(false);
    expect(asked).toHaveLength(4);
  });

  it('applies each step to the plan as it was when the movement began', () => {
    const { desk } = opened();
    desk.move(appended('+'));
    desk.move(appended('+'));
    expect(desk.plan.value?.title).toBe('a+');
    expect(desk.settled.value?.title).toBe('a');

    desk.change('append', appended('!'));
    expect(desk.plan.value?.title).toBe('a!');
    expect(desk.undoName.value).toBe('append');
  });

  it('given up leaves the plan and its history as before', () => {
    const { asked, desk } = opened();
    desk.move(titled('b'));
    desk.giveUpMove();

    expect(desk.plan.value?.title).toBe('a');
    expect(desk.undoName.value).toBeNull();
    expect(asked.at(-1)?.plan.title).toBe('a');
  });

  it('that comes back to where it began is no step', () => {
    const { desk } = opened();
    desk.move(titled('b'));
    desk.change('rename', titled('a'));

    expect(desk.undoName.value).toBeNull();
    expect(desk.plan.value).toBe(desk.settled.value);
  });

  it('is not torn by undo', () => {
    const { desk } = opened();
    desk.change('rename', titled('b'));
    desk.move(titled('c'));
    desk.undo();

    expect(desk.plan.value?.title).toBe('b');
    expect(desk.undoName.value).toBe('rename');
  });
});

describe('undo and redo', () => {
  it('name their steps', () => {
    const { desk } = opened();
    desk.change('Move Bramble', titled('b'));
    desk.undo();
    expect([desk.undoName.value, desk.redoName.value]).toEqual([null, 'Move Bramble']);

    desk.redo();
    expect([desk.undoName.value, desk.redoName.value]).toEqual(['Move Bramble', null]);
    expect(desk.plan.value?.title).toBe('b');
  });

  it('do not reach back to another plan', () => {
    const { desk } = opened();
    desk.change('rename', titled('b'));
    desk.open(planOf('other'));
    desk.undo();

    expect(desk.plan.value?.title).toBe('other');
  });
});

describe('trouble', () => {
  it('is said, loses nothing, and goes away when asked again with success', async () => {
    const { asked, desk } = opened();
    desk.change('rename', titled('b'));
    await asked.at(-1)?.fail(new Refusal(0, 'The service does not answer.'));
    expect(desk.trouble.value).toBe('The service does not answer.');
    expect(desk.plan.value?.title).toBe('b');
    expect(desk.unchecked.value).toBe(true);

    desk.askAgain();
    await asked.at(-1)?.answer();
    expect(desk.trouble.value).toBeNull();
    expect(desk.unchecked.value).toBe(false);
  });

  it('with an older plan of a movement is passed over for the newest', async () => {
    const { asked, desk } = opened();
    await asked[0]?.answer();
    desk.move(titled('1'));
    desk.move(titled('2'));
    await asked.at(-1)?.fail(new Refusal(503, 'too long'));

    expect(desk.trouble.value).toBeNull();
    expect(asked.at(-1)?.plan.title).toBe('2');
  });
});

describe('what is chosen and shown', () => {
  it('is cleared with the plan it belongs to', () => {
    const { desk } = opened();
    desk.choose('bramble');
    desk.ask([1, 2]);
    desk.showZone('directFlight/bramble/', true);
    expect([...desk.shownZones.value]).toEqual(['directFlight/bramble/']);

    desk.open(planOf('other'));
    expect(desk.chosen.value).toBeNull();
    expect(desk.spot.value).toBeNull();
    expect(desk.shownZones.value.size).toBe(0);
  });

  it('switches an area off again', () => {
    const { desk } = opened();
    desk.showZone('a', true);
    const before = desk.shownZones.value;
    desk.showZone('a', false);

    expect(desk.shownZones.value.size).toBe(0);
    expect(before.has('a')).toBe(true);
  });
});

it('does nothing to a desk without a plan', () => {
  const { asked, assess } = fakeAssess();
  const desk = createDesk(assess);
  const never = (plan: PlanFile): PlanFile => {
    throw new Error(`asked to edit ${plan.title}`);
  };
  desk.move(never);
  desk.change('x', never);
  desk.undo();
  desk.askAgain();

  expect(desk.plan.value).toBeNull();
  expect(asked).toHaveLength(0);
});
