import { conflictInWords, type SaveState } from './saveState';
import type { Saving } from './saving';

/** Said across the page when the plan is not saved and the user has to know or to choose. */
export function SaveNotice({ saving }: { readonly saving: Saving }) {
  const state = saving.state.value;
  switch (state.kind) {
    case 'failed':
      return (
        <section class="notice" role="alert" aria-label="Not saved yet">
          <p>
            <strong>Not saved yet.</strong> {state.why} Your changes are still here; it is tried again by
            itself.
          </p>
          <button type="button" onClick={() => void saving.flush()}>
            Try again
          </button>
        </section>
      );
    case 'conflict':
      return <Choice saving={saving} conflict={state} />;
    default:
      return null;
  }
}

interface ChoiceProps {
  readonly saving: Saving;
  readonly conflict: Extract<SaveState, { kind: 'conflict' }>;
}

function Choice({ saving, conflict }: ChoiceProps) {
  return (
    <section class="notice" role="alert" aria-label="Changed in another window">
      <p>
        <strong>{conflictInWords(conflict, new Date())}</strong> Nothing is lost: both are still there. Which
        one goes on?
      </p>
      {conflict.why !== undefined && <p>That did not work. {conflict.why}</p>}
      <button type="button" onClick={() => void saving.keepMineAsCopy()}>
        Keep mine as a plan of its own
      </button>
      {conflict.theirs !== null && (
        <button type="button" onClick={() => saving.takeTheirs()}>
          Take theirs (mine is one undo away)
        </button>
      )}
    </section>
  );
}
