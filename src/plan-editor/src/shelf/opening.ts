import { type ReadonlySignal, signal } from '@preact/signals';
import type { Address } from '../address/address';
import type { PlanFile } from '../plan/planFile';
import type { Saving } from '../saving/saving';
import { reasonOf } from '../service/refusal';
import type { Saved, Service } from '../service/service';

/** Brings plans onto the desk. What is on it is saved first; if that can't be done, it stays. */
export interface Opening {
  /** Why nothing could be opened, in words, or null. */
  readonly trouble: ReadonlySignal<string | null>;
  readonly busy: ReadonlySignal<boolean>;
  /** Name of the template on the desk while it is nobody's plan yet. */
  readonly example: ReadonlySignal<string | null>;
  plan(id: string): Promise<boolean>;
  lookAt(template: string): Promise<boolean>;
  startFrom(template: string): Promise<boolean>;
  /** A kept state, as a plan of its own. */
  copyOf(id: string, version: number): Promise<boolean>;
  /** What a plan file holds; the service says what is wrong with it. */
  file(content: PlanFile): Promise<boolean>;
  at(address: Address): Promise<boolean>;
  /** Puts trouble into words, or takes them away. */
  say(trouble: string | null): void;
}

type Shelf = Pick<Service, 'plans' | 'plan' | 'add' | 'templates' | 'template' | 'start' | 'version'>;

interface Found {
  readonly plan: PlanFile;
  readonly kept: Saved | null;
  readonly template: string | null;
}

/** Title of a plan nobody has named yet: the example's would make two plans look like one. */
export const untitled = 'Untitled plan';

const unsaved =
  'The last changes to the plan on the desk are not saved yet. Save them first, then open another.';

export function createOpening(service: Shelf, saving: Pick<Saving, 'flush' | 'open'>): Opening {
  const trouble = signal<string | null>(null);
  const busy = signal(false);
  const example = signal<string | null>(null);
  let latest = 0;

  const open = async (find: () => Promise<Found>): Promise<boolean> => {
    const mine = ++latest;
    trouble.value = null;
    busy.value = true;
    try {
      if (!(await saving.flush())) {
        trouble.value = unsaved;
        return false;
      }
      const found = await find();
      if (mine === latest) {
        example.value = found.template;
        saving.open(found.plan, found.kept);
      }
      return true;
    } catch (thrown) {
      trouble.value = reasonOf(thrown);
      return false;
    } finally {
      busy.value = mine === latest ? false : busy.value;
    }
  };

  const saved = async (id: string): Promise<Found> => {
    const [{ plan, tag }, list] = await Promise.all([service.plan(id), service.plans()]);
    const savedAt = new Date(list.find((entry) => entry.id === id)?.savedAt ?? Date.now());
    return { plan, kept: { id, tag, savedAt }, template: null };
  };
  const template = async (name: string): Promise<Found> => ({
    plan: await service.template(name),
    kept: null,
    template: name,
  });
  const own = async (plan: PlanFile): Promise<Found> => ({
    plan,
    kept: await service.add(plan),
    template: null,
  });
  const first = async (): Promise<Found> => {
    const [last] = await service.plans();
    if (last !== undefined) {
      return saved(last.id);
    }
    const templates = await service.templates();
    const [example] = [...templates].sort((a, b) => rank(a.name) - rank(b.name));
    if (example === undefined) {
      throw new Error('A service without templates has nothing to show.');
    }
    return template(example.name);
  };

  const opening: Opening = {
    trouble,
    busy,
    example,
    plan: (id) => open(() => saved(id)),
    lookAt: (name) => open(() => template(name)),
    startFrom: (name) => open(async () => own({ ...(await service.start(name)), title: untitled })),
    copyOf: (id, version) => open(async () => own(await service.version(id, version))),
    file: (content) => open(() => own(content)),
    async at(address) {
      switch (address.kind) {
        case 'plan':
          return opening.plan(address.id);
        case 'example':
          return opening.lookAt(address.name);
        case 'none':
          return open(first);
      }
    },
    say(words) {
      trouble.value = words;
    },
  };
  return opening;
}

// The first thing a newcomer sees is a demonstration that can be planned, not the worked refusal.
function rank(name: string): number {
  return name === 'open-sided-marquee' ? 0 : 1;
}
