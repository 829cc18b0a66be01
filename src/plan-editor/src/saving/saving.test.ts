import { describe, expect, it } from 'vitest';
import { createDesk } from '../desk/createDesk';
import { fakeAssess, planOf } from '../desk/fakeAssess';
import { retitled } from '../plan/edits';
import type { PlanFile } from '../plan/planFile';
import { Refusal } from '../service/refusal';
import { createSaving, restMilliseconds, retryMilliseconds, takeTheirsName } from './saving';

/** A store that behaves as the service does: a save must name the revision it follows. */
function fakeStore() {
  const plans = new Map<string, { plan: PlanFile; revision: number }>();
  const kept: string[] = [];
  const store = {
    plans,
    kept,
    leavings: 0,
    broken: false,
    savedAt: new Date(2027, 5, 26, 14, 31),
    async add(plan: PlanFile, last?: { leaving: boolean }) {
      return store.put(`p${plans.size + 1}`, plan, 1, last);
    },
    async save(id: string, tag: string, plan: PlanFile, last?: { leaving: boolean }) {
      const standing = plans.get(id);
      if (standing === undefined) {
        throw new Refusal(404, 'no such plan');
      }
      if (tag !== `"${standing.revision}"`) {
        throw new Refusal(412, 'saved elsewhere');
      }
      return store.put(id, plan, standing.revision + 1, last);
    },
    async put(id: string, plan: PlanFile, revision: number, last?: { leaving: boolean }) {
      if (store.broken) {
        throw new Refusal(0, 'The service does not answer.');
      }
      store.leavings += last?.leaving === true ? 1 : 0;
      plans.set(id, { plan, revision });
      return { id, tag: `"${revision}"`, savedAt: store.savedAt };
    },
    async plan(id: string) {
      const standing = plans.get(id);
      if (standing === undefined) {
        throw new Refusal(404, 'no such plan');
      }
      return { plan: standing.plan, tag: `"${standing.revision}"` };
    },
    async list() {
      return [...plans].map(([id, { plan, revision }]) => ({
        id,
        title: plan.title,
        revision,
        savedAt: store.savedAt.toISOString(),
      }));
    },
    async keep(id: string, name: string) {
      kept.push(`${id}: ${name}`);
      return { number: kept.length, name, title: '', savedAt: '' };
    },
  };
  return store;
}

function setUp() {
  const store = fakeStore();
  const timers: { milliseconds: number; act: () => void }[] = [];
  const desk = createDesk(fakeAssess().assess);
  const saving = createSaving({ ...store, plans: store.list }, desk, (milliseconds, act) => {
    const timer = { milliseconds, act };
    timers.push(timer);
    return () => {
      timers.splice(timers.indexOf(timer), 1);
    };
  });
  /** Lets the time pass that the next timer waits for. */
  const pass = async () => {
    timers.shift()?.act();
    await new Promise((resolve) => setTimeout(resolve));
  };
  return { store, timers, desk, saving, pass };
}

async function ownPlan() {
  const all = setUp();
  const plan = planOf('mine');
  all.saving.open(plan, await all.store.add(plan));
  return all;
}

describe('an example', () => {
  it('is not saved until it is changed, then becomes a plan of its own', async () => {
    const { store, timers, desk, saving, pass } = setUp();
    saving.open(planOf('example'), null);
    expect(timers).toHaveLength(0);
    expect(saving.state.value.kind).toBe('example');
    expect(saving.planId.value).toBeNull();

    desk.change('rename', retitled('changed'));
    expect(timers.map((t) => t.milliseconds)).toEqual([restMilliseconds]);
    expect(store.plans.size).toBe(0);

    await pass();
    expect(saving.planId.value).toBe('p1');
    expect(store.plans.get('p1')?.plan.title).toBe('changed');
    expect(saving.state.value).toEqual({ kind: 'saved', at: store.savedAt });
  });
});

describe('a plan of one’s own', () => {
  it('is saved once after several quick changes', async () => {
    const { store, timers, desk, pass } = await ownPlan();
    for (const title of ['a', 'b', 'c']) desk.change('rename', retitled(title));

    expect(timers).toHaveLength(1);
    await pass();
    expect(store.plans.get('p1')).toEqual({ plan: { ...planOf('mine'), title: 'c' }, revision: 2 });
    expect(timers).toHaveLength(0);
  });

  it('is not saved while something is being dragged', async () => {
    const { timers, desk } = await ownPlan();
    desk.move(retitled('a'));
    desk.move(retitled('b'));

    expect(timers).toHaveLength(0);
  });

  it('is saved over its own last state each time', async () => {
    const { store, desk, pass } = await ownPlan();
    desk.change('rename', retitled('a'));
    await pass();
    desk.undo();
    await pass();

    expect(store.plans.get('p1')).toEqual({ plan: planOf('mine'), revision: 3 });
  });

  it('is sent without waiting when the page is left', async () => {
    const { store, desk, saving } = await ownPlan();
    desk.change('rename', retitled('a'));
    saving.leave();
    await saving.flush();

    expect(store.leavings).toBe(1);
    expect(store.plans.get('p1')?.plan.title).toBe('a');
    expect(saving.owes.value).toBe(false);
  });

  it('owes nothing when nothing was changed', async () => {
    const { store, saving } = await ownPlan();
    saving.leave();

    expect(await saving.flush()).toBe(true);
    expect(store.plans.get('p1')?.revision).toBe(1);
  });
});

