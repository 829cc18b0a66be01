import { describe, expect, it } from 'vitest';
import { planOf } from '../desk/fakeAssess';
import type { PlanFile } from '../plan/planFile';
import { Refusal } from '../service/refusal';
import type { Saved } from '../service/service';
import { createOpening, untitled } from './opening';
import { whatItShows } from './shelfContent';

const savedAt = new Date('2027-06-26T12:31:00Z');

function setUp({ own = [] as string[], flushed = true } = {}) {
  const opened: { plan: PlanFile; kept: Saved | null }[] = [];
  const added: PlanFile[] = [];
  const opening = createOpening(
    {
      plans: async () => own.map((id) => ({ id, title: id, revision: 3, savedAt: savedAt.toISOString() })),
      plan: async (id) => {
        if (!own.includes(id)) {
          throw new Refusal(404, `There is no saved plan "${id}".`);
        }
        return { plan: planOf(id), tag: '"3"' };
      },
      add: async (plan) => {
        added.push(plan);
        return { id: 'new', tag: '"1"', savedAt };
      },
      templates: async () => [
        { name: 'closed-marquee', title: 'c', notes: null },
        { name: 'open-sided-marquee', title: 'o', notes: null },
      ],
      template: async (name) => planOf(`example ${name}`),
      start: async (name) => planOf(`started ${name}`),
      version: async (id, number) => planOf(`${id} kept ${number}`),
    },
    { flush: async () => flushed, open: (plan, kept) => void opened.push({ plan, kept }) },
  );
  return { opening, opened, added };
}

describe('the first plan', () => {
  it('is the one last saved', async () => {
    const { opening, opened } = setUp({ own: ['last', 'older'] });
    await opening.at({ kind: 'none' });

    expect(opened).toEqual([{ plan: planOf('last'), kept: { id: 'last', tag: '"3"', savedAt } }]);
    expect(opening.example.value).toBeNull();
  });

  it('is an example that can be planned, kept nowhere, when there is none', async () => {
    const { opening, opened, added } = setUp();
    await opening.at({ kind: 'none' });

    expect(opened).toEqual([{ plan: planOf('example open-sided-marquee'), kept: null }]);
    expect(opening.example.value).toBe('open-sided-marquee');
    expect(added).toEqual([]);
  });
});

describe('opening', () => {
  it('finds the plan the address names', async () => {
    const { opening, opened } = setUp({ own: ['last', 'older'] });
    await opening.at({ kind: 'plan', id: 'older' });
    await opening.at({ kind: 'example', name: 'closed-marquee' });

    expect(opened.map(({ plan }) => plan.title)).toEqual(['older', 'example closed-marquee']);
  });

  it('keeps a started plan and a copy of a kept state at once, so that a reload finds them', async () => {
    const { opening, opened, added } = setUp();
    await opening.startFrom('closed-marquee');
    await opening.copyOf('p', 2);

    expect(added.map(({ title }) => title)).toEqual([untitled, 'p kept 2']);
    expect(opened.map(({ kept }) => kept?.id)).toEqual(['new', 'new']);
  });

  it('says why a plan can’t be opened, and leaves the desk alone', async () => {
    const { opening, opened } = setUp();

    expect(await opening.plan('gone')).toBe(false);
    expect(opening.trouble.value).toBe('There is no saved plan "gone".');
    expect(opening.busy.value).toBe(false);
    expect(opened).toEqual([]);
  });

  it('never takes away a plan that is not saved', async () => {
    const { opening, opened } = setUp({ own: ['a'], flushed: false });

    expect(await opening.plan('a')).toBe(false);
    expect(opening.trouble.value).toContain('not saved yet');
    expect(opened).toEqual([]);
  });

  it('lets the plan asked for last win', async () => {
    const { opening, opened } = setUp({ own: ['a', 'b'] });
    await Promise.all([opening.plan('a'), opening.plan('b')]);

    expect(opened.map(({ plan }) => plan.title)).toEqual(['b']);
  });
});

it('whatItShows leaves out what every template says', () => {
  expect(
    whatItShows(
      'Invented example: nothing in it is real. Start a plan of your own from it and replace every value. A canopy.',
    ),
  ).toBe('A canopy.');
  expect(whatItShows(null)).toBe('');
});
