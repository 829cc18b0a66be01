import type { Fetched } from '../service/service';

/** How the plan on the desk stands to the plan that is kept. */
export type SaveState =
  /** Nothing of the user's own: an example, as it came. */
  | { readonly kind: 'example' }
  | { readonly kind: 'saved'; readonly at: Date }
  | { readonly kind: 'saving' }
  | { readonly kind: 'failed'; readonly why: string }
  | Conflict;

/** Somebody else saved or removed the plan in the meantime. Nothing is saved until the user has chosen. */
export interface Conflict {
  readonly kind: 'conflict';
  /** Their plan, or null when they removed it. */
  readonly theirs: Fetched | null;
  /** When they saved it, where it is known. */
  readonly at: Date | null;
  /** Why the last choice could not be carried out. */
  readonly why?: string;
}

/** One short line for the strip at the top. */
export function saveStateInWords(state: SaveState, now: Date): string {
  switch (state.kind) {
    case 'example':
      return 'Example, nothing saved';
    case 'saved':
      return `Saved at ${clockTime(state.at, now)}`;
    case 'saving':
      return 'Saving …';
    case 'failed':
      return 'Not saved yet';
    case 'conflict':
      return 'Not saved: choose first';
  }
}

/** What happened in another window. */
export function conflictInWords({ theirs, at }: Conflict, now: Date): string {
  if (theirs === null) {
    return 'This plan was removed in another window.';
  }
  return at === null
    ? 'This plan was changed in another window.'
    : `This plan was changed in another window at ${clockTime(at, now)}.`;
}

/** Local time of day; with the date when it was another day. */
export function clockTime(at: Date, now: Date): string {
  const time = `${twoDigits(at.getHours())}:${twoDigits(at.getMinutes())}`;
  return at.toDateString() === now.toDateString()
    ? time
    : `${time} on ${at.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' })}`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
