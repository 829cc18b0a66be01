import type { PlanFile } from './planFile';

/** What people call an element of the plan: its name, or its id where it has none. */
export function nameOf(plan: PlanFile, id: string): string {
  const found = elementWith(plan, id);
  const name = found !== null && 'name' in found ? found.name : undefined;
  return typeof name === 'string' && name !== '' ? name : id;
}

/** A name short enough for a button: up to its first comma. */
export function shortNameOf(plan: PlanFile, id: string): string {
  return nameOf(plan, id).split(',')[0] ?? id;
}

// Elements may lie at any depth, in members the page does not otherwise know.
function elementWith(node: unknown, id: string): object | null {
  if (typeof node !== 'object' || node === null) {
    return null;
  }
  if ('id' in node && node.id === id) {
    return node;
  }
  for (const child of Object.values(node)) {
    const found = elementWith(child, id);
    if (found !== null) {
      return found;
    }
  }
  return null;
}
