import { effect } from '@preact/signals';
import type { Page } from '../page';
import { addressOf, hashOf } from './address';

/** Opens what the address names, and keeps the address true to what is on the desk, so that a reload finds it. */
export async function followAddress({ opening, saving, desk }: Page, page: Window): Promise<void> {
  page.addEventListener('hashchange', () => void opening.at(addressOf(page.location.hash)));
  if (!(await opening.at(addressOf(page.location.hash))) && desk.plan.value === null) {
    const why = opening.trouble.value;
    await opening.at({ kind: 'none' });
    opening.say(why);
  }
  effect(() => {
    const id = saving.planId.value;
    const name = opening.example.value;
    const hash =
      id !== null
        ? hashOf({ kind: 'plan', id })
        : hashOf(name === null ? { kind: 'none' } : { kind: 'example', name });
    if (hash !== page.location.hash) {
      page.history.replaceState(null, '', hash);
    }
  });
}