describe('a save that fails', () => {
  it('says so, keeps the change, and is tried again', async () => {
    const { store, timers, desk, saving, pass } = await ownPlan();
    store.broken = true;
    desk.change('rename', retitled('a'));
    await pass();
    expect(saving.state.value).toEqual({ kind: 'failed', why: 'The service does not answer.' });
    expect(desk.plan.value?.title).toBe('a');
    expect(saving.owes.value).toBe(true);
    expect(timers.map((t) => t.milliseconds)).toEqual([retryMilliseconds]);
    expect(await saving.flush()).toBe(false);

    store.broken = false;
    await pass();
    expect(saving.state.value.kind).toBe('saved');
    expect(store.plans.get('p1')?.plan.title).toBe('a');
  });
});

describe('two windows', () => {
  async function inConflict() {
    const all = await ownPlan();
    await all.store.save('p1', '"1"', planOf('theirs'));
    all.desk.change('rename', retitled('mine, changed'));
    await all.pass();
    return all;
  }

  it('that change one plan overwrite nothing and say so', async () => {
    const { store, desk, saving } = await inConflict();

    expect(saving.state.value).toMatchObject({ kind: 'conflict', at: store.savedAt });
    expect(store.plans.get('p1')?.plan.title).toBe('theirs');
    expect(desk.plan.value?.title).toBe('mine, changed');
    expect(await saving.flush()).toBe(false);
  });

  it('save nothing more until the user has chosen', async () => {
    const { store, timers, desk } = await inConflict();
    desk.change('rename', retitled('more'));

    expect(timers).toHaveLength(0);
    expect(store.plans.get('p1')?.plan.title).toBe('theirs');
  });

  it('can both go on: mine as a plan of its own', async () => {
    const { store, saving } = await inConflict();
    await saving.keepMineAsCopy();

    expect(saving.planId.value).toBe('p2');
    expect(store.plans.get('p2')?.plan.title).toBe('mine, changed');
    expect(store.plans.get('p1')?.plan.title).toBe('theirs');
    expect(saving.owes.value).toBe(false);
  });

  it('stay in conflict, with the reason, when the copy can’t be kept', async () => {
    const { store, saving } = await inConflict();
    store.broken = true;
    await saving.keepMineAsCopy();

    expect(saving.state.value).toMatchObject({ kind: 'conflict', why: 'The service does not answer.' });
    expect(saving.owes.value).toBe(true);
  });

  it('can go on with theirs, mine one undo away and savable', async () => {
    const { store, desk, saving, pass } = await inConflict();
    saving.takeTheirs();
    expect(desk.plan.value?.title).toBe('theirs');
    expect(desk.undoName.value).toBe(takeTheirsName);
    expect(saving.owes.value).toBe(false);

    desk.undo();
    await pass();
    expect(store.plans.get('p1')?.plan.title).toBe('mine, changed');
    expect(saving.state.value.kind).toBe('saved');
  });

  it('one of which removed the plan leave the other its plan', async () => {
    const { store, desk, saving, pass } = await ownPlan();
    store.plans.delete('p1');
    desk.change('rename', retitled('still here'));
    await pass();
    expect(saving.state.value).toEqual({ kind: 'conflict', theirs: null, at: null });

    await saving.keepMineAsCopy();
    expect(store.plans.get(saving.planId.value ?? '')?.plan.title).toBe('still here');
  });
});

describe('a kept state', () => {
  it('is of the plan as it is now, saved first', async () => {
    const { store, desk, saving } = await ownPlan();
    desk.change('rename', retitled('a'));
    await saving.keepState('Sent to the venue');

    expect(store.plans.get('p1')?.plan.title).toBe('a');
    expect(store.kept).toEqual(['p1: Sent to the venue']);
  });

  it('of an example makes it a plan of one’s own', async () => {
    const { store, saving } = setUp();
    saving.open(planOf('example'), null);
    await saving.keepState('first');

    expect(store.kept).toEqual(['p1: first']);
  });

  it('is refused in words when the plan can’t be saved', async () => {
    const { store, desk, saving } = await ownPlan();
    store.broken = true;
    desk.change('rename', retitled('a'));

    await expect(saving.keepState('x')).rejects.toThrow('not saved yet');
    expect(store.kept).toEqual([]);
  });
});
